import { segmentArea } from '../../geometry/arc.ts';
import { doubledArea } from '../../geometry/area.ts';
import { distanceToEdge } from '../../geometry/locate.ts';
import type { ArcOf, Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { Layout } from './layout.ts';
import type { PourEdge } from './pour.ts';
import { arcOfEdge } from './shapes.ts';
import type { Stretch } from './stretches.ts';

/** Rounding bends a straight line by no more than this where a corner was taken into it. */
const STRAIGHT: Grid = 2;

/** Member, corner or edge of its shape, and distance along that edge. */
export type Place = readonly [member: number, corner: number, along: number];

/** Edges of one ring, and the place of each in the order of the sketch. */
export interface Joined {
  readonly edges: readonly PourEdge[];
  /** Sorts rings and pieces as they were drawn. */
  readonly place: Place;
  /** For each stretch given, the number of the edge that it went into. */
  readonly edgeOf: readonly number[];
}

/**
 * Joins the stretches of one ring that make one straight side or one arc and meet one thing. The ring starts at the
 * earliest drawn corner. A corner is dropped when the side is straight through it, to rounding; on a line that came from
 * one straight edge of a shape, when it is straight to within 'close enough' (the weld bent it by no more).
 * A whole circle becomes two half circles.
 */
export function joinStretches(layout: Layout, stretches: readonly Stretch[]): Joined {
  const count = stretches.length;
  const curved = stretches.map((stretch) => isCurved(layout, stretch));
  const isOne = (i: number, j: number) =>
    curved[i] === curved[j] &&
    isAlike(stretches[i]!, stretches[j]!) &&
    (!curved[i] || isSameSource(stretches[i]!, stretches[j]!));

  let first = 0;
  for (let i = 0; i < count; i++) {
    const before = i === 0 ? count - 1 : i - 1;
    if (isOne(before, i) && (curved[i] || isStraight(stretches, [before, i], layout.tolerance))) {
      continue;
    }
    first = i;
    break;
  }
  let group = [first];
  const groups = [group];
  for (let n = 1; n < count; n++) {
    const i = first + n < count ? first + n : first + n - count;
    if (isOne(group[group.length - 1]!, i)) {
      group.push(i);
      if (curved[i] || isStraight(stretches, group, layout.tolerance)) continue;
      group.pop();
    }
    group = [i];
    groups.push(group);
  }
  const isCircle = groups.length === 1 && curved[first];
  const sides = isCircle ? halves(group) : groups;
  const edges = sides.map((side) => {
    const arc = curved[side[0]!] ? arcOf(layout, stretches[side[0]!]!) : undefined;
    return edgeOf(stretches, side, arc, isCircle === true);
  });
  return inDrawnOrder(layout, stretches, sides, edges);
}

function isCurved({ members }: Layout, { member, edge }: Stretch): boolean {
  const { shape } = members[member]!.feature;
  return shape.form === 'round' || shape.corners[edge]!.rise !== 0;
}

/** The arc's circle when a stretch is a chord of one; the centre and radius alone matter. */
function arcOf({ members }: Layout, { member, edge }: Stretch): ArcOf | undefined {
  return arcOfEdge(members[member]!.feature.shape, edge);
}

function isAlike(a: Stretch, b: Stretch): boolean {
  return a.kind === b.kind && a.feature === b.feature && a.patch === b.patch;
}

function isSameSource(a: Stretch, b: Stretch): boolean {
  return a.member === b.member && a.edge === b.edge;
}

/** Whether the corners between consecutive stretches may be dropped. */
function isStraight(
  stretches: readonly Stretch[],
  group: readonly number[],
  tolerance: Grid,
): boolean {
  const a = stretches[group[0]!]!;
  const { to } = stretches[group[group.length - 1]!]!;
  const oneSource = group.every((i) => isSameSource(a, stretches[i]!));
  const limit = oneSource ? tolerance : STRAIGHT;
  let reached = 0;
  for (let k = 0; k < group.length - 1; k++) {
    const corner = stretches[group[k]!]!.to;
    const along =
      (corner.x - a.from.x) * (to.x - a.from.x) + (corner.y - a.from.y) * (to.y - a.from.y);
    // Turning back on itself is a corner, however narrow.
    if (along <= reached || distanceToEdge(corner, a.from, to) > limit) return false;
    reached = along;
  }
  return true;
}

function halves(group: readonly number[]): number[][] {
  const middle = Math.floor(group.length / 2);
  return [group.slice(0, middle), group.slice(middle)];
}

function edgeOf(
  stretches: readonly Stretch[],
  group: readonly number[],
  circle: ArcOf | undefined,
  isHalf: boolean,
): PourEdge {
  const { from, kind, feature, patch } = stretches[group[0]!]!;
  const { to } = stretches[group[group.length - 1]!]!;
  if (!circle) {
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    const length = Math.round(Math.sqrt(dx * dx + dy * dy));
    return { from, to, kind, feature, patch, length };
  }
  const { cx, cy, radius } = circle;
  const seen = group.reduce((sum, i) => sum + angleAt(cx, cy, stretches[i]!), 0);
  // Rounding puts the ends of half a circle a trifle off its diameter.
  const sweep = isHalf ? Math.sign(seen) * Math.PI : seen;
  const length = Math.round(radius * Math.abs(sweep));
  return { from, to, arc: { cx, cy, radius, sweep }, kind, feature, patch, length };
}

/** The angle that a chord turns through as seen from a centre, counter-clockwise positive. */
function angleAt(cx: number, cy: number, { from, to }: Stretch): number {
  const ax = from.x - cx;
  const ay = from.y - cy;
  const bx = to.x - cx;
  const by = to.y - cy;
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

/** Turns the ring so that it starts at its earliest drawn corner; a ring of round block-outs alone stays as it is. */
function inDrawnOrder(
  { members }: Layout,
  stretches: readonly Stretch[],
  groups: readonly (readonly number[])[],
  edges: readonly PourEdge[],
): Joined {
  const origin = edges[0]!.from;
  const starts = new Map(edges.map(({ from }, g) => [placeNumber(from, origin), g]));
  const sources = new Set(stretches.map(({ member }) => member));
  let found: { start: number; place: Place } | undefined;
  for (let member = 0; member < members.length && !found; member++) {
    if (!sources.has(member)) continue;
    const { feature } = members[member]!;
    const corners = feature.shape.form === 'round' ? [] : feature.shape.corners;
    const corner = corners.findIndex((one) => starts.has(placeNumber(one, origin)));
    if (corner < 0) continue;
    found = {
      start: starts.get(placeNumber(corners[corner]!, origin))!,
      place: [member, corner, 0],
    };
  }
  const { start, place } = found ?? earliestSource(members, stretches, groups);
  const edgeOfStretch: number[] = new Array(stretches.length);
  groups.forEach((group, g) => {
    for (const i of group) edgeOfStretch[i] = (g - start + groups.length) % groups.length;
  });
  return {
    edges: [...edges.slice(start), ...edges.slice(0, start)],
    place,
    edgeOf: edgeOfStretch,
  };
}

/** For a ring with no drawn corner: the edge that lies first along the first of its sources. */
function earliestSource(
  members: Layout['members'],
  stretches: readonly Stretch[],
  groups: readonly (readonly number[])[],
): { start: number; place: Place } {
  let start = 0;
  let place: Place = [Number.POSITIVE_INFINITY, 0, 0];
  groups.forEach((group, g) => {
    const { member, edge, from } = stretches[group[0]!]!;
    const { chain } = members[member]!;
    const first = chain.points[chain.tags.indexOf(edge)] ?? from;
    const dx = from.x - first.x;
    const dy = from.y - first.y;
    const here: Place = [member, edge, Math.sqrt(dx * dx + dy * dy)];
    if (!isBefore(here, place)) return;
    place = here;
    start = g;
  });
  return { start, place };
}

/** One number for each place: no two places of a job are farther apart than the extent limit, which is under 2^26. */
function placeNumber({ x, y }: Point, origin: Point): number {
  return (x - origin.x) * 2 ** 26 + (y - origin.y);
}

/** Whether one place on the sketch comes before another. */
export function isBefore(a: Place, b: Place): boolean {
  if (a[0] !== b[0]) return a[0] < b[0];
  return a[1] === b[1] ? a[2] < b[2] : a[1] < b[1];
}

/**
 * Area inside a ring of edges, square grid units, arcs counted as arcs; negative for a hole. Straight-sided rings are
 * exact to half a square unit's whole numbers.
 */
export function ringArea(edges: readonly PourEdge[]): number {
  const corners: Point[] = edges.map(({ from }) => from);
  let area = doubledArea(corners) / 2;
  for (const { from, to, arc } of edges) if (arc) area += bulge(from, to, arc);
  return area;
}

/** Area between an arc and its chord, for ends that rounding may have put just off the circle. */
function bulge(from: Point, to: Point, arc: ArcOf): number {
  const { cx, cy, radius, sweep } = arc;
  if (from.x === to.x && from.y === to.y) return segmentArea(arc);
  const triangle = (from.x - cx) * (to.y - cy) - (from.y - cy) * (to.x - cx);
  return (radius * radius * sweep - triangle) / 2;
}
