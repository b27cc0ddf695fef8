import { type Box, boxesMeet, boxOf } from '../../geometry/box.ts';
import { type EdgeIndex, edgesNear, indexEdges } from '../../geometry/edgeIndex.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { FormRun } from '../result.ts';
import { inPour, type Obstacle, obstacleAt } from './blocked.ts';
import type { Stretch } from './leastStakes.ts';
import { HALF_STAKE } from './rules.ts';
import { addNear, placeOn, type Track, type TrackSpan, trackOf } from './tracks.ts';

/** All that a stake must clear: what stands there, and the pour. */
export interface Ground {
  readonly obstacles: readonly Obstacle[];
  readonly polygons: readonly Polygon[];
  /** Every ring of the pour; one with many edges has them sorted. */
  readonly rings: readonly { readonly ring: Ring; readonly box: Box; readonly index?: EdgeIndex }[];
}

/** Fewer edges than this are walked quicker than sorted. */
const MANY = 200;

export function groundOf(obstacles: readonly Obstacle[], polygons: readonly Polygon[]): Ground {
  const rings = polygons
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .map((ring) =>
      ring.length > MANY
        ? { ring, box: boxOf(ring), index: indexEdges(ring, true) }
        : { ring, box: boxOf(ring) },
    );
  return { obstacles, polygons, rings };
}

/**
 * The stretches of a run, whole grid units along it and in order, on which the middle of a stake can stand: no part of the
 * stake, taken as round, would be in an obstacle or in the pour, or too near to a buried line. In closed form: the line
 * or arc of the stakes against every edge widened by what must be kept from it, and between those whether it lies inside.
 * @param off From the form face to the middles of the stakes.
 */
export function clearStretches(run: FormRun, off: Grid, ground: Ground): readonly Stretch[] {
  const clear: { from: Grid; to: Grid }[] = [];
  let start = 0;
  for (const edge of run.edges) {
    const track = trackOf(edge, off);
    // Lengths along a run are rounded once an edge.
    const scale = track && track.length > 0 ? edge.length / track.length : 0;
    for (const [lo, hi] of track ? clearSpans(track, ground) : []) {
      const from = start + Math.ceil(lo * scale);
      const to = start + (hi === track!.length ? edge.length : Math.floor(hi * scale));
      if (from > to) continue;
      const last = clear.at(-1);
      if (last && last.to === from) last.to = to;
      else clear.push({ from, to });
    }
    start += edge.length;
  }
  return clear;
}

/** The spans of a track on which the middle of a stake can stand, in order. */
export function clearSpans(track: Track, ground: Ground): readonly TrackSpan[] {
  const { box, length } = track;
  const near = ground.obstacles.filter((one) => boxesMeet(box, one.box, one.reach));
  const blocked: TrackSpan[] = [];
  for (const { points, closed, reach } of near) addAll(track, points, closed, reach, blocked);
  for (const { ring, box: around, index } of ground.rings) {
    if (!boxesMeet(box, around, HALF_STAKE)) continue;
    if (!index) addAll(track, ring, true, HALF_STAKE, blocked);
    else {
      edgesNear(index, box, HALF_STAKE, (i) =>
        addNear(track, ring[i]!, ring[i + 1 === ring.length ? 0 : i + 1]!, HALF_STAKE, blocked),
      );
    }
  }
  blocked.sort((a, b) => a[0] - b[0]);
  const clear: TrackSpan[] = [];
  let at = 0;
  for (const [lo, hi] of blocked) {
    const to = Math.min(lo, length);
    if (lo >= at && at <= to && isClear(track, at, to, ground.polygons, near)) clear.push([at, to]);
    at = Math.max(at, hi);
  }
  if (at <= length && isClear(track, at, length, ground.polygons, near)) clear.push([at, length]);
  return clear;
}

function addAll(
  track: Track,
  points: readonly Point[],
  closed: boolean,
  reach: Grid,
  spans: TrackSpan[],
): void {
  for (let i = closed ? 0 : 1; i < points.length; i++) {
    addNear(track, points[i === 0 ? points.length - 1 : i - 1]!, points[i]!, reach, spans);
  }
}

/** Between places near an edge a track crosses none, so its middle tells for the whole of it. */
function isClear(
  track: Track,
  lo: number,
  hi: number,
  polygons: readonly Polygon[],
  near: readonly Obstacle[],
): boolean {
  const middle = placeOn(track, (lo + hi) / 2);
  return !inPour(middle, polygons) && !obstacleAt(middle, near);
}
