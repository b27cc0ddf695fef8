import type { Job } from '../job/job.ts';
import { boards } from './boards/boards.ts';
import { splicesOf } from './boards/splicesOf.ts';
import { formNotes } from './forms/formNotes.ts';
import { formRuns } from './forms/formRuns.ts';
import { jointEnds } from './joints/jointEnds.ts';
import { joints } from './joints/joints.ts';
import { mix } from './mix/mix.ts';
import { tradeNote } from './notes.ts';
import { order } from './order/order.ts';
import { LEAST_TOLERANCE } from './outline/layout.ts';
import { netPour } from './outline/netPour.ts';
import { placing } from './placing/placing.ts';
import { pourPolygons } from './pourPolygons.ts';
import type { Takeoff } from './result.ts';
import type { Searched } from './searched.ts';
import { formSite } from './stakes/formSite.ts';
import { stakes } from './stakes/stakes.ts';
import { steel } from './steel/steel.ts';
import { groundDepth } from './volume/groundDepth.ts';
import { slabVolume } from './volume/slabVolume.ts';
import { weather } from './weather/weather.ts';

/**
 * All that can be counted of a job, in the order of the day. A part that can't be figured is absent, and a note says what
 * stands in the way and how to mend it; the parts that don't depend on it are there all the same.
 * @param searched What the slow searches have found: taken where it answers this job's problem.
 */
export function takeoff(job: Job, searched: Searched = {}): Takeoff {
  const { practices } = job;
  const outline = netPour(job);
  const { pour } = outline;
  if (!pour) return { notes: outline.notes };
  const closeness = Math.max(practices.closeEnough, LEAST_TOLERANCE);
  // Stakes and mesh need no arc nearer than what is close enough on site.
  const polygons = pourPolygons(pour, closeness);

  const forms = formRuns(pour, closeness);
  const site = forms.figured && formSite(job, forms.figured, polygons);
  const lumber = forms.figured && site ? boards(job, pour, forms.figured, site, searched) : NOTHING;
  const splices = lumber.figured && splicesOf(lumber.figured);
  const staked =
    forms.figured && site ? stakes(job, forms.figured, site, closeness, splices) : NOTHING;
  const jointed = joints(job, pour, polygons, closeness, searched);
  // Dowels are kept from joints.
  const ends = jointed.figured && jointEnds(jointed.figured);
  const reinforced = steel(job, pour, polygons, closeness, searched, ends);
  const ground = groundDepth(job.ground, polygons);
  const slab = slabVolume(practices, pour, job.ground.depthBy, ground);
  const bags = slab.figured ? mix(practices, slab.figured) : NOTHING;
  const day = weather(job);
  const placed =
    slab.figured && bags.figured
      ? placing(job, {
          pour,
          polygons,
          slab: slab.figured,
          bags: bags.figured,
          joints: jointed.figured,
          weather: day.figured,
        })
      : NOTHING;

  const soFar: Takeoff = {
    pour,
    ...part('forms', forms.figured),
    ...part('boards', lumber.figured),
    ...part('stakes', staked.figured),
    ...part('steel', reinforced.figured),
    ...part('joints', jointed.figured),
    ...part('volume', slab.figured),
    ...part('mix', bags.figured),
    notes: [
      ...outline.notes,
      tradeNote('ground', 'assumption', 'local-code'),
      ...(forms.figured ? formNotes(practices, pour, forms.figured) : []),
      ...[forms, lumber, staked, reinforced, jointed, slab, bags].flatMap(({ notes }) => notes),
    ],
  };
  const ordered = order(job, soFar);
  return {
    ...soFar,
    ...part('weather', day.figured),
    ...part('placing', placed.figured),
    ...part('order', ordered.figured),
    notes: [...soFar.notes, ...day.notes, ...placed.notes, ...ordered.notes],
  };
}

const NOTHING = { figured: undefined, notes: [] };

function part<K extends string, T>(key: K, figured: T | undefined): { readonly [k in K]?: T } {
  return figured === undefined ? {} : ({ [key]: figured } as { readonly [k in K]: T });
}
