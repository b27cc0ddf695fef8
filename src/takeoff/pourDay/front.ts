import {
  alongOf,
  areaBehind,
  type Heading,
  headingOf,
  lengthBehind,
  reachOf,
} from '../../geometry/halfPlane.ts';
import type { Point, Polygon } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import { type Grid, MILLIMETRE } from '../../units/grid.ts';
import { jointMark } from '../joints/marks.ts';
import type { NetPour } from '../outline/pour.ts';
import { pointsFrom, pourPolygons } from '../pourPolygons.ts';
import type { JointLayout, VolumeResult } from '../result.ts';
import { CHECKPOINT_SKEW } from './rules.ts';

/** Curved edges as chords this near to them: shares are asked to a percent. */
const CHORDS: Grid = MILLIMETRE;

/** The shape that a front goes over, ready to be asked. */
export interface Bed {
  readonly polygons: readonly Polygon[];
  /** Where the edge is thickened, as short straight pieces. */
  readonly thick: readonly { readonly from: Point; readonly to: Point }[];
  /** Of the volume, what the slab and what the thickened edge take. */
  readonly slab: number;
  readonly edge: number;
}

export function bedOf(pour: NetPour, volume: VolumeResult): Bed {
  const edges = volume.thickened
    ? pour.pieces.flatMap(({ rings }) =>
        rings.flatMap((ring) => ring.edges.filter(({ kind }) => kind === 'free')),
      )
    : [];
  return {
    polygons: pourPolygons(pour, CHORDS),
    thick: edges.flatMap((edge) => {
      const points = [...pointsFrom(edge, CHORDS), edge.to];
      return points.slice(1).map((to, i) => ({ from: points[i]!, to }));
    }),
    slab: volume.slab,
    edge: volume.thickened?.volume ?? 0,
  };
}

/**
 * Share of the volume behind a front, 0 to 1: the slab by the area behind the line, on the real shape; what a thickened
 * edge takes by the length of edge behind it. A float. Source: geometry.
 */
export function placedShare(bed: Bed, toward: number, along: number): number {
  const heading = headingOf(toward);
  const [least, most] = reachOf(bed.polygons, heading);
  if (!(along > least)) return 0;
  if (along >= most) return 1;
  const all = areaBehind(bed.polygons, heading, most);
  const slab = areaBehind(bed.polygons, heading, along) / all;
  if (bed.edge === 0) return slab;
  let length = 0;
  let behind = 0;
  for (const { from, to } of bed.thick) {
    length += lengthBehind(from, to, heading, most);
    behind += lengthBehind(from, to, heading, along);
  }
  return (bed.slab * slab + bed.edge * (behind / length)) / (bed.slab + bed.edge);
}

/** Where the front stands when so much is placed, on the grid: the share never shrinks as the front goes on. */
export function frontAt(bed: Bed, toward: number, share: number): Grid {
  let [low, high] = reachOf(bed.polygons, headingOf(toward));
  if (share <= 0) return Math.floor(low);
  if (share >= 1) return Math.ceil(high);
  while (high - low > 1) {
    const middle = (low + high) / 2;
    if (placedShare(bed, toward, middle) < share) low = middle;
    else high = middle;
  }
  return toGrid(high);
}

/** How far a front stands that goes through a place, on the grid. */
export function frontThrough(place: Point, toward: number): Grid {
  return toGrid(alongOf(place, headingOf(toward)));
}

/** How far off a share is when the front is off by so much either way: the mean of both sides. */
export function shareError(bed: Bed, toward: number, along: number, off: Grid): number {
  return (placedShare(bed, toward, along + off) - placedShare(bed, toward, along - off)) / 2;
}

/** A joint that the front passes as a whole, and how much is placed when it gets there. */
export interface Checkpoint {
  /** As on the plan: C1, B1. */
  readonly mark: string;
  readonly along: Grid;
  readonly share: number;
}

/** Joints across the way that the front goes, in the order in which it meets them. */
export function checkpoints(
  bed: Bed,
  layout: JointLayout | undefined,
  toward: number,
): readonly Checkpoint[] {
  const heading = headingOf(toward);
  const joints = layout?.joints ?? [];
  return joints
    .flatMap(({ from, to }, at): readonly Checkpoint[] => {
      if (!isAcross(from, to, heading)) return [];
      const along = toGrid((alongOf(from, heading) + alongOf(to, heading)) / 2);
      const share = placedShare(bed, toward, along);
      return share > 0 && share < 1 ? [{ mark: jointMark(joints, at), along, share }] : [];
    })
    .toSorted((a, b) => a.share - b.share);
}

function isAcross(from: Point, to: Point, heading: Heading): boolean {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = Math.abs(alongOf(to, heading) - alongOf(from, heading));
  return length > 0 && along / length <= Math.sin((CHECKPOINT_SKEW * Math.PI) / 180);
}

/** Where nothing is set: along the longer of east and north, from the left or from below; degrees. */
export function usualWay(bed: Bed): number {
  const [east, north] = [0, 90].map((way) => {
    const [least, most] = reachOf(bed.polygons, headingOf(way));
    return most - least;
  });
  return north! > east! ? 90 : 0;
}
