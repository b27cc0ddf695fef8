import { doubledArea } from './area.ts';
import { edgesCross, meetingPoint } from './crossings.ts';
import { distanceToEdge, locate } from './locate.ts';
import { type Point, type Polygon, type Ring, samePoint } from './point.ts';

/** A straight cut through polygons. */
export interface Cut {
  readonly from: Point;
  readonly to: Point;
}

/** A place this near to a line is on it, grid units: places on sloping lines are rounded to the grid. */
const ON_LINE = 1.5;

/**
 * The parts that straight cuts part polygons into. Cuts may cross, meet, and end anywhere; one that ends inside parts
 * nothing by itself (its part's ring then goes out along it and back). Cuts must not leave the polygons, nor lie on one
 * another.
 *
 * Places where lines meet are rounded to the grid and become corners of all that meet there, so the parts fit together
 * exactly; a sloping line may be moved by one grid unit (1/320 mm).
 */
export function faces(polygons: readonly Polygon[], cuts: readonly Cut[]): readonly Polygon[] {
  return polygons.flatMap((polygon) => {
    const own = cuts.filter((cut) => isIn(polygon, middleOf(cut)));
    return own.length === 0 ? [polygon] : partsOf(polygon, own);
  });
}

function middleOf({ from, to }: Cut): Point {
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
}

function isIn({ outer, holes }: Polygon, place: Point): boolean {
  return (
    locate(place, outer) === 'inside' && holes.every((hole) => locate(place, hole) !== 'inside')
  );
}

/** One way along a line: the part lies to its left. */
interface Way {
  readonly from: number;
  readonly to: number;
}

function partsOf({ outer, holes }: Polygon, cuts: readonly Cut[]): readonly Polygon[] {
  const lines: { from: Point; to: Point; cut: boolean }[] = [
    ...[outer, ...holes].flatMap((ring) =>
      ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]!, cut: false })),
    ),
    ...cuts.map(({ from, to }) => ({ from, to, cut: true })),
  ];
  const places: Point[] = [];
  const numbers = new Map<string, number>();
  const numberOf = (place: Point): number => {
    const key = `${place.x} ${place.y}`;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    places.push(place);
    numbers.set(key, places.length - 1);
    return places.length - 1;
  };
  const corners = cornersOn(lines);
  const ways: Way[] = [];
  const taken = new Set<string>();
  const add = (from: number, to: number) => {
    const key = `${from} ${to}`;
    if (from === to || taken.has(key)) return;
    taken.add(key);
    ways.push({ from, to });
  };
  lines.forEach(({ cut }, at) => {
    const along = corners[at]!;
    for (let i = 1; i < along.length; i++) {
      const a = numberOf(along[i - 1]!);
      const b = numberOf(along[i]!);
      add(a, b);
      if (cut) add(b, a);
    }
  });
  return gathered(walks(places, ways));
}

/** Every line's places in order along it: its ends, and where others end on it or cross it. */
function cornersOn(lines: readonly (Cut & { readonly cut: boolean })[]): readonly Point[][] {
  const on: Point[][] = lines.map(({ from, to }) => [from, to]);
  lines.forEach((line, i) => {
    if (!line.cut) return;
    lines.forEach((other, j) => {
      if (i === j) return;
      for (const end of [line.from, line.to]) {
        if (isOn(end, other)) on[j]!.push(end);
      }
      for (const end of [other.from, other.to]) {
        if (isOn(end, line)) on[i]!.push(end);
      }
      if (other.cut && j < i) return;
      const touches =
        [line.from, line.to].some((end) => isOn(end, other)) ||
        [other.from, other.to].some((end) => isOn(end, line));
      if (touches || !edgesCross(line.from, line.to, other.from, other.to)) return;
      const at = meetingPoint(line.from, line.to, other.from, other.to);
      on[i]!.push(at);
      on[j]!.push(at);
    });
  });
  return lines.map(({ from, to }, i) => {
    const along = (p: Point) => (p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y);
    const sorted = on[i]!.toSorted((a, b) => along(a) - along(b));
    return sorted.filter((place, k) => k === 0 || !samePoint(place, sorted[k - 1]!));
  });
}

function isOn(place: Point, { from, to }: Cut): boolean {
  if (samePoint(place, from) || samePoint(place, to)) return false;
  return distanceToEdge(place, from, to) <= ON_LINE;
}

/** Closed walks that keep to the left: at each place the way that turns most to the left of going back. */
function walks(places: readonly Point[], ways: readonly Way[]): readonly Ring[] {
  const out: number[][] = places.map(() => []);
  ways.forEach(({ from }, i) => {
    out[from]!.push(i);
  });
  const angle = ways.map(({ from, to }) =>
    Math.atan2(places[to]!.y - places[from]!.y, places[to]!.x - places[from]!.x),
  );
  const used = new Set<number>();
  const rings: Ring[] = [];
  ways.forEach((_, start) => {
    if (used.has(start)) return;
    const ring: Point[] = [];
    let at: number | undefined = start;
    while (at !== undefined && !used.has(at)) {
      used.add(at);
      const { from, to }: Way = ways[at]!;
      ring.push(places[from]!);
      const back = angle[at]! + Math.PI;
      at = nextLeft(out[to]!, angle, back, ways, from);
    }
    if (ring.length > 2) rings.push(ring);
  });
  return rings;
}

/** Of the ways out of a place, the first met when turning clockwise from the way back. */
function nextLeft(
  out: readonly number[],
  angle: readonly number[],
  back: number,
  ways: readonly Way[],
  from: number,
): number | undefined {
  let best: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const way of out) {
    // Straight back only where there is no other way: a cut that ends inside.
    const turn = ways[way]!.to === from ? 2 * Math.PI : clockwise(back, angle[way]!);
    if (turn < least) {
      least = turn;
      best = way;
    }
  }
  return best;
}

function clockwise(from: number, to: number): number {
  const turned = (from - to) % (2 * Math.PI);
  return turned <= 0 ? turned + 2 * Math.PI : turned;
}

/** Walks round a part, and the walks round holes given to the parts that they lie in. */
function gathered(rings: readonly Ring[]): readonly Polygon[] {
  const outers = rings.filter((ring) => doubledArea(ring) > 0);
  const inners = rings.filter((ring) => doubledArea(ring) < 0);
  return outers.map((outer) => ({
    outer,
    holes: inners.filter((hole) => smallestRound(hole, outers) === outer),
  }));
}

function smallestRound(hole: Ring, outers: readonly Ring[]): Ring | undefined {
  const round = outers.filter((outer) => hole.every((place) => locate(place, outer) !== 'outside'));
  return round.toSorted((a, b) => doubledArea(a) - doubledArea(b))[0];
}
