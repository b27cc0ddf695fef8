import { edgesCross, meetingPoint } from '../../geometry/crossings.ts';
import { turn } from '../../geometry/locate.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import { middleIsIn } from '../../geometry/split.ts';
import type { Grid } from '../../units/grid.ts';
import type { NetPour, PourEdge, PourRing } from '../outline/pour.ts';
import type { BlockOutSpot, JointLine, JointProblem, JointRules } from './layout.ts';
import { endsAt, isOnRing, lengthOf } from './meeting.ts';

/** A corner that turns in by less than this is no inside corner: chords of an arc, tape readings, degrees. */
const TURNS_IN = 15;

/** What bears on a layout beside the pour itself. */
export interface JointWishes {
  /** Joints drawn by hand, and the ends of joints in older slabs. */
  readonly fixed: readonly JointLine[];
  readonly oldJoints: readonly Point[];
  readonly rules: JointRules;
  readonly closeness: Grid;
}

/**
 * The question of joints for each piece of the pour by itself.
 * @param polygons Of the pour's pieces in order, arcs as chords.
 */
export function jointProblems(
  pour: NetPour,
  polygons: readonly Polygon[],
  { fixed, oldJoints, rules, closeness }: JointWishes,
): readonly JointProblem[] {
  return pour.pieces.map(({ rings }, at) => {
    const polygon = polygons[at]!;
    const all = [polygon.outer, ...polygon.holes];
    return {
      polygon,
      insideCorners: rings.flatMap((ring) => insideCorners(ring)),
      blockOuts: rings.flatMap((ring) => blockOuts(ring)),
      oldJoints: oldJoints.filter((place) => all.some((ring) => isOnRing(place, ring, closeness))),
      fixed: fixed.flatMap((joint) => stretchesIn(polygon, joint, closeness)),
      rules,
      closeness,
    };
  });
}

/**
 * What of a joint drawn by hand lies in a piece of the pour: the joint itself when all of it does, and else the stretches
 * from edge to edge or to its end.
 */
function stretchesIn(polygon: Polygon, joint: JointLine, closeness: Grid): readonly JointLine[] {
  const { from, to } = joint;
  const along = ({ x, y }: Point) =>
    (x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y);
  const crossings = [polygon.outer, ...polygon.holes]
    .flatMap((ring) => placesOnRing(ring, joint))
    .filter((at) => !endsAt(joint, at, closeness))
    .toSorted((a, b) => along(a) - along(b));
  const stops = [from, ...crossings, to];
  const stretches: JointLine[] = [];
  for (let i = 1; i < stops.length; i++) {
    const stretch = { ...joint, from: stops[i - 1]!, to: stops[i]! };
    const inside = middleIsIn(polygon, stretch.from, stretch.to);
    if (inside && lengthOf(stretch) > closeness) stretches.push(stretch);
  }
  return stretches.length === 1 && crossings.length === 0 ? [joint] : stretches;
}

/** Where a joint crosses a ring or passes a corner of it. */
function placesOnRing(ring: Ring, { from, to }: JointLine): readonly Point[] {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    if (turn(from, to, a) === 0) return isBetween(a, from, to) ? [a] : [];
    return edgesCross(from, to, a, b) ? [meetingPoint(from, to, a, b)] : [];
  });
}

function isBetween({ x, y }: Point, a: Point, b: Point): boolean {
  return (x - a.x) * (x - b.x) + (y - a.y) * (y - b.y) < 0;
}

/** Corners at which the pour turns in, where it nearly always cracks. Those of block-outs are looked at by themselves. */
function insideCorners({ edges }: PourRing): readonly Point[] {
  return edges.flatMap((edge, i) => {
    const before = edges[(i + edges.length - 1) % edges.length]!;
    if (before.kind === 'block-out' || edge.kind === 'block-out') return [];
    const turned = headingAt(edge, 'start') - headingAt(before, 'end');
    const right = -Math.atan2(Math.sin(turned), Math.cos(turned));
    return (right * 180) / Math.PI >= TURNS_IN ? [edge.from] : [];
  });
}

/** Direction of travel at the start or the end of an edge, radians. */
function headingAt({ from, to, arc }: PourEdge, where: 'start' | 'end'): number {
  if (!arc) return Math.atan2(to.y - from.y, to.x - from.x);
  const place = where === 'start' ? from : to;
  const out = Math.atan2(place.y - arc.cy, place.x - arc.cx);
  return out + (arc.sweep > 0 ? Math.PI / 2 : -Math.PI / 2);
}

/** Edges of one block-out that follow each other make one spot. */
function blockOuts({ edges }: PourRing): readonly BlockOutSpot[] {
  const groups: PourEdge[][] = [];
  edges.forEach((edge) => {
    if (edge.kind !== 'block-out') return;
    const last = groups.at(-1)?.at(-1);
    if (
      last &&
      last.feature === edge.feature &&
      last.to.x === edge.from.x &&
      last.to.y === edge.from.y
    ) {
      groups.at(-1)!.push(edge);
    } else {
      groups.push([edge]);
    }
  });
  return groups.map((group) => {
    const round = group.find(({ arc }) => arc)?.arc;
    const corners = group.flatMap(({ from, to, arc }) => (arc ? [] : [from, to]));
    const ring: Ring = group.flatMap((edge) => placesOn(edge));
    const middle = round
      ? { x: toGrid(round.cx), y: toGrid(round.cy) }
      : centreOf(group.map(({ from }) => from));
    return { feature: group[0]!.feature, middle, corners: unlike(corners), ring };
  });
}

/** Enough places on an edge that a joint's end on it is seen to be on it. */
function placesOn({ from, to, arc }: PourEdge): readonly Point[] {
  if (!arc) return [from];
  const start = Math.atan2(from.y - arc.cy, from.x - arc.cx);
  const count = Math.max(2, Math.ceil((Math.abs(arc.sweep) * 24) / Math.PI));
  return Array.from({ length: count }, (_, i) => {
    const angle = start + (arc.sweep * i) / count;
    return i === 0
      ? from
      : {
          x: toGrid(arc.cx + arc.radius * Math.cos(angle)),
          y: toGrid(arc.cy + arc.radius * Math.sin(angle)),
        };
  }).concat(arc && Math.abs(arc.sweep) < 2 * Math.PI - 1e-6 ? [to] : []);
}

function centreOf(places: readonly Point[]): Point {
  const [first] = places;
  let area = 0;
  let x = 0;
  let y = 0;
  places.forEach((a, i) => {
    const b = places[(i + 1) % places.length]!;
    const cross = turn(first!, a, b);
    area += cross;
    x += cross * (first!.x + a.x + b.x);
    y += cross * (first!.y + a.y + b.y);
  });
  if (area === 0) return first!;
  return { x: toGrid(x / (3 * area)), y: toGrid(y / (3 * area)) };
}

function unlike(places: readonly Point[]): readonly Point[] {
  return places.filter(
    ({ x, y }, i) => !places.slice(0, i).some((one) => one.x === x && one.y === y),
  );
}
