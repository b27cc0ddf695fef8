import { boxOf } from '../../geometry/box.ts';
import { isInsideAny } from '../../geometry/inside.ts';
import { distanceToEdge } from '../../geometry/locate.ts';
import type { Point, Polygon } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import { isWalkable } from './sides.ts';

/** What can't be reached from where somebody can stand. */
export interface Reach {
  /** The place farthest from any such edge, and how far it is; nothing where there is nowhere to stand. */
  readonly farthest?: { readonly at: Point; readonly away: Grid };
  /** Edges along walls out of a hand's reach from outside: edged while the strip beside them is still open. */
  readonly wallsFirst: readonly PourEdge[];
}

/** Looked at: places on a net of about so many. Our own. */
const LOOKS = 250;

/** From edges where somebody can stand, by hand; places are looked at on a net, so the farthest is right to its mesh. */
export function reachOf(pour: NetPour, polygons: readonly Polygon[], hand: Grid): Reach {
  const edges = pour.pieces.flatMap(({ rings }) =>
    rings.filter(({ hole }) => !hole).flatMap((ring) => ring.edges),
  );
  const stands = edges.filter(({ kind }) => isWalkable(kind));
  const walls = edges.filter(({ kind }) => kind === 'wall' || kind === 'wall-formed');
  const away = (place: Point) =>
    stands.reduce(
      (least, { from, to }) => Math.min(least, distanceToEdge(place, from, to)),
      Number.POSITIVE_INFINITY,
    );
  const wallsFirst = walls.filter(({ from, to }) => away(middleOf(from, to)) > hand);
  if (stands.length === 0) return { wallsFirst };
  let farthest: { at: Point; away: Grid } | undefined;
  for (const at of net(polygons)) {
    const distance = Math.round(away(at));
    if (!farthest || distance > farthest.away) farthest = { at, away: distance };
  }
  return { ...(farthest ? { farthest } : {}), wallsFirst };
}

function middleOf(from: Point, to: Point): Point {
  return { x: Math.round((from.x + to.x) / 2), y: Math.round((from.y + to.y) / 2) };
}

function net(polygons: readonly Polygon[]): readonly Point[] {
  if (polygons.length === 0) return [];
  const { minX, minY, maxX, maxY } = boxOf(polygons.flatMap(({ outer }) => outer));
  const step = Math.max(1, Math.round(Math.sqrt(((maxX - minX) * (maxY - minY)) / LOOKS)));
  const places: Point[] = [];
  for (let x = minX + Math.round(step / 2); x < maxX; x += step) {
    for (let y = minY + Math.round(step / 2); y < maxY; y += step) {
      if (isInsideAny({ x, y }, polygons)) places.push({ x, y });
    }
  }
  return places;
}
