import { locate } from '../../geometry/locate.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { JointLine, JointProblem } from './layout.ts';
import { endsAt, isNear, lengthOf } from './panels.ts';

/** A direction of lines, a unit. */
interface Direction {
  readonly dx: number;
  readonly dy: number;
}

/** Directions that differ by less than this are one, degrees: older edges aren't quite square. */
const ALIKE = 3;
/** So many families of square directions are tried: more are seldom of use, and every one makes the search longer. */
const FAMILIES = 2;

/**
 * The lines that joints are chosen from, each from edge to edge: through every inside corner along both of its edges, square
 * to the slab, and halving the corner; through block-outs and from older joints; and across, where equal parts are no
 * longer than a panel may be. Those through a given place come first, and lines that are nearly the same are one.
 */
export function candidates(problem: JointProblem): readonly JointLine[] {
  const { polygon, insideCorners, blockOuts, oldJoints, closeness } = problem;
  const families = familiesOf(polygon);
  const square = families.flatMap(({ dx, dy }) => [
    { dx, dy },
    { dx: -dy, dy: dx },
  ]);
  const found: JointLine[] = [];
  const keep = (lines: readonly JointLine[]) => {
    for (const line of lines) {
      if (lengthOf(line) <= closeness) continue;
      const known = found.some(
        (one) => endsAt(one, line.from, closeness) && endsAt(one, line.to, closeness),
      );
      if (!known) found.push(line);
    }
  };
  for (const corner of insideCorners) {
    for (const direction of [...cornerDirections(polygon, corner), ...square]) {
      const chords = chordsAlong(polygon, corner, direction, closeness);
      keep(chords.filter((chord) => endsAt(chord, corner, closeness)));
    }
  }
  const through = [
    ...blockOuts.flatMap(({ middle, corners }) => [middle, ...corners]),
    ...oldJoints,
  ];
  for (const place of through) {
    for (const direction of square) keep(chordsAlong(polygon, place, direction, closeness));
  }
  const hard = [...insideCorners, ...through];
  for (const direction of square) {
    for (const off of offsets(problem, direction, hard)) {
      const place = { x: -direction.dy * off, y: direction.dx * off };
      keep(chordsAlong(polygon, place, direction, closeness));
    }
  }
  return found;
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
    .filter((off) => off > low + rules.least && off < high - rules.least);
  const bounds = [low, ...stations, high].toSorted((a, b) => a - b);
  const offs: number[] = [];
  const along = extentOf(polygon.outer, ({ x, y }) => dx * x + dy * y);
  const part = (from: number, to: number) => {
    const gap = to - from;
    const least = Math.max(2, Math.ceil(gap / rules.most - SLACK));
    // A narrow slab needs more parts than its length alone, so that none is too long for its width.
    const square = Math.ceil(gap / Math.min(rules.most, rules.ratio * along) - SLACK);
    for (let parts = least; parts <= Math.max(least, square) + 1; parts++) {
      if (gap / parts < rules.least - SLACK * gap) break;
      for (let i = 1; i < parts; i++) offs.push(from + ((to - from) * i) / parts);
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

/** Families of directions square to each other, those with the most edge first. */
function familiesOf({ outer }: Polygon): readonly Direction[] {
  const families: { angle: number; length: number }[] = [];
  outer.forEach((a, i) => {
    const b = outer[(i + 1) % outer.length]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length === 0) return;
    const angle = quarter(Math.atan2(b.y - a.y, b.x - a.x));
    const like = families.find((one) => apart(one.angle, angle) < (ALIKE * Math.PI) / 180);
    if (like) like.length += length;
    else families.push({ angle, length });
  });
  return families
    .toSorted((a, b) => b.length - a.length)
    .slice(0, FAMILIES)
    .map(({ angle }) => ({ dx: Math.cos(angle), dy: Math.sin(angle) }));
}

function quarter(angle: number): number {
  const turned = angle % (Math.PI / 2);
  return turned < 0 ? turned + Math.PI / 2 : turned;
}

function apart(a: number, b: number): number {
  const off = Math.abs(a - b);
  return Math.min(off, Math.PI / 2 - off);
}

/** Along both edges of a corner, and halving it. */
function cornerDirections({ outer, holes }: Polygon, corner: Point): readonly Direction[] {
  for (const ring of [outer, ...holes]) {
    const at = ring.findIndex(({ x, y }) => x === corner.x && y === corner.y);
    if (at < 0) continue;
    const into = unit(ring[(at + ring.length - 1) % ring.length]!, corner);
    const out = unit(corner, ring[(at + 1) % ring.length]!);
    const half = { dx: into.dx - out.dx, dy: into.dy - out.dy };
    const long = Math.hypot(half.dx, half.dy);
    return long < 1e-6 ? [into, out] : [into, out, { dx: half.dx / long, dy: half.dy / long }];
  }
  return [];
}

function unit(a: Point, b: Point): Direction {
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return { dx: (b.x - a.x) / long, dy: (b.y - a.y) / long };
}

/** The stretches of a line through a place that lie inside a polygon, each from edge to edge, ends on the grid. */
export function chordsAlong(
  { outer, holes }: Polygon,
  through: Point,
  { dx, dy }: Direction,
  closeness: number,
): readonly JointLine[] {
  const offOf = ({ x, y }: Point) => dx * (y - through.y) - dy * (x - through.x);
  const alongOf = ({ x, y }: Point) => dx * (x - through.x) + dy * (y - through.y);
  const places: { along: number; at: Point }[] = [];
  for (const ring of [outer, ...holes]) {
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length]!;
      const offA = offOf(a);
      const offB = offOf(b);
      // A corner near the line is where it ends, so that a joint through a corner is a joint at the corner.
      if (Math.abs(offA) <= closeness) places.push({ along: alongOf(a), at: a });
      if (Math.abs(offA) <= closeness || Math.abs(offB) <= closeness) return;
      if (offA > 0 === offB > 0) return;
      const share = offA / (offA - offB);
      const at = { x: toGrid(a.x + share * (b.x - a.x)), y: toGrid(a.y + share * (b.y - a.y)) };
      places.push({ along: alongOf(at), at });
    });
  }
  places.sort((a, b) => a.along - b.along);
  const chords: JointLine[] = [];
  for (let i = 1; i < places.length; i++) {
    const from = places[i - 1]!.at;
    const to = places[i]!.at;
    if (isNear(from, to, closeness)) continue;
    if (isInside(from, to, outer, holes)) chords.push({ from, to, by: 'search', kind: 'control' });
  }
  return chords;
}

function isInside(from: Point, to: Point, outer: Ring, holes: readonly Ring[]): boolean {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return (
    locate(middle, outer) === 'inside' && holes.every((hole) => locate(middle, hole) === 'outside')
  );
}
