import { distanceToEdge } from '../../geometry/locate.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Job, Joint } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { chordsAlong } from './candidates.ts';
import type { JointLine } from './layout.ts';
import { isNear, isOnRing } from './meeting.ts';

/** What was drawn of joints, as the layout takes it. */
export interface DrawnJoints {
  /** Control and construction joints, cut off at the pour's edges. */
  readonly fixed: readonly JointLine[];
  /** Where joints of the older slab come to the pour. */
  readonly oldJoints: readonly Point[];
  /** Features that lie nowhere in the pour, and joints of the older slab that don't come to it. */
  readonly outside: readonly string[];
  readonly apart: readonly string[];
}

/**
 * The joints that were drawn by hand. Each is cut off at the edges of the pour; an end that is nearer to an edge, or to a
 * joint drawn before, than what is close enough lies on it. Where two lie on one another the first one counts.
 * @param polygons The pour, arcs as chords.
 */
export function drawnJoints(
  { features }: Job,
  polygons: readonly Polygon[],
  closeness: Grid,
): DrawnJoints {
  const rings = polygons.flatMap(({ outer, holes }) => [outer, ...holes]);
  const fixed: JointLine[] = [];
  const oldJoints: Point[] = [];
  const outside: string[] = [];
  const apart: string[] = [];
  for (const feature of features) {
    if (feature.kind !== 'joint') continue;
    if (feature.joint === 'existing') {
      const places = stretchesOf(feature).flatMap((one) => comesTo(one, rings, closeness));
      if (places.length === 0) apart.push(feature.id);
      for (const place of places) {
        if (!oldJoints.some((known) => isNear(known, place, closeness))) oldJoints.push(place);
      }
      continue;
    }
    const kind = feature.joint;
    const inside = stretchesOf(feature).flatMap((one) =>
      polygons.flatMap((polygon) => partsIn(one, polygon, closeness)),
    );
    if (inside.length === 0) outside.push(feature.id);
    for (const part of inside) {
      for (const { from, to } of restOf(part, fixed, closeness)) {
        const line = {
          from: landed(from, rings, fixed, closeness),
          to: landed(to, rings, fixed, closeness),
        };
        if (!isNear(line.from, line.to, closeness)) fixed.push({ ...line, by: 'hand', kind });
      }
    }
  }
  return { fixed: joined(fixed, closeness), oldJoints, outside, apart };
}

/** Ends inside that all but touch another joint, whichever was drawn first, lie on it. */
function joined(fixed: readonly JointLine[], closeness: Grid): readonly JointLine[] {
  return fixed.map((joint) => {
    const others = fixed.filter((one) => one !== joint);
    const on = (end: Point) => landed(end, [], others, closeness);
    return { ...joint, from: on(joint.from), to: on(joint.to) };
  });
}

interface Stretch {
  readonly from: Point;
  readonly to: Point;
}

function stretchesOf({ shape: { corners } }: Joint): readonly Stretch[] {
  return corners.slice(1).map(({ x, y }, i) => {
    const from = corners[i]!;
    return { from: { x: from.x, y: from.y }, to: { x, y } };
  });
}

/** The parts of a straight stretch that lie in a polygon, and not along its edge. */
function partsIn(stretch: Stretch, polygon: Polygon, closeness: Grid): readonly Stretch[] {
  const { from, to } = stretch;
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  if (long === 0) return [];
  const way = { dx: (to.x - from.x) / long, dy: (to.y - from.y) / long };
  const alongOf = ({ x, y }: Point) => way.dx * (x - from.x) + way.dy * (y - from.y);
  return chordsAlong(polygon, from, way, closeness).flatMap((chord) => {
    const [start, end] = [alongOf(chord.from), alongOf(chord.to)];
    const first = Math.max(0, start);
    const last = Math.min(long, end);
    if (last - first <= closeness) return [];
    // An end that all but reaches the edge was meant to.
    return [
      {
        from: first - start <= closeness ? chord.from : from,
        to: end - last <= closeness ? chord.to : to,
      },
    ];
  });
}

/** What is left of a stretch where it doesn't lie on joints drawn before. */
function restOf(
  stretch: Stretch,
  before: readonly JointLine[],
  closeness: Grid,
): readonly Stretch[] {
  let rest: readonly Stretch[] = [stretch];
  for (const one of before) rest = rest.flatMap((part) => without(part, one, closeness));
  return rest;
}

function without({ from, to }: Stretch, other: Stretch, closeness: Grid): readonly Stretch[] {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const way = { x: (to.x - from.x) / long, y: (to.y - from.y) / long };
  const offOf = ({ x, y }: Point) => Math.abs(way.x * (y - from.y) - way.y * (x - from.x));
  if (offOf(other.from) > closeness || offOf(other.to) > closeness) return [{ from, to }];
  const alongOf = ({ x, y }: Point) => way.x * (x - from.x) + way.y * (y - from.y);
  const [low, high] = [alongOf(other.from), alongOf(other.to)].toSorted((a, b) => a - b);
  if (high! <= closeness || low! >= long - closeness) return [{ from, to }];
  const at = (along: number) => ({
    x: toGrid(from.x + along * way.x),
    y: toGrid(from.y + along * way.y),
  });
  return [
    ...(low! > closeness ? [{ from, to: at(low!) }] : []),
    ...(high! < long - closeness ? [{ from: at(high!), to }] : []),
  ];
}

/** An end on the edge or the joint that it all but touches; else where it is. */
function landed(
  end: Point,
  rings: readonly Ring[],
  joints: readonly JointLine[],
  closeness: Grid,
): Point {
  for (const ring of rings) {
    if (!isOnRing(end, ring, closeness)) continue;
    const corner = ring.find((one) => isNear(one, end, closeness));
    return corner ?? nearestOn(end, edgesOf(ring));
  }
  const joint = joints.find(({ from, to }) => distanceToEdge(end, from, to) <= closeness);
  return joint ? nearestOn(end, [joint]) : end;
}

function edgesOf(ring: Ring): readonly Stretch[] {
  return ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]! }));
}

function nearestOn(place: Point, stretches: readonly Stretch[]): Point {
  let best = place;
  let least = Number.POSITIVE_INFINITY;
  for (const { from, to } of stretches) {
    const off = distanceToEdge(place, from, to);
    if (off >= least) continue;
    least = off;
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    const share = ((place.x - from.x) * dx + (place.y - from.y) * dy) / (dx * dx + dy * dy);
    const t = Math.min(1, Math.max(0, share));
    best = { x: toGrid(from.x + t * dx), y: toGrid(from.y + t * dy) };
  }
  return best;
}

/** Where an older slab's joint comes to the pour: an end on its edge, or where it runs over it. */
function comesTo({ from, to }: Stretch, rings: readonly Ring[], closeness: Grid): readonly Point[] {
  const ends = [from, to].filter((end) => rings.some((ring) => isOnRing(end, ring, closeness)));
  if (ends.length > 0) return ends.map((end) => landed(end, rings, [], closeness));
  const side = (p: Point, a: Point, b: Point) =>
    (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
  return rings.flatMap(edgesOf).flatMap((edge) => {
    const [a, b] = [side(edge.from, from, to), side(edge.to, from, to)];
    const [c, d] = [side(from, edge.from, edge.to), side(to, edge.from, edge.to)];
    if (a > 0 === b > 0 || c > 0 === d > 0) return [];
    const share = a / (a - b);
    return [
      {
        x: toGrid(edge.from.x + share * (edge.to.x - edge.from.x)),
        y: toGrid(edge.from.y + share * (edge.to.y - edge.from.y)),
      },
    ];
  });
}
