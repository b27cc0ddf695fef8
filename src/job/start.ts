import { EXTENT_LIMIT, type Grid } from '../units/grid.ts';
import { fail, ok, type Problem, type Result } from '../units/result.ts';
import { defaultLumber, defaultMeshStock, defaultPractices } from './defaults.ts';
import type { Corner, Job } from './job.ts';
import type { JobProblemCode } from './problems.ts';

/** A job with nothing on the site yet. */
export function blankJob(): Job {
  return {
    name: '',
    site: '',
    notes: '',
    units: 'feet-inches',
    features: [],
    practices: defaultPractices(),
    lumber: defaultLumber(),
    meshStock: defaultMeshStock(),
    handStakes: [],
    ground: { readings: [], depthBy: 'thickness' },
    nextId: 1,
  };
}

/**
 * A job with one rectangular pad, its lower left corner at the origin.
 * @param length along x
 * @param width along y
 */
export function rectangleJob(length: Grid, width: Grid): Result<Job> {
  const problems = sizeProblems({ length, width });
  if (problems.length > 0) return fail(...problems);
  return ok(
    padJob([
      [0, 0],
      [length, 0],
      [length, width],
      [0, width],
    ]),
  );
}

/**
 * A job with one L-shaped pad: a rectangle with a notch out of its upper right corner.
 *
 *   +--------+
 *   |        | notchWidth
 *   |        +-----+
 *   |  notchLength |  width
 *   +--------------+
 *        length
 */
export function lShapeJob(
  length: Grid,
  width: Grid,
  notchLength: Grid,
  notchWidth: Grid,
): Result<Job> {
  const problems = sizeProblems({ length, width, notchLength, notchWidth });
  if (problems.length > 0) return fail(...problems);
  if (notchLength >= length) return fail(problem('notch-too-large', 'notchLength', notchLength));
  if (notchWidth >= width) return fail(problem('notch-too-large', 'notchWidth', notchWidth));
  return ok(
    padJob([
      [0, 0],
      [length, 0],
      [length, width - notchWidth],
      [length - notchLength, width - notchWidth],
      [length - notchLength, width],
      [0, width],
    ]),
  );
}

function sizeProblems(sizes: Readonly<Record<string, Grid>>): readonly Problem[] {
  return Object.entries(sizes).flatMap(([name, size]) => {
    if (!Number.isSafeInteger(size)) return [problem('not-on-grid', name, size)];
    if (size <= 0) return [problem('size-not-positive', name, size)];
    return size > EXTENT_LIMIT ? [problem('too-large', name, size)] : [];
  });
}

function problem(code: JobProblemCode, where: string, seen: number): Problem {
  return { code, where, facts: { seen: Number.isFinite(seen) ? seen : String(seen) } };
}

function padJob(places: readonly (readonly [Grid, Grid])[]): Job {
  const corners = places.map(([x, y], at): Corner => ({ id: `c${at + 2}`, x, y, rise: 0 }));
  return {
    ...blankJob(),
    features: [
      { id: 'f1', name: '', kind: 'pad', shape: { form: 'outline', closed: true, corners } },
    ],
    nextId: places.length + 2,
  };
}
