import { distanceToEdge } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import { edgeEnd } from '../../job/find.ts';
import type { Feature, Job } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import type { Figured } from '../notes.ts';
import { between, type LaidCorner, type LaidPad } from './corners.ts';
import { layoutNote } from './layoutNote.ts';

/** An edge by its feature and the corner at which it starts. */
export interface EdgeRef {
  readonly feature: string;
  readonly corner: string;
}

/** A straight line that stands (or will) and can be measured from. */
export interface Baseline extends EdgeRef {
  readonly kind: Feature['kind'];
  /** Letters of its ends in its own feature. */
  readonly letters: readonly [string, string];
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
}

/** Where a corner lies from a baseline: along it from its zero, then square out to the corner. Floats, grid units. */
export interface Offset {
  readonly corner: LaidCorner;
  /** Below nothing: before the zero. */
  readonly station: number;
  /** Below nothing: on the other side of the line than most of the form. */
  readonly offset: number;
}

export interface Offsets {
  readonly baseline: Baseline;
  /** The end that stations are counted from, and the other. */
  readonly zero: Point;
  readonly zeroLetter: string;
  readonly endLetter: string;
  readonly rows: readonly Offset[];
}

/** Straight edges to measure from: existing slabs, building lines, and the pad's own, in that order. */
export function baselinesOf(job: Job, { pad }: LaidPad): readonly Baseline[] {
  const kinds: readonly Feature['kind'][] = ['existing-slab', 'building-line'];
  const standing = kinds.flatMap((kind) => job.features.filter((one) => one.kind === kind));
  return [...standing, pad].flatMap(straightEdges);
}

function straightEdges({ id, kind, shape }: Feature): readonly Baseline[] {
  if (shape.form !== 'outline') return [];
  return shape.corners.flatMap((start, index): Baseline[] => {
    const end = edgeEnd(shape, index);
    if (!end || start.rise !== 0) return [];
    const [from, to] = [start, end].map(({ x, y }) => ({ x, y })) as [Point, Point];
    return [
      {
        feature: id,
        corner: start.id,
        kind,
        letters: [cornerLetter(index), cornerLetter(shape.corners.indexOf(end))],
        from,
        to,
        length: between(from, to),
      },
    ];
  });
}

/**
 * The line to measure from when none is chosen: the longest wall or old edge that the pad comes up to; else the longest
 * of those anywhere; else the pad's own longest edge.
 */
export function firstBaseline(
  baselines: readonly Baseline[],
  { pad }: LaidPad,
  closeness: number,
): Baseline | undefined {
  const standing = baselines.filter(({ kind }) => kind !== 'pad');
  const touching = standing.filter(({ from, to }) =>
    pad.shape.corners.some((corner) => distanceToEdge(corner, from, to) <= closeness),
  );
  const own = baselines.filter(({ kind }) => kind === 'pad');
  const from = [touching, standing, own].find((some) => some.length > 0) ?? [];
  return from.reduce<Baseline | undefined>(
    (best, one) => (best && best.length >= one.length ? best : one),
    undefined,
  );
}

/**
 * Station and offset of every corner from a line. Offsets are positive on the side where most of the form lies; the zero
 * is the end of the line that leaves fewer corners before it. Source: geometry.
 */
export function offsets(
  { corners }: LaidPad,
  baselines: readonly Baseline[],
  chosen: EdgeRef | undefined,
  first: Baseline | undefined,
): Figured<Offsets> {
  const baseline = chosen
    ? baselines.find((one) => one.feature === chosen.feature && one.corner === chosen.corner)
    : first;
  if (!baseline) return { notes: [layoutNote('stop', 'layout-baseline-gone')] };
  if (baseline.length === 0) return { notes: [layoutNote('stop', 'layout-baseline-short')] };
  const forward = measured(corners, baseline.from, baseline.to);
  const backward = measured(corners, baseline.to, baseline.from);
  const before = (rows: readonly Offset[]) => rows.filter(({ station }) => station < 0).length;
  const turned = before(backward) < before(forward);
  const [zeroLetter, endLetter] = turned ? baseline.letters.toReversed() : baseline.letters;
  return {
    figured: {
      baseline,
      zero: turned ? baseline.to : baseline.from,
      zeroLetter: zeroLetter!,
      endLetter: endLetter!,
      rows: turned ? backward : forward,
    },
    notes: [layoutNote('assumption', 'layout-one-baseline')],
  };
}

function measured(corners: readonly LaidCorner[], zero: Point, end: Point): readonly Offset[] {
  const length = between(zero, end);
  const [ux, uy] = [(end.x - zero.x) / length, (end.y - zero.y) / length];
  const left = corners.map(({ at }) => ux * (at.y - zero.y) - uy * (at.x - zero.x));
  const side = left.reduce((sum, one) => sum + one, 0) < 0 ? -1 : 1;
  return corners.map((corner, i) => ({
    corner,
    station: ux * (corner.at.x - zero.x) + uy * (corner.at.y - zero.y),
    offset: side * left[i]! + 0,
  }));
}
