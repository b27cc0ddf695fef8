import { splicesOf } from '../../src/takeoff/boards/splicesOf.ts';
import { formRuns } from '../../src/takeoff/forms/formRuns.ts';
import { netPour } from '../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../src/takeoff/pourPolygons.ts';
import { formSite } from '../../src/takeoff/stakes/formSite.ts';
import { stakes } from '../../src/takeoff/stakes/stakes.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { dragged, hugeJob } from './jobs.ts';

const FRAME_MS = 1000 / 60;
const FRAMES = 20;

/** The stakes of the huge job on every frame of a drag: the ground looked at, and every stake placed clear of it. */
export function measureStakes(): void {
  const huge = hugeJob();
  const { boards } = takeoff(huge);
  const splices = boards && splicesOf(boards);
  const closeness = huge.practices.closeEnough;
  const frames = Array.from({ length: FRAMES }, (_, frame) => {
    const job = dragged(huge, frame);
    const pour = netPour(job).pour!;
    const forms = formRuns(pour, closeness).figured!;
    return { job, forms, polygons: pourPolygons(pour, closeness) };
  });
  let count = 0;
  const times = frames.map(({ job, forms, polygons }) => {
    const start = performance.now();
    const site = formSite(job, forms, polygons);
    count = stakes(job, forms, site, closeness, splices).figured!.stakes.length;
    return performance.now() - start;
  });
  const ms = times.sort((a, b) => a - b)[FRAMES / 2]!;
  console.log(
    `Stakes of the huge job, ${count} of them, on a frame of a drag: ${ms.toFixed(1)} ms = ${(ms / FRAME_MS).toFixed(2)} of a frame`,
  );
}
