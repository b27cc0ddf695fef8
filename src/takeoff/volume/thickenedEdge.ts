import { areaAlong, type EdgeWay, type StripEdge } from '../../geometry/edgeStrips.ts';
import type { Polygon } from '../../geometry/point.ts';
import type { Practices } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import { pointsFrom, pourPolygons } from '../pourPolygons.ts';
import type { ThickenedResult } from '../result.ts';
import { ARC_CHORDS } from './rules.ts';

/** Parts that the taper is halved into at most where its area doesn't change evenly, as powers of two. */
const MOST_HALVINGS = 9;

/**
 * What the thickened edge takes below the slab, over all free edges: as deep as it goes over its width, then less and
 * less over the taper. On the real shape: corners mitred, what two edges share once, no more than the pour. Volume is
 * depth below the slab (`thickness` of its own) times a mean area, cubic grid units. Arcs as chords within 1/20 mm. Source: geometry.
 *
 * Over the taper the mean of the areas within each reach is taken, by Simpson's rule: exact as long as the strips grow
 * evenly, and halved where they meet each other or the far side of the pour.
 */
export function thickenedEdge(
  practices: Practices,
  pour: NetPour,
  thickness: Grid,
  polygons: readonly Polygon[] = pourPolygons(pour, ARC_CHORDS),
): ThickenedResult {
  const { depth, width, taper } = practices.thickenedEdge;
  const below = depth - thickness;
  const ways = freeWays(pour);
  const within = (reach: number): number => areaAlong(polygons, ways, reach);
  const flat = within(width);
  const all = taper > 0 ? within(width + taper) : flat;
  // What rounding the corners of the strips to the grid may move.
  const slack = pour.perimeter;
  const meanArea =
    taper > 0
      ? meanOf(within, { at: width, area: flat }, { at: width + taper, area: all }, slack)
      : flat;
  return {
    depth,
    width,
    taper,
    below,
    length: pour.lengthByKind.free,
    flatArea: flat,
    wholeArea: all,
    meanArea,
    volume: below * meanArea,
  };
}

interface Reading {
  readonly at: number;
  readonly area: number;
}

/** Mean of an area over the reaches between two readings. */
function meanOf(
  within: (reach: number) => number,
  from: Reading,
  to: Reading,
  slack: number,
): number {
  const read = (a: Reading, b: Reading): Reading => {
    const at = (a.at + b.at) / 2;
    return { at, area: within(at) };
  };
  const simpson = (a: Reading, m: Reading, b: Reading) => (a.area + 4 * m.area + b.area) / 6;
  const over = (a: Reading, m: Reading, b: Reading, halvings: number): number => {
    const [left, right] = [read(a, m), read(m, b)];
    const coarse = simpson(a, m, b);
    const fine = (simpson(a, left, m) + simpson(m, right, b)) / 2;
    if (halvings === 0 || Math.abs(fine - coarse) <= slack) return fine;
    return (over(a, left, m, halvings - 1) + over(m, right, b, halvings - 1)) / 2;
  };
  return over(from, read(from, to), to, MOST_HALVINGS);
}

/** Free edges that follow each other, ring by ring. */
function freeWays(pour: NetPour): readonly EdgeWay[] {
  return pour.pieces.flatMap(({ rings }) => rings.flatMap(({ edges }) => waysOf(edges)));
}

function waysOf(edges: readonly PourEdge[]): readonly EdgeWay[] {
  if (edges.every(isFree)) return [{ edges: edges.map(stripEdge), closed: true }];
  const ways: StripEdge[][] = [];
  edges.forEach((edge, i) => {
    if (!isFree(edge)) return;
    const before = edges[i - 1];
    if (before && isFree(before)) ways.at(-1)!.push(stripEdge(edge));
    else ways.push([stripEdge(edge)]);
  });
  // The ring may have been opened in the middle of a way.
  if (ways.length > 1 && isFree(edges[0]!) && isFree(edges.at(-1)!)) {
    const last = ways.pop()!;
    ways[0] = [...last, ...ways[0]!];
  }
  return ways.map((way) => ({ edges: way, closed: false }));
}

function isFree({ kind }: PourEdge): boolean {
  return kind === 'free';
}

function stripEdge(edge: PourEdge): StripEdge {
  const points = [...pointsFrom(edge, ARC_CHORDS), edge.to];
  return edge.arc ? { points, arc: edge.arc } : { points };
}
