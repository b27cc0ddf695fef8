import { type Point, samePoint } from '../geometry/point.ts';
import { EXTENT_LIMIT } from '../units/grid.ts';
import { edgeEnd } from './find.ts';
import type { Feature, FeatureKind, Job } from './job.ts';
import type { JobProblemCode } from './problems.ts';

/** Something about a shape that no job may have, in memory or in a file. */
export interface Unsound {
  readonly code: JobProblemCode;
  readonly feature: string;
  /** Number of the corner in its outline, where it is about one. */
  readonly corner?: number;
  readonly facts?: Readonly<Record<string, string | number>>;
  readonly at?: readonly Point[];
}

/** A buried line and a joint have no inside. */
export const ALWAYS_OPEN: readonly FeatureKind[] = ['utility-line', 'joint'];
/** A wall has a face. */
const MAY_BE_OPEN: readonly FeatureKind[] = ['building-line', ...ALWAYS_OPEN];

/** No place may be farther from the origin than this, 2 km: beyond it something has gone wrong. */
const FARTHEST = 10 * EXTENT_LIMIT;

/** All that is unsound about the shapes of a job, in order. Crossing outlines are sound: they are work under way. */
export function unsoundness(job: Job): readonly Unsound[] {
  const found = job.features.flatMap(shapeUnsound);
  return found.length > 0 ? found : extentUnsound(job);
}

function shapeUnsound(feature: Feature): readonly Unsound[] {
  const { id, shape } = feature;
  const say = (code: JobProblemCode, more: Omit<Unsound, 'code' | 'feature'> = {}): Unsound => ({
    code,
    feature: id,
    ...more,
  });
  if (shape.form === 'round') {
    const { center, diameter } = shape;
    const numbers = numberUnsound(center.x, center.y, diameter);
    if (numbers) return [say(numbers)];
    return diameter > 0 ? [] : [say('size-not-positive', { facts: { seen: diameter } })];
  }
  const { corners, closed } = shape;
  const found: Unsound[] = [];
  if (closed && ALWAYS_OPEN.includes(feature.kind)) found.push(say('field-not-open'));
  if (!closed && !MAY_BE_OPEN.includes(feature.kind)) found.push(say('field-not-closed'));
  const least = closed && !corners.some(({ rise }) => rise !== 0) ? 3 : 2;
  if (corners.length < least) found.push(say('too-few-corners', { facts: { least } }));
  corners.forEach((corner, index) => {
    const numbers = numberUnsound(corner.x, corner.y, corner.rise);
    if (numbers) {
      found.push(say(numbers, { corner: index }));
      return;
    }
    if (feature.kind === 'joint' && corner.rise !== 0) {
      found.push(say('joint-not-straight', { corner: index }));
    }
    const end = edgeEnd(shape, index);
    if (end && samePoint(corner, end)) {
      found.push(say('corners-coincide', { corner: index, at: [{ x: corner.x, y: corner.y }] }));
    }
  });
  return found;
}

/** What is unsound about a place that no shape has: off the grid, or too far away. */
export function placeUnsound({ x, y }: Point): JobProblemCode | null {
  return numberUnsound(x, y, 0);
}

function numberUnsound(a: number, b: number, c: number): JobProblemCode | null {
  if (!(Number.isSafeInteger(a) && Number.isSafeInteger(b) && Number.isSafeInteger(c))) {
    return 'not-on-grid';
  }
  return Math.max(Math.abs(a), Math.abs(b), Math.abs(c)) > FARTHEST ? 'too-far' : null;
}

/** The job may be 200 m across, arcs and all: the bound within which areas are exact. */
function extentUnsound(job: Job): readonly Unsound[] {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = (x: number, y: number, reach: number) => {
    minX = Math.min(minX, x - reach);
    minY = Math.min(minY, y - reach);
    maxX = Math.max(maxX, x + reach);
    maxY = Math.max(maxY, y + reach);
  };
  for (const { id, shape } of job.features) {
    if (shape.form === 'round') {
      take(shape.center.x, shape.center.y, shape.diameter / 2);
    } else {
      // An arc stays within its rise of its chord's ends.
      let before = Math.abs(shape.corners.at(-1)?.rise ?? 0);
      for (const { x, y, rise } of shape.corners) {
        const after = Math.abs(rise);
        take(x, y, Math.max(before, after));
        before = after;
      }
    }
    if (maxX - minX > EXTENT_LIMIT || maxY - minY > EXTENT_LIMIT) {
      return [{ code: 'too-large', feature: id }];
    }
  }
  return [];
}
