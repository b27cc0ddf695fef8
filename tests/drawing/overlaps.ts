import { textCorners } from '../../src/drawing/bounds.ts';
import type { Mark } from '../../src/drawing/marks.ts';
import { pathPoints } from '../../src/drawing/paths.ts';

export type Text = Extract<Mark, { kind: 'text' }>;
type Spot = { readonly x: number; readonly y: number };

/** The upright rectangle round spots, to pass by quickly what lies elsewhere. */
type Extent = readonly [left: number, right: number, low: number, high: number];

function extentOf(spots: readonly Spot[]): Extent {
  const xs = spots.map(({ x }) => x);
  const ys = spots.map(({ y }) => y);
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
}

function isElsewhere(a: Extent, b: Extent): boolean {
  return a[0] > b[1] || b[0] > a[1] || a[2] > b[3] || b[2] > a[3];
}

/** An independent look at the marks: convex polygons by their separating sides, nothing of the code that placed them. */
function polygonsMeet(a: readonly Spot[], b: readonly Spot[]): boolean {
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    for (let i = 0; i < one.length; i++) {
      const p = one[i]!;
      const q = one[(i + 1) % one.length]!;
      const normal = { x: q.y - p.y, y: p.x - q.x };
      const size = Math.hypot(normal.x, normal.y);
      if (size === 0) continue;
      const reach = (spots: readonly Spot[]) =>
        spots.map((s) => (s.x * normal.x + s.y * normal.y) / size);
      const [own, their] = [reach(one), reach(other)];
      if (Math.max(...own) <= Math.min(...their) + 1e-6) return false;
      if (Math.max(...their) <= Math.min(...own) + 1e-6) return false;
    }
  }
  return true;
}

const LINES = new Set([
  'dimension',
  'extension',
  'match',
  'centre',
  'outline-free',
  'outline-existing',
  'outline-wall',
  'outline-steps',
  'outline-block-out',
  'outline-wall-formed',
  'form',
  'board',
  'splice',
  'brace',
]);

const JOINTS = new Set(['joint-control', 'joint-construction', 'joint-existing']);

/** A joint's letter stands astride its own line, and runs along it. */
function isItsOwn(text: Text, style: string, [from, to]: readonly Spot[]): boolean {
  if (text.layer !== 'joints' || !JOINTS.has(style)) return false;
  const way = Math.atan2(to!.y - from!.y, to!.x - from!.x);
  return Math.abs(Math.sin(way - text.angle)) < 0.001;
}

interface Solid {
  readonly name: string;
  readonly spots: readonly Spot[];
  readonly extent: Extent;
}

/** Symbols and boards. A bent board isn't convex: its lines are looked at instead. */
function solidOf(mark: Mark, gridPerMm: number): readonly Solid[] {
  if (mark.kind === 'symbol' && mark.symbol !== 'arrow') {
    // A tick is a stroke at 45°: half its size to each side along the line, as far up and down.
    const half = (mark.size / 2) * Math.SQRT1_2 * gridPerMm;
    const [cos, sin] = [Math.cos(mark.angle), Math.sin(mark.angle)];
    const spots = [
      [-half, -half],
      [half, -half],
      [half, half],
      [-half, half],
    ].map(([x, y]) => ({
      x: mark.at.x + x! * cos - y! * sin,
      y: mark.at.y + x! * sin + y! * cos,
    }));
    return [{ name: mark.symbol, spots, extent: extentOf(spots) }];
  }
  const straight = mark.kind === 'area' && !mark.paths[0]!.segments.some(({ arc }) => arc);
  if (!straight || mark.material !== 'lumber') return [];
  const spots = pathPoints(mark.paths[0]!, 1);
  return [{ name: 'board', spots, extent: extentOf(spots) }];
}

/** Every text that lies on something else, in words. */
export function overlaps(marks: readonly Mark[], gridPerMm: number): readonly string[] {
  const texts = marks.filter((mark): mark is Text => mark.kind === 'text');
  const rooms = texts.map((text) => textCorners(text, gridPerMm));
  const found: string[] = [];
  const extents = rooms.map(extentOf);
  const lines = marks.flatMap((mark) => {
    if (mark.kind !== 'line' || !(LINES.has(mark.style) || JOINTS.has(mark.style))) return [];
    if (isRing(mark.path.segments.length, mark.path.closed, mark.style)) return [];
    const points = pathPoints(mark.path, 8);
    return points.slice(1).map((point, k) => {
      const stretch = [points[k]!, point];
      return { style: mark.style, stretch, extent: extentOf(stretch) };
    });
  });
  const solid = marks.flatMap((mark) => solidOf(mark, gridPerMm));
  texts.forEach((text, i) => {
    for (const { style, stretch, extent } of lines) {
      if (isElsewhere(extents[i]!, extent) || isItsOwn(text, style, stretch)) continue;
      if (polygonsMeet(rooms[i]!, stretch)) {
        found.push(`“${text.text}” on a line (${style})`);
      }
    }
    for (let j = i + 1; j < texts.length; j++) {
      if (isElsewhere(extents[i]!, extents[j]!)) continue;
      if (polygonsMeet(rooms[i]!, rooms[j]!)) found.push(`“${text.text}” on “${texts[j]!.text}”`);
    }
    for (const { name, spots, extent } of solid) {
      if (isElsewhere(extents[i]!, extent)) continue;
      if (polygonsMeet(rooms[i]!, spots)) found.push(`“${text.text}” on a ${name}`);
    }
  });
  return found;
}

/** The ring round a letter is meant to have the letter in it. */
function isRing(segments: number, closed: boolean, style: string): boolean {
  return segments === 2 && closed && style === 'dimension';
}
