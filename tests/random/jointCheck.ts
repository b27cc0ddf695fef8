import 'jsts/org/locationtech/jts/monkey.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import type { Point, Polygon, Ring } from '../../src/geometry/point.ts';
import type {
  JointLine,
  JointProblem,
  JointReport,
  JointRule,
  Panel,
} from '../../src/takeoff/joints/layout.ts';

/** The little of the other library that is used here; its own types don't reach its inner files. */
interface Shape {
  union(other: Shape): Shape;
  isValid(): boolean;
  getArea(): number;
  contains(other: Shape): boolean;
  distance(other: Shape): number;
}

const factory = new GeometryFactory();

function line(ring: Ring) {
  return factory.createLinearRing([...ring, ring[0]!].map(({ x, y }) => new Coordinate(x, y)));
}
function shapeOf({ outer, holes }: Polygon): Shape {
  return factory.createPolygon(line(outer), holes.map(line)) as Shape;
}
function pointOf({ x, y }: Point): Shape {
  return factory.createPoint(new Coordinate(x, y)) as Shape;
}

/** What rounding to the grid may move a place by, and a length at both ends. */
const ROUNDED = 4;

/**
 * What is wrong with a report, in words. Everything that it says is found again by code of its own here: areas and what
 * lies in a panel by another library, sizes by turning a rectangle to every direction that two corners of a panel make.
 */
export function reportFaults(problem: JointProblem, report: JointReport): readonly string[] {
  return [
    ...areaFaults(problem, report),
    ...partingFaults(report),
    ...sizeFaults(problem, report),
    ...placeFaults(problem, report),
    ...meetingFaults(problem, report),
  ];
}

function areaFaults({ polygon }: JointProblem, { panels, joints }: JointReport): string[] {
  const whole = shapeOf(polygon).getArea();
  const parts = panels.map((panel) => shapeOf(panel.polygon).getArea());
  const sum = parts.reduce((all, area) => all + area, 0);
  const reach = polygon.outer.reduce((most, { x, y }) => {
    return Math.max(most, Math.hypot(x - polygon.outer[0]!.x, y - polygon.outer[0]!.y));
  }, 0);
  const slack = ROUNDED * reach * (joints.length + 1);
  const faults: string[] = [];
  if (Math.abs(sum - whole) > slack) faults.push(`panels come to ${sum}, not ${whole}`);
  panels.forEach(({ area }, i) => {
    if (Math.abs(area - parts[i]!) > 1) faults.push(`area of panel ${i}: ${area}, not ${parts[i]}`);
  });
  return faults;
}

/** No joint goes on inside a panel, but one that is said to end there. */
function partingFaults({ panels, joints, broken }: JointReport): string[] {
  if (broken.some(({ rule }) => rule === 'ends-inside')) return [];
  const faults: string[] = [];
  for (const panel of panels) {
    // A ring that goes in to a hole and out again is no shape to the other library.
    const shape = shapeOf(panel.polygon);
    if (!shape.isValid()) continue;
    const edge = [panel.polygon.outer, ...panel.polygon.holes];
    for (const { from, to } of joints) {
      for (let i = 1; i < 16; i++) {
        const place = {
          x: from.x + ((to.x - from.x) * i) / 16,
          y: from.y + ((to.y - from.y) * i) / 16,
        };
        const off = Math.min(...edge.map((ring) => distanceTo(place, ring)));
        if (off > ROUNDED && shape.contains(pointOf(place))) faults.push('a joint inside a panel');
      }
    }
  }
  return faults;
}

function sizeFaults({ rules, closeness }: JointProblem, report: JointReport): string[] {
  return report.panels.flatMap((panel, i) => {
    const { length, width, narrowest } = turnedRound(panel);
    const faults: string[] = [];
    const near = (a: number, b: number) => Math.abs(a - b) <= ROUNDED;
    if (!near(length + width, panel.length + panel.width)) {
      faults.push(`panel ${i}: girth ${length + width}, said ${panel.length + panel.width}`);
    }
    if (!near(narrowest, panel.narrowest)) {
      faults.push(`panel ${i}: narrowest ${narrowest}, said ${panel.narrowest}`);
    }
    const says = (rule: JointRule) =>
      report.broken.some((one) => one.rule === rule && one.panel === i);
    const check = (rule: JointRule, off: number) => {
      if (off > ROUNDED && !says(rule)) faults.push(`panel ${i}: ${rule} not said`);
      if (off < -ROUNDED && says(rule)) faults.push(`panel ${i}: ${rule} said and isn't so`);
    };
    // Of two rectangles of one girth either may be told.
    check('too-long', panel.length - rules.most - closeness);
    check('ratio', panel.length - rules.ratio * (panel.width + closeness));
    check('sliver', rules.least - closeness - narrowest);
    return faults;
  });
}

/** The least rectangle and the least width, over every direction from corner to corner. */
function turnedRound({ polygon: { outer } }: Panel) {
  let best = { length: 0, width: 0 };
  let narrowest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < outer.length; i++) {
    for (let k = 0; k < i; k++) {
      const angle = Math.atan2(outer[i]!.y - outer[k]!.y, outer[i]!.x - outer[k]!.x);
      const extent = (turned: number) => {
        const at = outer.map(({ x, y }) => x * Math.cos(turned) + y * Math.sin(turned));
        return Math.max(...at) - Math.min(...at);
      };
      const along = extent(angle);
      const across = extent(angle + Math.PI / 2);
      narrowest = Math.min(narrowest, across);
      if (best.length === 0 || along + across < best.length + best.width) {
        best = { length: Math.max(along, across), width: Math.min(along, across) };
      }
    }
  }
  return { ...best, narrowest };
}

/** Corners, block-outs and older joints: said to be missed just when no joint comes there. */
function placeFaults(problem: JointProblem, { joints, broken }: JointReport): string[] {
  const { insideCorners, oldJoints, blockOuts, closeness } = problem;
  const ends = joints.flatMap(({ from, to }) => [from, to]);
  const isMet = (place: Point) =>
    ends.some((end) => Math.hypot(end.x - place.x, end.y - place.y) <= closeness);
  const check = (rule: JointRule, place: Point, met: boolean): string[] => {
    const said = broken.some((one) => one.rule === rule && samePlace(one.at, place));
    return said === met ? [`${rule} ${said ? 'said and met' : 'not said'}`] : [];
  };
  return [
    ...insideCorners.flatMap((place) => check('inside-corner', place, isMet(place))),
    ...oldJoints.flatMap((place) => check('old-joint', place, isMet(place))),
    ...blockOuts.flatMap(({ middle, corners, ring }) => {
      const coming = joints.filter(({ from, to }) =>
        [from, to].some((end) => {
          if (distanceTo(end, ring) > closeness) return false;
          if (corners.some((one) => Math.hypot(one.x - end.x, one.y - end.y) <= closeness)) {
            return true;
          }
          const twice =
            (to.x - from.x) * (middle.y - from.y) - (to.y - from.y) * (middle.x - from.x);
          return Math.abs(twice) / Math.hypot(to.x - from.x, to.y - from.y) <= closeness;
        }),
      );
      return check('block-out', middle, coming.length >= 2);
    }),
  ];
}

/** Ends and angles. */
function meetingFaults(problem: JointProblem, { joints, broken }: JointReport): string[] {
  const { polygon, closeness, rules } = problem;
  const edges = [polygon.outer, ...polygon.holes];
  const faults: string[] = [];
  for (const joint of joints) {
    for (const end of [joint.from, joint.to]) {
      const onEdge = edges.some((ring) => distanceTo(end, ring) <= closeness);
      const onJoint = joints.some(
        (one) => one !== joint && distanceTo(end, [one.from, one.to]) <= closeness,
      );
      const said = broken.some(({ rule, at }) => rule === 'ends-inside' && samePlace(at, end));
      if (said === (onEdge || onJoint)) faults.push(`ends-inside ${said ? 'said' : 'not said'}`);
      const stops = broken.some(({ rule, at }) => rule === 'ends-on-joint' && samePlace(at, end));
      if (stops && (onEdge || !onJoint)) faults.push('ends-on-joint said where there is none');
    }
  }
  const slight: number[] = joints.flatMap((joint, i) => [
    ...[joint.from, joint.to].flatMap((end) =>
      edges.flatMap((ring) => edgeAngles(joint, end, ring, closeness)),
    ),
    ...joints.slice(0, i).flatMap((other) => crossingAngles(joint, other, closeness)),
  ]);
  const said = broken.filter(({ rule }) => rule === 'sharp');
  const least = Math.min(90, ...slight);
  const told = Math.min(90, ...said.map(({ found }) => found!));
  if (least < rules.angle - 0.5 && said.length === 0) faults.push(`${least} degrees not said`);
  if (told < rules.angle && least > told + 0.5) faults.push(`${told} degrees said, not ${least}`);
  return faults;
}

/** Between a joint and the edges that its end lies on, degrees. */
function edgeAngles(joint: JointLine, end: Point, ring: Ring, closeness: number): number[] {
  const other = end === joint.from ? joint.to : joint.from;
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    if (distanceTo(end, [a, b]) > closeness) return [];
    return [a, b]
      .filter((far) => Math.hypot(far.x - end.x, far.y - end.y) > closeness)
      .map((far) => angle(end, other, far));
  });
}

/** Where two joints cross, or one ends on the other, degrees. */
function crossingAngles(p: JointLine, q: JointLine, closeness: number): number[] {
  const touching = [p.from, p.to, q.from, q.to].flatMap((end, i): number[] => {
    const [own, other] = i < 2 ? [p, q] : [q, p];
    if (distanceTo(end, [other.from, other.to]) > closeness) return [];
    const far = end === own.from ? own.to : own.from;
    return [other.from, other.to]
      .filter((to) => Math.hypot(to.x - end.x, to.y - end.y) > closeness)
      .map((to) => angle(end, far, to));
  });
  if (touching.length > 0) return touching;
  const side = (a: Point, b: Point, c: Point) =>
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  const parts = (a: JointLine, b: JointLine) =>
    side(a.from, a.to, b.from) > 0 !== side(a.from, a.to, b.to) > 0;
  if (!parts(p, q) || !parts(q, p)) return [];
  const at = { x: p.to.x - p.from.x + q.from.x, y: p.to.y - p.from.y + q.from.y };
  const found = angle(q.from, q.to, at);
  return [Math.min(found, 180 - found)];
}

function angle(at: Point, one: Point, other: Point): number {
  const [ax, ay, bx, by] = [one.x - at.x, one.y - at.y, other.x - at.x, other.y - at.y];
  const cos = (ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
  return (Math.acos(Math.max(-1, Math.min(1, cos))) * 180) / Math.PI;
}

function samePlace(a: Point, b: Point): boolean {
  return a.x === b.x && a.y === b.y;
}

function distanceTo(place: Point, ring: Ring): number {
  return Math.min(
    ...ring.map((a, i) => {
      const b = ring[(i + 1) % ring.length]!;
      const square = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
      const t = square
        ? ((place.x - a.x) * (b.x - a.x) + (place.y - a.y) * (b.y - a.y)) / square
        : 0;
      const s = Math.max(0, Math.min(1, t));
      return Math.hypot(place.x - a.x - s * (b.x - a.x), place.y - a.y - s * (b.y - a.y));
    }),
  );
}
