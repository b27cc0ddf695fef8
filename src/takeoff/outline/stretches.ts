import { boxesMeet } from '../../geometry/box.ts';
import { edgeCount } from '../../geometry/chain.ts';
import { type EdgeIndex, edgesNear, indexEdges } from '../../geometry/edgeIndex.ts';
import { locate } from '../../geometry/locate.ts';
import { edgeEnd } from '../../geometry/nearby.ts';
import type { Point, Ring } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Grid } from '../../units/grid.ts';
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

/** Every welded edge that the boundary can have come from, in columns. */
interface Sources {
  readonly starts: readonly Point[];
  readonly ends: readonly Point[];
  readonly member: readonly number[];
  readonly edge: readonly number[];
  readonly index: EdgeIndex | undefined;
}

/** A stretch of a source edge that lies along a boundary edge, measured from that edge's start. */
interface Along {
  readonly lo: number;
  readonly hi: number;
  readonly member: number;
  readonly edge: number;
  /** Whether it runs the same way as the boundary. */
  readonly same: boolean;
}

/** With fewer source edges than this, walking them all is quicker than an index. */
const FEW = 96;

/** Rounding leaves boundary and source this far apart at most; a coarser grid in the clipping, as many times more. */
const NEAR = 2;

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
  let sources: Sources | undefined;
  return rings.map((ring) => {
    if (ring.lone !== undefined) return loneStretches(layout, ring.points, ring.lone);
    sources ??= gather(layout, rings);
    return ringStretches(layout, sources, ring.points, NEAR * grid);
  });
}

/** A ring that is one member's whole outline: nothing to look up. */
function loneStretches({ members }: Layout, points: Ring, k: number): Stretch[] {
  const { feature, kind, part, chain } = members[k]!;
  const patch = part === 'patch';
  const count = points.length;
  // A hole is the chain backwards: its edge i is the chain's edge count − 2 − i.
  const backwards = part !== 'pad' && part !== 'patch';
  return points.map((from, i) => ({
    from,
    to: points[i + 1 === count ? 0 : i + 1]!,
    kind,
    feature: feature.id,
    patch,
    member: k,
    edge: chain.tags[backwards ? (2 * count - 2 - i) % count : i]!,
  }));
}

function gather({ members }: Layout, rings: readonly CarvedRing[]): Sources {
  const lone = new Set(rings.map((ring) => ring.lone));
  const starts: Point[] = [];
  const ends: Point[] = [];
  const member: number[] = [];
  const edge: number[] = [];
  members.forEach(({ chain }, k) => {
    if (lone.has(k)) return;
    const count = edgeCount(chain);
    for (let i = 0; i < count; i++) {
      starts.push(chain.points[i]!);
      ends.push(edgeEnd(chain, i));
      member.push(k);
      edge.push(chain.tags[i]!);
    }
  });
  const index = starts.length > FEW ? indexEdges(starts, ends) : undefined;
  return { starts, ends, member, edge, index };
}

function ringStretches(layout: Layout, sources: Sources, points: Ring, near: number): Stretch[] {
  const stretches: Stretch[] = [];
  for (let i = 0; i < points.length; i++) {
    const from = points[i]!;
    const to = points[i + 1 === points.length ? 0 : i + 1]!;
    cut(layout, sources, from, to, near, stretches);
  }
  return stretches;
}

/** Cuts one boundary edge into stretches. */
function cut(
  layout: Layout,
  sources: Sources,
  from: Point,
  to: Point,
  near: number,
  into: Stretch[],
): void {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  const along: Along[] = [];
  const crossings: number[] = [];
  // Nothing that runs along the edge: look wider. Something always does, since every edge came from somewhere.
  for (let reach = near; along.length === 0; reach *= 4) {
    collect(layout, sources, from, to, reach, along, crossings);
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

/** Source edges that run along from → to within `reach` of it, and where slab edges cross it. */
function collect(
  { members }: Layout,
  sources: Sources,
  from: Point,
  to: Point,
  reach: number,
  along: Along[],
  crossings: number[],
): void {
  const { starts, ends, index } = sources;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  const minX = Math.min(from.x, to.x) - reach;
  const maxX = Math.max(from.x, to.x) + reach;
  const minY = Math.min(from.y, to.y) - reach;
  const maxY = Math.max(from.y, to.y) + reach;
  const snap = 2 * reach;
  const least = Math.min(8 * reach, length / 2);
  const look = (s: number): void => {
    const a = starts[s]!;
    const b = ends[s]!;
    if (a.x < minX && b.x < minX) return;
    if (a.x > maxX && b.x > maxX) return;
    if (a.y < minY && b.y < minY) return;
    if (a.y > maxY && b.y > maxY) return;
    const ax = a.x - from.x;
    const ay = a.y - from.y;
    const bx = b.x - from.x;
    const by = b.y - from.y;
    const aside = (dx * ay - dy * ax) / length;
    const bside = (dx * by - dy * bx) / length;
    if ((aside > reach && bside > reach) || (aside < -reach && bside < -reach)) return;
    const aAt = (dx * ax + dy * ay) / length;
    const bAt = (dx * bx + dy * by) / length;
    const member = sources.member[s]!;
    // The part of a → b that lies within reach of the line.
    const lower = Math.max(0, shareWithin(aside, bside, reach));
    const upper = Math.min(1, 1 - shareWithin(bside, aside, reach));
    const p = aAt + lower * (bAt - aAt);
    const q = aAt + upper * (bAt - aAt);
    let lo = Math.max(0, Math.min(p, q));
    let hi = Math.min(length, Math.max(p, q));
    if (hi - lo < least) {
      if (members[member]!.part === 'existing' && aside * bside < 0) {
        const at = aAt + (aside / (aside - bside)) * (bAt - aAt);
        if (at > 0 && at < length) crossings.push(at);
      }
      return;
    }
    if (lo < snap) lo = 0;
    if (hi > length - snap) hi = length;
    along.push({ lo, hi, member, edge: sources.edge[s]!, same: bAt > aAt });
  };
  if (index) edgesNear(index, minX, minY, maxX, maxY, 0, look);
  else for (let s = 0; s < starts.length; s++) look(s);
}

/** How far along an edge, from its start, lies the first place no farther than `reach` to either side of a line. */
function shareWithin(startSide: number, endSide: number, reach: number): number {
  if (Math.abs(startSide) <= reach) return 0;
  return (Math.abs(startSide) - reach) / Math.abs(endSide - startSide);
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
  let patch = false;
  let nearest: Along | undefined;
  let gap = Number.POSITIVE_INFINITY;
  for (const one of along) {
    const away = Math.max(one.lo - at, at - one.hi, 0);
    if (away < gap) {
      gap = away;
      nearest = one;
    }
    if (away > 0) continue;
    const { part, rank } = members[one.member]!;
    if (part === 'pad' || part === 'patch') {
      if (!one.same) continue;
      if (part === 'patch') patch = true;
      if (!own || one.member < own.member) own = one;
    } else if (part === 'line' || !one.same) {
      if (!met || rank > members[met.member]!.rank) met = one;
    }
  }
  const source = met ?? own ?? nearest!;
  const { feature, kind } = members[source.member]!;
  if (!met && patch) {
    const slab = slabRound(layout, along, at, from, to);
    if (slab) {
      return {
        from,
        to,
        kind: 'existing-slab',
        feature: slab.feature.id,
        patch,
        member: source.member,
        edge: source.edge,
      };
    }
  }
  return { from, to, kind, feature: feature.id, patch, member: source.member, edge: source.edge };
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
