import type { Point } from '../../src/geometry/point.ts';
import type { Layout, Member } from '../../src/takeoff/outline/layout.ts';
import { EDGE_KINDS, type EdgeKind } from '../../src/takeoff/outline/pour.ts';

/** How far to either side of an edge the ground is looked at. */
const ASIDE = 0.01;
/** As in the net pour: lines that come within the tolerance run along each other if they do so for this many times it. */
const LONG = 16;

interface Bit {
  readonly a: Point;
  readonly b: Point;
}

interface Edge extends Bit {
  readonly member: Member;
}

export type Walked = Record<EdgeKind, number> & { total: number; patch: number };

/**
 * Lengths of the pour's boundary by what they meet, counted edge by edge without any clipper: every welded edge is cut
 * wherever another meets it, and each bit is on the boundary when there is pour on one side of its middle and none on
 * the other. What has its own outline along it, facing it, says what it meets; for a patch's edge with none, the slab
 * beyond. Grid units, floats.
 */
export function walkedLengths({ members, tolerance }: Layout): Walked {
  const kinds = Object.fromEntries(EDGE_KINDS.map((kind) => [kind, 0]));
  const result = { total: 0, patch: 0, ...kinds } as Walked;
  const edges = members.flatMap((member) => edgesOf(member).map((edge) => ({ member, ...edge })));
  edges.forEach((edge) => {
    if (edge.member.part === 'line') return;
    const near = edges.filter((other) => !isFar(edge, other, tolerance + 1));
    // The first of those that share a stretch counts it.
    const before = near.indexOf(edge);
    const earlier = near.slice(0, before).filter((other) => other.member.part !== 'line');
    for (const bit of cut(edge, near, tolerance)) {
      const length = Math.hypot(bit.b.x - bit.a.x, bit.b.y - bit.a.y);
      if (length === 0) continue;
      if (earlier.some((other) => covers(other, bit))) continue;
      const left = holders(members, beside(bit, 1));
      const right = holders(members, beside(bit, -1));
      if (isPour(left) === isPour(right)) continue;
      // From here on the pour lies to the left.
      const way = isPour(left) ? bit : { a: bit.b, b: bit.a };
      const beyond = isPour(left) ? right : left;
      const facing = near.filter(({ member, a, b }) => faces(member, { a, b }, way, tolerance));
      const isPatch = near.some(
        (other) => other.member.part === 'patch' && covers(other, bit) && !isAgainst(other, way),
      );
      const rank = Math.max(0, ...facing.map(({ member }) => member.rank));
      const slab =
        isPatch && beyond.some(({ part }) => part === 'existing') ? 'existing-slab' : 'free';
      result[rank > 0 ? EDGE_KINDS[rank]! : slab] += length;
      result.total += length;
      if (isPatch) result.patch += length;
    }
  });
  return result;
}

/** Whether what holds a place makes it pour. */
export function isPour(holding: readonly Member[]): boolean {
  const has = (part: Member['part']) => holding.some((member) => member.part === part);
  return (has('pad') || has('patch')) && !has('cutter') && (!has('existing') || has('patch'));
}

function edgesOf({ chain: { points, closed } }: Member): Bit[] {
  return points.flatMap((a, i): Bit[] => {
    if (!closed && i === points.length - 1) return [];
    return [{ a, b: points[(i + 1) % points.length]! }];
  });
}

function beside({ a, b }: Bit, way: number): Point {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return {
    x: (a.x + b.x) / 2 - (way * ASIDE * (b.y - a.y)) / length,
    y: (a.y + b.y) / 2 + (way * ASIDE * (b.x - a.x)) / length,
  };
}

/** The closed members that a place lies in, by counting crossings of a ray. */
function holders(members: readonly Member[], at: Point): readonly Member[] {
  return members.filter(({ part, chain: { box, points } }) => {
    if (part === 'line' || at.x < box.minX || at.x > box.maxX) return false;
    if (at.y < box.minY || at.y > box.maxY) return false;
    let inside = false;
    let a = points[points.length - 1]!;
    for (const b of points) {
      if (a.y > at.y !== b.y > at.y && at.x < a.x + ((at.y - a.y) / (b.y - a.y)) * (b.x - a.x)) {
        inside = !inside;
      }
      a = b;
    }
    return inside;
  });
}

/** A place seen from an edge: how far along it, and how far to its left. */
function seen({ a, b }: Bit, { x, y }: Point): { at: number; aside: number; length: number } {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const length = Math.hypot(dx, dy);
  return {
    at: (dx * (x - a.x) + dy * (y - a.y)) / length,
    aside: (dx * (y - a.y) - dy * (x - a.x)) / length,
    length,
  };
}

/** An edge in bits, cut where others cross it, come within the tolerance of it, or end beside it. */
function cut(edge: Edge, others: readonly Edge[], tolerance: number): Bit[] {
  const { a, b } = edge;
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const cuts = [0, length];
  for (const other of others) {
    if (isFar(edge, other, tolerance)) continue;
    const s = seen(edge, other.a);
    const e = seen(edge, other.b);
    for (const end of [s, e]) if (Math.abs(end.aside) <= tolerance + 1) cuts.push(end.at);
    for (const level of [-tolerance, 0, tolerance]) {
      if ((s.aside - level) * (e.aside - level) >= 0) continue;
      cuts.push(s.at + ((s.aside - level) / (s.aside - e.aside)) * (e.at - s.at));
    }
  }
  const sorted = cuts.filter((at) => at >= 0 && at <= length).sort((p, q) => p - q);
  const place = (at: number): Point => ({
    x: a.x + ((b.x - a.x) * at) / length,
    y: a.y + ((b.y - a.y) * at) / length,
  });
  return sorted.slice(1).map((at, i) => ({ a: place(sorted[i]!), b: place(at) }));
}

function isFar(p: Bit, q: Bit, reach: number): boolean {
  return (
    Math.max(p.a.x, p.b.x) + reach < Math.min(q.a.x, q.b.x) ||
    Math.max(q.a.x, q.b.x) + reach < Math.min(p.a.x, p.b.x) ||
    Math.max(p.a.y, p.b.y) + reach < Math.min(q.a.y, q.b.y) ||
    Math.max(q.a.y, q.b.y) + reach < Math.min(p.a.y, p.b.y)
  );
}

/** Whether a bit lies on an edge. */
function covers(edge: Edge, bit: Bit): boolean {
  if (isFar(edge, bit, 1)) return false;
  const s = seen(edge, bit.a);
  const e = seen(edge, bit.b);
  const middle = (s.at + e.at) / 2;
  return Math.max(Math.abs(s.aside), Math.abs(e.aside)) < 0.1 && middle > 0 && middle < s.length;
}

function isAgainst({ a, b }: Bit, way: Bit): boolean {
  return (b.x - a.x) * (way.b.x - way.a.x) + (b.y - a.y) * (way.b.y - way.a.y) < 0;
}

/** Whether a member's edge runs along a bit from the side where there is no pour. */
function faces({ part }: Member, edge: Bit, way: Bit, tolerance: number): boolean {
  if (part === 'pad' || part === 'patch' || isFar(edge, way, tolerance)) return false;
  if (part !== 'line' && !isAgainst(edge, way)) return false;
  const s = seen(way, edge.a);
  const e = seen(way, edge.b);
  const middle = s.length / 2;
  if (middle <= Math.min(s.at, e.at) || middle >= Math.max(s.at, e.at)) return false;
  // How far off the line the edge is, square to the middle of the bit, and for how long it stays within the tolerance.
  const slope = (e.aside - s.aside) / (e.at - s.at);
  const aside = s.aside + slope * (middle - s.at);
  if (Math.abs(aside) > tolerance + 1) return false;
  if (Math.abs(aside) <= 2 && Math.abs(slope) < 0.01) return true;
  const inStrip = (at: number) => Math.min(tolerance, Math.max(-tolerance, at));
  const share = slope === 0 ? 1 : (inStrip(e.aside) - inStrip(s.aside)) / (e.aside - s.aside);
  return Math.abs(e.at - s.at) * share >= LONG * tolerance;
}
