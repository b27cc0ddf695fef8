import type { Job, Practices } from '../../../src/job/job.ts';
import { formRuns } from '../../../src/takeoff/forms/formRuns.ts';
import { LEAST_TOLERANCE } from '../../../src/takeoff/outline/layout.ts';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../../src/takeoff/pourPolygons.ts';
import { formSite } from '../../../src/takeoff/stakes/formSite.ts';
import type { Splices } from '../../../src/takeoff/stakes/splices.ts';
import { stakes } from '../../../src/takeoff/stakes/stakes.ts';

/** The stakes of a job alone, whatever boards it has: splices are where the test says. */
export function staked(job: Job, practices: Partial<Practices> = {}, splices?: Splices) {
  const changed = { ...job, practices: { ...job.practices, ...practices } };
  const { pour } = netPour(changed);
  if (!pour) throw new Error('The job gives no pour.');
  const closeness = Math.max(changed.practices.closeEnough, LEAST_TOLERANCE);
  const polygons = pourPolygons(pour, closeness);
  const forms = formRuns(pour, closeness).figured!;
  const { figured, notes } = stakes(
    changed,
    forms,
    formSite(changed, forms, polygons),
    closeness,
    splices,
  );
  return { job: changed, pour, polygons, forms, stakes: figured, notes };
}
