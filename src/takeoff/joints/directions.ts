import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import { degreesApart } from './meeting.ts';

/** A direction of lines, a unit. */
export interface Direction {
  readonly dx: number;
  readonly dy: number;
}

/** Directions that differ by less than this are one, degrees: older edges aren't quite square. */
const ALIKE = 3;
/** Of the edges, so much must run one way or square to it before joints follow it. Our own, for the sake of order. */
const SHARE = 0.25;

/** Ways that joints run across the whole slab: along the edges that there is most of, and square to them. */
export function squareDirections({ outer }: Polygon): readonly Direction[] {
  const families: { angle: number; length: number }[] = [];
  let whole = 0;
  outer.forEach((a, i) => {
    const b = outer[(i + 1) % outer.length]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length === 0) return;
    whole += length;
    const angle = quarter(Math.atan2(b.y - a.y, b.x - a.x));
    const like = families.find((one) => apart(one.angle, angle) < (ALIKE * Math.PI) / 180);
    if (like) like.length += length;
    else families.push({ angle, length });
  });
  return families
    .toSorted((a, b) => b.length - a.length)
    .filter(({ length }, i) => i === 0 || (i === 1 && length >= SHARE * whole))
    .flatMap(({ angle }) => {
      const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
      return [
        { dx, dy },
        { dx: -dy, dy: dx },
      ];
    });
}

function quarter(angle: number): number {
  const turned = angle % (Math.PI / 2);
  return turned < 0 ? turned + Math.PI / 2 : turned;
}

function apart(a: number, b: number): number {
  const off = Math.abs(a - b);
  return Math.min(off, Math.PI / 2 - off);
}

/** From a place on the edge: along both edges there, square to both, and halving the corner. */
export function edgeDirections({ outer, holes }: Polygon, place: Point): readonly Direction[] {
  for (const ring of [outer, ...holes]) {
    const at = ring.findIndex(({ x, y }) => x === place.x && y === place.y);
    if (at < 0) continue;
    const into = unit(ring[(at + ring.length - 1) % ring.length]!, place);
    const out = unit(place, ring[(at + 1) % ring.length]!);
    const half = { dx: into.dx - out.dx, dy: into.dy - out.dy };
    const long = Math.hypot(half.dx, half.dy);
    const halving = long < 1e-6 ? [] : [{ dx: half.dx / long, dy: half.dy / long }];
    return unlike([into, out, squareTo(into), squareTo(out), ...halving]);
  }
  return [];
}

/** From a place square to each edge that lies across from it: the shortest way over. */
export function waysOver(rings: readonly Ring[], place: Point): readonly Direction[] {
  return unlike(
    rings.flatMap((ring) =>
      ring.flatMap((a, i) => {
        const b = ring[(i + 1) % ring.length]!;
        const along = unit(a, b);
        const foot = (place.x - a.x) * along.dx + (place.y - a.y) * along.dy;
        const off = Math.abs(along.dx * (place.y - a.y) - along.dy * (place.x - a.x));
        const within = foot > 0 && foot < Math.hypot(b.x - a.x, b.y - a.y);
        return within && off > 1 ? [squareTo(along)] : [];
      }),
    ),
  );
}

export function unit(a: Point, b: Point): Direction {
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return { dx: (b.x - a.x) / long, dy: (b.y - a.y) / long };
}

function squareTo({ dx, dy }: Direction): Direction {
  return { dx: -dy, dy: dx };
}

/** Ways that differ by less than a degree are one line. */
export function unlike(ways: readonly Direction[]): readonly Direction[] {
  const kept: Direction[] = [];
  for (const way of ways) {
    const angle = Math.atan2(way.dy, way.dx);
    const known = kept.some(({ dx, dy }) => {
      const off = degreesApart(angle, Math.atan2(dy, dx));
      return Math.min(off, 180 - off) < 1;
    });
    if (!known) kept.push(way);
  }
  return kept;
}
