import { boxesMeet, boxOfEdge } from '../../geometry/box.ts';
import { locate } from '../../geometry/locate.ts';
import { type Point, type Ring, samePoint } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Grid } from '../../units/grid.ts';
import { type Along, collectAlong } from './along.ts';
import type { CarvedRing } from './carve.ts';
import type { Layout, Member } from './layout.ts';
import type { EdgeKind } from './pour.ts';

/** A straight bit of the pour's boundary that meets one thing all along, and whose line came from one edge. */
export interface Stretch {
  readonly from: Point;
  readonly to: Point;
  readonly kind: EdgeKind;
  /** The feature that it meets; for a free one, the pad or patch that it bounds. */
  readonly feature: string;
  /** It runs along the outline of a patch, with the patch on the pour's side. */
  readonly patch: boolean;
  /** The member, and the edge of that member's shape, whose line this is. */
  readonly member: number;
  readonly edge: number;
}

/** Rounding leaves boundary and source this far apart at most; a coarser grid in the clipping, as many times more. */
const NEAR = 2;

/** Only a pad with more edges than this is worth the quicker way. */
const MANY = 64;

/** Keeps the two coordinates of a place apart in one number. */
const WIDE = 2 ** 26;

/**
 * Names what each stretch of the carved rings meets.
 *
 * It works on intervals, not edges: the clipper joins edges that lie on one line, and a slab that abuts from outside
 * leaves no corner, so one edge of the pour can meet several things. Each source edge along a boundary edge is projected
 * on it, the boundary is cut where one ends, and of those that cover a bit the highest in EDGE_KINDS wins.
 *
 * Side matters: a slab whose concrete lies on the pour's own side of a line (a patch filling it up to its edge)
 * isn't met there.
 */
export function stretchesOf(
  layout: Layout,
  rings: readonly CarvedRing[],
  grid: number,
): Stretch[][] {
  return rings.map((ring) =>
    ring.lone === undefined
      ? ringStretches(layout, ring.points, NEAR * grid)
      : loneStretches(layout, ring.points, ring.lone),
  );
}

/** A ring that is one member's whole outline: nothing to look up. */
function loneStretches({ members }: Layout, points: Ring, k: number): Stretch[] {
  const { feature, kind, part, chain } = members[k]!;
  const patch = part === 'patch';
  const count = points.length;
  // A hole is the chain backwards from its first corner: its edge i is the chain's edge count − 1 − i.
  const backwards = part !== 'pad' && part !== 'patch';
  return points.map((from, i) => ({
    from,
    to: points[i + 1 === count ? 0 : i + 1]!,
    kind,
    feature: feature.id,
    patch,
    member: k,
    edge: chain.tags[backwards ? count - 1 - i : i]!,
  }));
}

function ringStretches(layout: Layout, points: Ring, near: number): Stretch[] {
  const stretches: Stretch[] = [];
  const quiet = quietEdges(layout);
  for (let i = 0; i < points.length; i++) {
    const from = points[i]!;
    const to = points[i + 1 === points.length ? 0 : i + 1]!;
    const stretch = quiet(from, to);
    if (stretch) stretches.push(stretch);
    else cut(layout, from, to, near, stretches);
  }
  return stretches;
}

/**
 * A quicker way for the many edges of a large pad that are met by nothing: the boundary follows the pad's own corners, so
 * the next edge of the pad is the likely source of the next edge of the boundary. It answers only when that is so and
 * no other feature's box comes near.
 */
function quietEdges({
  members,
  welded,
  tolerance,
}: Layout): (from: Point, to: Point) => Stretch | undefined {
  const pads = members.flatMap(({ part }, k) => (part === 'pad' ? [k] : []));
  const starts = pads.length === 1 && members[pads[0]!]!.chain.points.length > MANY;
  if (!starts) return () => undefined;
  const k = pads[0]!;
  const { feature, kind, chain } = members[k]!;
  const others = members.flatMap((member, j) =>
    j !== k && welded.meets[k * members.length + j] ? [member.chain.box] : [],
  );
  const { points, tags } = chain;
  const numbers = new Map(points.map((point, i) => [point.x * WIDE + point.y, i]));
  let next = 0;
  return (from, to) => {
    const count = points.length;
    if (!samePoint(points[next]!, from)) {
      const found = numbers.get(from.x * WIDE + from.y);
      if (found === undefined || !samePoint(points[found]!, from)) return undefined;
      next = found;
    }
    const at = next;
    next = at + 1 === count ? 0 : at + 1;
    if (!samePoint(points[next]!, to)) return undefined;
    const box = boxOfEdge(from, to);
    for (const other of others) if (boxesMeet(box, other, tolerance)) return undefined;
    return { from, to, kind, feature: feature.id, patch: false, member: k, edge: tags[at]! };
  };
}

/** Cuts one boundary edge into stretches. */
function cut(layout: Layout, from: Point, to: Point, near: number, into: Stretch[]): void {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  const along: Along[] = [];
  const crossings: number[] = [];
  // Nothing that runs along the edge: look wider. Something always does, since every edge came from somewhere.
  for (let reach = near; along.length === 0; reach *= 4) {
    collectAlong(layout, from, to, reach, along, crossings);
    if (reach > length && reach > 2 ** 26) throw new Error('An edge of the pour came from nowhere');
  }
  const cuts = cutsOf(along, crossings, length, layout.tolerance);
  let start = from;
  for (let i = 1; i < cuts.length; i++) {
    const share = cuts[i]! / length;
    const end =
      i === cuts.length - 1
        ? to
        : { x: from.x + toGrid(share * dx), y: from.y + toGrid(share * dy) };
    const middle = (cuts[i - 1]! + cuts[i]!) / 2;
    into.push(judge(layout, along, middle, start, end));
    start = end;
  }
}

/** Where a boundary edge has to be cut, its two ends included. Bits shorter than the tolerance aren't told apart. */
function cutsOf(
  along: readonly Along[],
  crossings: readonly number[],
  length: number,
  tolerance: Grid,
): number[] {
  const wanted: number[] = [];
  for (const { lo, hi } of along) {
    if (lo > 0) wanted.push(lo);
    if (hi < length) wanted.push(hi);
  }
  for (const at of crossings) wanted.push(at);
  if (wanted.length === 0) return [0, length];
  wanted.sort((a, b) => a - b);
  const cuts = [0];
  for (const at of wanted) {
    if (at - cuts[cuts.length - 1]! >= tolerance && length - at >= tolerance) cuts.push(at);
  }
  cuts.push(length);
  return cuts;
}

/** What the bit round `at` meets. */
function judge(
  layout: Layout,
  along: readonly Along[],
  at: number,
  from: Point,
  to: Point,
): Stretch {
  const { members } = layout;
  let met: Along | undefined;
  let own: Along | undefined;
  let line: Along | undefined;
  let patch = false;
  let gap = Number.POSITIVE_INFINITY;
  for (const one of along) {
    const away = Math.max(one.lo - at, at - one.hi, 0) + (one.isExact ? 0 : layout.tolerance);
    if (away < gap) {
      gap = away;
      line = one;
    }
    if (at < one.lo || at > one.hi) continue;
    const { part, rank } = members[one.member]!;
    if (part === 'pad' || part === 'patch') {
      if (!one.same) continue;
      if (part === 'patch') patch = true;
      if (!own || one.member < own.member) own = one;
    } else if (part === 'line' || !one.same) {
      if (!met || rank > members[met.member]!.rank) met = one;
    }
  }
  // The line that the boundary follows: of what it meets if that is its very line, else its own.
  const source = met?.isExact ? met : (own ?? line!);
  const { member, edge } = source;
  const feature = members[met ? met.member : member]!.feature.id;
  const kind = met ? members[met.member]!.kind : members[member]!.kind;
  if (!met && patch) {
    const slab = slabRound(layout, along, at, from, to);
    if (slab) {
      return { from, to, kind: 'existing-slab', feature: slab.feature.id, patch, member, edge };
    }
  }
  return { from, to, kind, feature, patch, member, edge };
}

/** The existing slab that a patch's edge lies within, away from that slab's own outline. */
function slabRound(
  { members }: Layout,
  along: readonly Along[],
  at: number,
  from: Point,
  to: Point,
): Member | undefined {
  const middle = { x: Math.round((from.x + to.x) / 2), y: Math.round((from.y + to.y) / 2) };
  const spot = { minX: middle.x, minY: middle.y, maxX: middle.x, maxY: middle.y };
  return members.find(
    ({ part, chain }, k) =>
      part === 'existing' &&
      boxesMeet(chain.box, spot, 0) &&
      !along.some((one) => one.member === k && one.lo <= at && at <= one.hi) &&
      locate(middle, chain.points) === 'inside',
  );
}
