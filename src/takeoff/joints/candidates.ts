import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import { middleIsIn } from '../../geometry/split.ts';
import {
  type Direction,
  edgeDirections,
  squareDirections,
  unit,
  unlike,
  waysOver,
} from './directions.ts';
import type { JointLine, JointProblem } from './layout.ts';
import { angleAtEdge, endsAt, isNear, isSharp, lengthOf, meets } from './meeting.ts';

/**
 * The lines that joints are chosen from, each from edge to edge: from every inside corner along its edges, square to them,
 * halving it, square to the slab and to the edges across; from one inside corner, block-out or older joint to another; and
 * across, where equal parts are no longer than a panel may be. None that meets an edge at too slight an angle, but where
 * there is no other way from a corner. Those through a given place come first.
 */
export function candidates(problem: JointProblem): readonly JointLine[] {
  const { polygon, insideCorners, blockOuts, oldJoints, rules, closeness } = problem;
  const square = squareDirections(polygon);
  const edgePlaces = [...insideCorners, ...oldJoints];
  const count = edgePlaces.length + blockOuts.length;
  const each = Math.max(LEAST_LINES, Math.floor(LINES / count));
  const found: JointLine[] = [];
  const keep = (lines: readonly JointLine[]) => {
    for (const line of lines) {
      const known = found.some(
        (one) => endsAt(one, line.from, closeness) && endsAt(one, line.to, closeness),
      );
      if (!known) found.push(line);
    }
  };
  const straight = (line: JointLine) =>
    !isSharp(leastAngle(problem, line), rules.angle) &&
    !insideCorners.some((corner) => isBeside(line, corner, problem));
  /** So many of those that are straight enough, the shorter first, or the least slight of them all. */
  const bestOf = (lines: readonly JointLine[]): readonly JointLine[] => {
    const good: JointLine[] = [];
    for (const line of sortedByLength(lines, rules.least)) {
      if (good.length === each) break;
      if (straight(line)) good.push(line);
    }
    if (good.length > 0 || lines.length === 0) return good;
    const angles = lines.map((line) => leastAngle(problem, line));
    return [lines[angles.indexOf(Math.max(...angles))]!];
  };
  const chords = (through: Point, ways: readonly Direction[]) =>
    ways.flatMap((way) => chordsAlong(polygon, through, way, closeness));

  const middles = blockOuts.map(({ middle }) => middle);
  const others = [...edgePlaces, ...middles, ...blockOuts.flatMap(({ corners }) => corners)];
  for (const place of edgePlaces) {
    const far = others.filter((other) => !isNear(place, other, closeness));
    const ways = unlike([
      ...square,
      ...edgeDirections(polygon, place),
      ...(count > MANY ? [] : far.map((to) => unit(place, to))),
      ...(count > MANY ? [] : waysOver([polygon.outer], place)),
    ]);
    const own = chords(place, ways).filter((chord) => endsAt(chord, place, closeness));
    keep(bestOf(own));
  }
  for (const spot of blockOuts) {
    const rest = middles.filter((middle) => middle !== spot.middle);
    const far = count > MANY ? [] : [...rest, ...edgePlaces];
    const toOthers = far.map((to) => unit(spot.middle, to));
    const own = [
      ...chords(spot.middle, unlike([...square, ...toOthers])),
      ...spot.corners.flatMap((corner) =>
        chords(corner, unlike([...square, ...edgeDirections(polygon, corner)])),
      ),
    ];
    keep(bestOf(own.filter((line) => meets(spot, line, closeness))));
  }
  const hard = [...edgePlaces, ...blockOuts.flatMap(({ middle, corners }) => [middle, ...corners])];
  for (const direction of square) {
    for (const off of offsets(problem, direction, hard).slice(0, ACROSS)) {
      const place = { x: -direction.dy * off, y: direction.dx * off };
      keep(chordsAlong(polygon, place, direction, closeness).filter(straight));
    }
  }
  return found;
}

/** Lines through corners, block-outs and older joints in all, and for one of them at least; lines across one way. */
const LINES = 240;
const LEAST_LINES = 3;
const ACROSS = 60;
/** With more places than this, lines aren't looked for from each to each: there are enough others. */
const MANY = 24;

/** The shorter first, but last those that are shorter than a panel is wide: what they cut off is a sliver. */
function sortedByLength(lines: readonly JointLine[], least: number): readonly JointLine[] {
  const rank = (line: JointLine) => {
    const length = lengthOf(line);
    return length < least ? length + FAR : length;
  };
  return lines.toSorted((a, b) => rank(a) - rank(b));
}

const FAR = 2 ** 40;

/** Of the least width of a panel: a joint that ends this near to an inside corner ought to end at it. Our own. */
const BESIDE = 0.25;

function isBeside(line: JointLine, corner: Point, { rules, closeness }: JointProblem): boolean {
  return endsAt(line, corner, BESIDE * rules.least) && !endsAt(line, corner, closeness);
}

function leastAngle({ polygon, closeness }: JointProblem, { from, to }: JointLine): number {
  const at = (end: Point, other: Point) => angleAtEdge(polygon, end, other, closeness) ?? 90;
  return Math.min(at(from, to), at(to, from));
}

/** Distances from the origin of lines along a direction that cut the slab, and the parts between hard places, equally. */
function offsets(
  { polygon, rules, fixed }: JointProblem,
  { dx, dy }: Direction,
  hard: readonly Point[],
): readonly number[] {
  const offOf = ({ x, y }: Point) => dx * y - dy * x;
  const across = polygon.outer.map(offOf);
  const low = Math.min(...across);
  const high = Math.max(...across);
  const stations = [...hard, ...fixed.flatMap(({ from, to }) => [from, to])]
    .map(offOf)
    .filter((off) => off > low + rules.least && off < high - rules.least)
    .toSorted((a, b) => a - b);
  const bounds = [low, ...stations, high];
  const offs: number[] = [];
  const along = extentOf(polygon.outer, ({ x, y }) => dx * x + dy * y);
  const part = (from: number, to: number) => {
    const gap = to - from;
    const least = Math.max(2, Math.ceil(gap / rules.most - SLACK));
    // A narrow slab needs more parts than its length alone, so that none is too long for its width.
    const square = Math.ceil(gap / Math.min(rules.most, rules.ratio * along) - SLACK);
    for (let parts = least; parts <= Math.max(least, square) + 1; parts++) {
      if (offs.length > ACROSS) return;
      if (gap / parts < rules.least - SLACK * gap) break;
      for (let i = 1; i < parts && i <= ACROSS; i++) offs.push(from + ((to - from) * i) / parts);
    }
  };
  part(low, high);
  bounds.forEach((from, i) => {
    const to = bounds[i + 1];
    if (to !== undefined && to - from >= 2 * rules.least) part(from, to);
  });
  return offs;
}

/** Floats: twelve feet in two are two sixes. */
const SLACK = 1e-9;

function extentOf(ring: Ring, at: (place: Point) => number): number {
  const places = ring.map(at);
  return Math.max(...places) - Math.min(...places);
}

/** The stretches of a line through a place that lie inside a polygon, each from edge to edge, ends on the grid. */
export function chordsAlong(
  polygon: Polygon,
  through: Point,
  { dx, dy }: Direction,
  closeness: number,
): readonly JointLine[] {
  const offOf = ({ x, y }: Point) => dx * (y - through.y) - dy * (x - through.x);
  const alongOf = ({ x, y }: Point) => dx * (x - through.x) + dy * (y - through.y);
  const places: { along: number; at: Point }[] = [];
  for (const ring of [polygon.outer, ...polygon.holes]) {
    let a = ring[ring.length - 1]!;
    let offA = offOf(a);
    for (const b of ring) {
      const offB = offOf(b);
      // A corner near the line is where it ends, so that a joint through a corner is a joint at the corner.
      if (Math.abs(offB) <= closeness) places.push({ along: alongOf(b), at: b });
      else if (Math.abs(offA) > closeness && offA > 0 !== offB > 0) {
        const share = offA / (offA - offB);
        const at = { x: toGrid(a.x + share * (b.x - a.x)), y: toGrid(a.y + share * (b.y - a.y)) };
        places.push({ along: alongOf(at), at });
      }
      a = b;
      offA = offB;
    }
  }
  places.sort((a, b) => a.along - b.along);
  const chords: JointLine[] = [];
  for (let i = 1; i < places.length; i++) {
    const from = places[i - 1]!.at;
    const to = places[i]!.at;
    const line = { from, to, by: 'search', kind: 'control' } as const;
    if (lengthOf(line) > closeness && middleIsIn(polygon, from, to)) chords.push(line);
  }
  return chords;
}
