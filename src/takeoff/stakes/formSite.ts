import type { Box } from '../../geometry/box.ts';
import type { Point, Polygon } from '../../geometry/point.ts';
import type { FeatureKind, Job } from '../../job/job.ts';
import { DRESSED } from '../forms/rules.ts';
import { traceOf } from '../outline/shapes.ts';
import type { FormRun, FormsResult } from '../result.ts';
import { obstacles } from './blocked.ts';
import { clearStretches, type Ground, groundOf } from './clearOf.ts';
import type { Stretch } from './leastStakes.ts';
import { HALF_STAKE } from './rules.ts';

/** What stands above the ground or is firm: no board goes through it, and a strut may bear on it. */
export interface Standing {
  readonly kind: FeatureKind;
  readonly points: readonly Point[];
  /** An open one is a line: the face of a wall. */
  readonly closed: boolean;
  readonly box: Box;
}

/** What lies about the forms: looked at once, for their boards and their stakes alike. */
export interface FormSite {
  readonly ground: Ground;
  readonly standing: readonly Standing[];
  /** Where along each free run the middle of a stake can stand; along a wall there is no room for any. */
  readonly clear: ReadonlyMap<FormRun, readonly Stretch[]>;
}

/** @param polygons The pour as polygons, arcs flattened. */
export function formSite(job: Job, { runs }: FormsResult, polygons: readonly Polygon[]): FormSite {
  const ground = groundOf(obstacles(job), polygons);
  const off = DRESSED[job.practices.formBoard].thickness + HALF_STAKE;
  const free = runs.filter(({ kind }) => kind === 'free');
  return {
    ground,
    standing: standing(job),
    clear: new Map(free.map((run) => [run, clearStretches(run, off, ground)])),
  };
}

/** Walls, their open lines too; steps, posts and pipes; old slabs. Zones and buried lines can be lain over. */
const STANDS: readonly FeatureKind[] = ['building-line', 'steps', 'block-out', 'existing-slab'];

function standing({ features }: Job): readonly Standing[] {
  return features.flatMap((feature): Standing[] => {
    const { kind } = feature;
    if (!STANDS.includes(kind)) return [];
    const { chain, fault } = traceOf(feature);
    const { points, closed, box } = chain;
    return fault ? [] : [{ kind, points, closed, box }];
  });
}
