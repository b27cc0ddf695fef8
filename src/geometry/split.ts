import { doubledArea } from './area.ts';
import { locate } from './locate.ts';
import type { Point, Polygon, Ring } from './point.ts';
import { toGrid } from './round.ts';

/** A place this near to a line is on it, grid units: places on sloping lines are rounded to the grid. */
const ON_LINE = 2;

/** A stretch of a line that lies inside a polygon, from its boundary to its boundary, ends on the grid. */
export interface Chord {
  readonly from: Point;
  readonly to: Point;
}

const NONE: readonly Chord[] = [];

/** The stretches of a straight cut that lie inside a polygon; where the cut itself ends inside, none reaches that end. */
export function chordsIn(polygon: Polygon, from: Point, to: Point): readonly Chord[] {
  const { outer, holes } = polygon;
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  if (long === 0) return NONE;
  const dx = (to.x - from.x) / long;
  const dy = (to.y - from.y) / long;
  const places: OnLine[] = [];
  placesOn(outer, from, dx, dy, places);
  for (const hole of holes) placesOn(hole, from, dx, dy, places);
  if (places.length < 2) return NONE;
  places.sort((a, b) => a.along - b.along);
  const chords: Chord[] = [];
  for (let i = 1; i < places.length; i++) {
    const a = places[i - 1]!;
    const b = places[i]!;
    if (b.along - a.along <= 2 * ON_LINE) continue;
    if (a.along < -2 * ON_LINE || b.along > long + 2 * ON_LINE) continue;
    if (middleIsIn(polygon, a.at, b.at)) chords.push({ from: a.at, to: b.at });
  }
  return chords;
}

interface OnLine {
  readonly along: number;
  readonly at: Point;
}

/** Adds where a ring touches or crosses a line through a place. */
function placesOn(ring: Ring, from: Point, dx: number, dy: number, into: OnLine[]): void {
  let a = ring[ring.length - 1]!;
  let offA = dx * (a.y - from.y) - dy * (a.x - from.x);
  for (let i = 0; i < ring.length; i++) {
    const b = ring[i]!;
    const offB = dx * (b.y - from.y) - dy * (b.x - from.x);
    if (offB <= ON_LINE && offB >= -ON_LINE) {
      into.push({ along: dx * (b.x - from.x) + dy * (b.y - from.y), at: b });
    } else if ((offA > ON_LINE && offB < 0) || (offA < -ON_LINE && offB > 0)) {
      const share = offA / (offA - offB);
      const at = { x: toGrid(a.x + share * (b.x - a.x)), y: toGrid(a.y + share * (b.y - a.y)) };
      into.push({ along: dx * (at.x - from.x) + dy * (at.y - from.y), at });
    }
    a = b;
    offA = offB;
  }
}

/** Whether the middle of a straight line lies inside, and on no edge but a hole's. */
export function middleIsIn({ outer, holes }: Polygon, a: Point, b: Point): boolean {
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  return (
    locate(middle, outer) === 'inside' && holes.every((hole) => locate(middle, hole) !== 'inside')
  );
}

/**
 * A polygon parted along its own chords, one after another. A chord to a hole parts nothing yet: the ring then goes in
 * along it, round the hole, and out along it. Corners that both parts share are the same in both.
 */
export function splitAlong(polygon: Polygon, chords: readonly Chord[]): readonly Polygon[] {
  let parts: readonly Polygon[] = [polygon];
  for (const chord of chords) {
    const at =
      parts.length === 1 ? 0 : parts.findIndex((part) => middleIsIn(part, chord.from, chord.to));
    if (at < 0) continue;
    const cut = cutOnce(parts[at]!, chord);
    parts = [...parts.slice(0, at), ...cut, ...parts.slice(at + 1)];
  }
  return parts;
}

function cutOnce(polygon: Polygon, { from, to }: Chord): readonly Polygon[] {
  const rings = [polygon.outer, ...polygon.holes];
  const start = spotOn(rings, from, to);
  const end = spotOn(rings, to, from);
  if (!start || !end) return [polygon];
  if (start.ring !== end.ring) {
    const joined = [...openedAt(rings, start), ...openedAt(rings, end)];
    const others = polygon.holes.filter((_, i) => i + 1 !== start.ring && i + 1 !== end.ring);
    return start.ring === 0 || end.ring === 0
      ? [{ outer: joined, holes: others }]
      : [{ outer: polygon.outer, holes: [...others, joined] }];
  }
  const ring = rings[start.ring]!;
  const loops = [wayBetween(ring, start, end), wayBetween(ring, end, start)];
  const others = polygon.holes.filter((_, i) => i + 1 !== start.ring);
  if (start.ring === 0) return shared(loops, others);
  // From a hole back to it: the loop that runs the right way round is a part of its own.
  const parts = loops.filter((loop) => doubledArea(loop) > 0);
  const hole = loops.filter((loop) => doubledArea(loop) <= 0);
  return shared([...parts, polygon.outer], [...hole, ...others]);
}

/** Holes given to the part that they lie in; parts within others come first. */
function shared(outers: readonly Ring[], holes: readonly Ring[]): readonly Polygon[] {
  const of = holes.map((hole) =>
    Math.max(
      0,
      outers.findIndex((outer) => hole.every((place) => locate(place, outer) !== 'outside')),
    ),
  );
  return outers.map((outer, i) => ({ outer, holes: holes.filter((_, k) => of[k] === i) }));
}

/** A place on a ring: at a corner, or on the edge that begins at it. */
interface Spot {
  readonly ring: number;
  readonly corner: number;
  readonly onEdge: boolean;
  readonly at: Point;
}

/** Where a chord leaves a ring. A ring that runs over a place twice is left where the way to the other end lies inside. */
function spotOn(rings: readonly Ring[], at: Point, other: Point): Spot | undefined {
  let fallback: Spot | undefined;
  for (let r = 0; r < rings.length; r++) {
    const ring = rings[r]!;
    for (let i = 0; i < ring.length; i++) {
      const b = ring[i]!;
      if (Math.abs(b.x - at.x) > 1 || Math.abs(b.y - at.y) > 1) continue;
      const spot = { ring: r, corner: i, onEdge: false, at: b };
      const before = ring[(i + ring.length - 1) % ring.length]!;
      if (opensTo(before, b, ring[(i + 1) % ring.length]!, other)) return spot;
      fallback ??= spot;
    }
  }
  if (fallback) return fallback;
  for (let r = 0; r < rings.length; r++) {
    const ring = rings[r]!;
    for (let i = 0; i < ring.length; i++) {
      const a = ring[i]!;
      const b = ring[(i + 1) % ring.length]!;
      const ex = b.x - a.x;
      const ey = b.y - a.y;
      const px = at.x - a.x;
      const py = at.y - a.y;
      const along = ex * px + ey * py;
      const square = ex * ex + ey * ey;
      if (along < 0 || along > square) continue;
      const off = ex * py - ey * px;
      if (off * off > ON_LINE * ON_LINE * square) continue;
      const spot = { ring: r, corner: i, onEdge: true, at };
      if (ex * (other.y - a.y) - ey * (other.x - a.x) > 0) return spot;
      fallback ??= spot;
    }
  }
  return fallback;
}

/** Whether the way from a corner to a place starts out inside, the inside being to the left. */
function opensTo(before: Point, at: Point, after: Point, place: Point): boolean {
  const ix = at.x - before.x;
  const iy = at.y - before.y;
  const ox = after.x - at.x;
  const oy = after.y - at.y;
  const px = place.x - at.x;
  const py = place.y - at.y;
  const turned = ix * oy - iy * ox;
  const leftOfIn = ix * py - iy * px > 0;
  const leftOfOut = ox * py - oy * px > 0;
  if (turned > 0) return leftOfIn && leftOfOut;
  if (turned < 0) return leftOfIn || leftOfOut;
  return ix * ox + iy * oy < 0 || leftOfIn;
}

/** Round a whole ring, from a spot back to it. */
function openedAt(rings: readonly Ring[], spot: Spot): readonly Point[] {
  return wayBetween(rings[spot.ring]!, spot, spot, true);
}

/** From one spot of a ring on to another, both included. */
function wayBetween(ring: Ring, from: Spot, to: Spot, round = false): readonly Point[] {
  const way: Point[] = [from.at];
  const count = ring.length;
  let steps = (to.corner - from.corner + count) % count;
  // Both on one edge, the second before the first, or the same spot: all the way round.
  if (steps === 0 && (round || isBefore(ring, to, from))) steps = count;
  for (let i = 1; i <= steps; i++) way.push(ring[(from.corner + i) % count]!);
  if (to.onEdge || steps === 0) way.push(to.at);
  else way[way.length - 1] = to.at;
  return way.filter(
    (place, i) => i === 0 || place.x !== way[i - 1]!.x || place.y !== way[i - 1]!.y,
  );
}

function isBefore(ring: Ring, one: Spot, other: Spot): boolean {
  const start = ring[one.corner]!;
  const reach = ({ at }: Spot) => Math.hypot(at.x - start.x, at.y - start.y);
  return reach(one) < reach(other);
}
