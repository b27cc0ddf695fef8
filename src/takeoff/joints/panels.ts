import { doubledArea } from '../../geometry/area.ts';
import { boxOf } from '../../geometry/box.ts';
import { girthOf } from '../../geometry/calipers.ts';
import { faces } from '../../geometry/faces.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { BrokenJointRule, JointLine, JointProblem, JointReport, Panel } from './layout.ts';
import {
  angleAtEdge,
  degreesApart,
  endsAt,
  isOnRing,
  isSharp,
  lengthOf,
  meetingOf,
  meets,
  raysFrom,
} from './meeting.ts';

/**
 * The panels that joints part a piece of the pour into, and every rule that they break. Joints that lie along an edge or
 * on one another part nothing twice.
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

export function panelOf(polygon: Polygon): Panel {
  const { outer, holes } = polygon;
  const { length, width, narrowest } = girthOf(outer);
  return {
    polygon,
    box: boxOf(outer),
    area: holes.reduce((sum, hole) => sum + doubledArea(hole), doubledArea(outer)) / 2,
    length: toGrid(length),
    width: toGrid(width),
    narrowest: toGrid(narrowest),
  };
}

/** The rules that a panel breaks by itself. */
export function panelRules(
  { rules, closeness }: JointProblem,
  { polygon, length, width, narrowest }: Panel,
  panel: number,
): readonly BrokenJointRule[] {
  const long = length > rules.most + closeness;
  const uneven = length > rules.ratio * (width + closeness);
  const thin = narrowest < rules.least - closeness;
  if (!(long || uneven || thin)) return [];
  const at = middleOf(polygon.outer);
  const broken: BrokenJointRule[] = [];
  if (long) broken.push({ rule: 'too-long', at, panel, found: length });
  if (uneven) broken.push({ rule: 'ratio', at, panel, found: length / width });
  if (thin) broken.push({ rule: 'sliver', at, panel, found: narrowest });
  return broken;
}

/** A place to point at: the mean of its corners. */
function middleOf(ring: Ring): Point {
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
      .filter((spot) => joints.filter((joint) => meets(spot, joint, closeness)).length < MEETINGS)
      .map(({ middle }) => ({ rule: 'block-out', at: middle }) as const),
    ...oldJoints.filter((at) => !comesTo(at)).map((at) => ({ rule: 'old-joint', at }) as const),
  ];
}

/** A joint comes to a block-out from two sides: a crack that one stops would start on the other. Common practice. */
export const MEETINGS = 2;

/** How a joint meets the edges and the joints before it. */
export function jointRules(
  { polygon, rules, closeness }: JointProblem,
  joints: readonly JointLine[],
  joint: JointLine,
  at: number,
): readonly BrokenJointRule[] {
  const broken: BrokenJointRule[] = [];
  for (const [end, other] of [
    [joint.from, joint.to],
    [joint.to, joint.from],
  ] as const) {
    const found = angleAtEdge(polygon, end, other, closeness);
    if (found !== undefined) {
      if (isSharp(found, rules.angle)) broken.push({ rule: 'sharp', at: end, found });
      continue;
    }
    const met = joints.filter((one) => one !== joint && isOnLine(end, one, closeness));
    if (met.length === 0) broken.push({ rule: 'ends-inside', at: end });
    else if (!goesOn(end, other, met, closeness)) broken.push({ rule: 'ends-on-joint', at: end });
  }
  for (let i = 0; i < at; i++) {
    const meeting = meetingOf(joint, joints[i]!, closeness);
    if (meeting && isSharp(meeting.angle, rules.angle)) {
      broken.push({ rule: 'sharp', at: meeting.at, found: meeting.angle });
    }
  }
  return broken;
}

function isOnLine(place: Point, { from, to }: JointLine, closeness: number): boolean {
  return isOnRing(place, [from, to], closeness);
}

/** A joint goes on past its end when another leaves from there that turns off by no more than this, degrees. Our own. */
const GOES_ON = 45;

function goesOn(end: Point, other: Point, met: readonly JointLine[], closeness: number): boolean {
  const ahead = Math.atan2(end.y - other.y, end.x - other.x);
  return met.some((one) =>
    raysFrom(end, one, closeness).some((ray) => degreesApart(ray, ahead) <= GOES_ON),
  );
}
