import { doubledArea } from '../../geometry/area.ts';
import { boxOf } from '../../geometry/box.ts';
import { faces } from '../../geometry/faces.ts';
import { distanceToEdge, locate } from '../../geometry/locate.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type {
  BlockOutSpot,
  BrokenJointRule,
  JointLine,
  JointProblem,
  JointReport,
  Panel,
} from './layout.ts';

/**
 * The panels that joints part a piece of the pour into, and every rule that they break. Panels are measured by the least
 * rectangle round them that lies along one of their edges.
 */
export function jointReport(problem: JointProblem, joints: readonly JointLine[]): JointReport {
  const panels = faces([problem.polygon], joints).map(panelOf);
  const broken = [
    ...panels.flatMap((panel, at) => panelRules(problem, panel, at)),
    ...missing(problem, joints),
    ...joints.flatMap((joint, at) => jointRules(problem, joints, joint, at)),
  ];
  const length = joints.reduce((sum, joint) => sum + toGrid(lengthOf(joint)), 0);
  return { joints, panels, broken, length };
}

export function lengthOf({ from, to }: Pick<JointLine, 'from' | 'to'>): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

function panelOf(polygon: Polygon): Panel {
  const { outer, holes } = polygon;
  const area = [outer, ...holes].reduce((sum, ring) => sum + doubledArea(ring), 0) / 2;
  let best = { length: Number.POSITIVE_INFINITY, width: 1 };
  for (let i = 0; i < outer.length; i++) {
    const a = outer[i]!;
    const b = outer[(i + 1) % outer.length]!;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    if (long === 0) continue;
    const box = boxAlong(outer, (b.x - a.x) / long, (b.y - a.y) / long);
    if (box.length * box.width < best.length * best.width) best = box;
  }
  return {
    polygon,
    box: boxOf(outer),
    area,
    length: toGrid(best.length),
    width: toGrid(best.width),
  };
}

function boxAlong(ring: Ring, dx: number, dy: number): { length: number; width: number } {
  const one = extent(ring, dx, dy);
  const other = extent(ring, -dy, dx);
  return { length: Math.max(one, other), width: Math.min(one, other) };
}

function extent(ring: Ring, dx: number, dy: number): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const { x, y } of ring) {
    const at = x * dx + y * dy;
    if (at < least) least = at;
    if (at > most) most = at;
  }
  return most - least;
}

function panelRules(
  { rules, closeness }: JointProblem,
  { polygon, length, width }: Panel,
  panel: number,
): readonly BrokenJointRule[] {
  const at = middleOf(polygon.outer);
  const broken: BrokenJointRule[] = [];
  if (length > rules.most + closeness) broken.push({ rule: 'too-long', at, panel, found: length });
  if (length > rules.ratio * (width + closeness)) {
    broken.push({ rule: 'ratio', at, panel, found: length / width });
  }
  if (width < rules.least - closeness) broken.push({ rule: 'sliver', at, panel, found: width });
  return broken;
}

/** A place to point at: the mean of its corners. */
export function middleOf(ring: Ring): Point {
  const sum = ring.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: toGrid(sum.x / ring.length), y: toGrid(sum.y / ring.length) };
}

/** Corners, block-outs and older joints that no joint comes to. */
function missing(
  { insideCorners, blockOuts, oldJoints, closeness }: JointProblem,
  joints: readonly JointLine[],
): readonly BrokenJointRule[] {
  const comesTo = (place: Point) => joints.some((joint) => endsAt(joint, place, closeness));
  return [
    ...insideCorners
      .filter((at) => !comesTo(at))
      .map((at) => ({ rule: 'inside-corner', at }) as const),
    ...blockOuts
      .filter((spot) => meetings(spot, joints, closeness) < MEETINGS)
      .map(({ middle }) => ({ rule: 'block-out', at: middle }) as const),
    ...oldJoints.filter((at) => !comesTo(at)).map((at) => ({ rule: 'old-joint', at }) as const),
  ];
}

/** A joint comes to a block-out from two sides: a crack that one stops would start on the other. Common practice. */
const MEETINGS = 2;

/** How many joints come to a block-out, at its corners or in line with its middle. */
export function meetings(
  spot: BlockOutSpot,
  joints: readonly JointLine[],
  closeness: number,
): number {
  return joints.reduce((count, joint) => count + (meets(spot, joint, closeness) ? 1 : 0), 0);
}

export function meets(
  { ring, middle, corners }: BlockOutSpot,
  joint: Pick<JointLine, 'from' | 'to'>,
  closeness: number,
): boolean {
  const inLine = distanceToLine(middle, joint) <= closeness;
  return [joint.from, joint.to].some(
    (end) =>
      isOnRing(end, ring, closeness) &&
      (inLine || corners.some((corner) => isNear(corner, end, closeness))),
  );
}

export function endsAt(
  { from, to }: Pick<JointLine, 'from' | 'to'>,
  place: Point,
  closeness: number,
): boolean {
  return isNear(from, place, closeness) || isNear(to, place, closeness);
}

export function isNear(a: Point, b: Point, closeness: number): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) <= closeness;
}

export function isOnRing(place: Point, ring: Ring, closeness: number): boolean {
  return ring.some((a, i) => distanceToEdge(place, a, ring[(i + 1) % ring.length]!) <= closeness);
}

function distanceToLine(place: Point, { from, to }: Pick<JointLine, 'from' | 'to'>): number {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return Math.abs(dx * (place.y - from.y) - dy * (place.x - from.x)) / Math.hypot(dx, dy);
}

/** How a joint meets the edges and the other joints. */
function jointRules(
  { polygon, rules, closeness }: JointProblem,
  joints: readonly JointLine[],
  joint: JointLine,
  at: number,
): readonly BrokenJointRule[] {
  const rings = [polygon.outer, ...polygon.holes];
  const broken: BrokenJointRule[] = [];
  const sharp = (found: number, place: Point) => {
    if (found < rules.angle - ANGLE_SLACK) broken.push({ rule: 'sharp', at: place, found });
  };
  for (const [end, other] of [
    [joint.from, joint.to],
    [joint.to, joint.from],
  ] as const) {
    const ring = rings.find((one) => isOnRing(end, one, closeness));
    if (ring) {
      sharp(angleAtEdge(end, other, ring, closeness), end);
    } else if (!joints.some((one) => one !== joint && isOnLine(end, one, closeness))) {
      broken.push({ rule: 'ends-inside', at: end });
    }
  }
  joints.slice(0, at).forEach((one) => {
    const crossing = crossingOf(joint, one, closeness);
    if (crossing) sharp(angleBetween(joint, one), crossing);
  });
  return broken;
}

/** Readings of an angle off the grid differ by less than this, degrees. */
const ANGLE_SLACK = 0.1;

/** The least angle, degrees, between a joint and the edge at its end. At a corner, with the edge on either side. */
function angleAtEdge(end: Point, other: Point, ring: Ring, closeness: number): number {
  let least = 90;
  const out = Math.atan2(other.y - end.y, other.x - end.x);
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    if (distanceToEdge(end, a, b) > closeness) return;
    for (const far of [a, b]) {
      if (isNear(far, end, closeness)) continue;
      least = Math.min(least, degreesApart(out, Math.atan2(far.y - end.y, far.x - end.x)));
    }
  });
  return least;
}

function degreesApart(a: number, b: number): number {
  const turned = Math.abs(a - b) % (2 * Math.PI);
  return (Math.min(turned, 2 * Math.PI - turned) * 180) / Math.PI;
}

function angleBetween(a: JointLine, b: JointLine): number {
  const apart = degreesApart(
    Math.atan2(a.to.y - a.from.y, a.to.x - a.from.x),
    Math.atan2(b.to.y - b.from.y, b.to.x - b.from.x),
  );
  return Math.min(apart, 180 - apart);
}

function isOnLine(place: Point, { from, to }: JointLine, closeness: number): boolean {
  return distanceToEdge(place, from, to) <= closeness;
}

/** Where two joints meet, if they do; two that share an end at the edge, or go on in one line, don't. */
function crossingOf(a: JointLine, b: JointLine, closeness: number): Point | undefined {
  const ends = [a.from, a.to].find((end) => isOnLine(end, b, closeness));
  if (ends)
    return isNear(ends, b.from, closeness) || isNear(ends, b.to, closeness) ? undefined : ends;
  const other = [b.from, b.to].find((end) => isOnLine(end, a, closeness));
  if (other) return other;
  const side = (p: Point, { from, to }: JointLine) =>
    Math.sign((to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x));
  if (side(a.from, b) === side(a.to, b) || side(b.from, a) === side(b.to, a)) return undefined;
  return { x: toGrid((a.from.x + a.to.x) / 2), y: toGrid((a.from.y + a.to.y) / 2) };
}

/** Whether a joint passes through a panel, and not only along its edge. */
export function passesThrough(
  { polygon: { outer, holes }, box }: Panel,
  { from, to }: Pick<JointLine, 'from' | 'to'>,
): boolean {
  for (const share of SHARES) {
    const x = from.x + share * (to.x - from.x);
    const y = from.y + share * (to.y - from.y);
    if (x <= box.minX || x >= box.maxX || y <= box.minY || y >= box.maxY) continue;
    const place = { x, y };
    if (
      locate(place, outer) === 'inside' &&
      holes.every((hole) => locate(place, hole) === 'outside')
    ) {
      return true;
    }
  }
  return false;
}

/** Along a joint, looked at from its middle out. */
const SHARES = [0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875];
