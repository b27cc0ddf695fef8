/**
 * What is drawn already, in millimetres of output, so that nothing is put over it: boxes (texts and symbols, turned as
 * they stand) and straight lines, found through a grid of cells.
 */

/** What a thing is, one bit each, so that a question can name several. */
export const TEXT = 1;
/** Stakes, crosses, arrows. */
export const SYMBOL = 2;
/** The ticks of dimension lines, which chains share. */
export const TICK = 4;
/** The edges that are measured. */
export const OUTLINE = 8;
/** The edges of what stands round about. */
export const FEATURE = 16;
export const DIMENSION = 32;
export const EXTENSION = 64;
/** The edges of holes: a line from the middle of one may cross them. */
export const OPENING = 128;
export const EVERYTHING = 255;
const BOXES = TEXT | SYMBOL | TICK;

/** A rectangle about a middle, turned. Halves of its sides in mm. */
export interface TurnedBox {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly cos: number;
  readonly sin: number;
}

export interface Place {
  readonly x: number;
  readonly y: number;
}

interface Stretch {
  readonly what: number;
  readonly a: Place;
  readonly b: Place;
  /** A little short of both ends, so that lines which only meet at their ends don't count as crossing. */
  readonly shortA: Place;
  readonly shortB: Place;
}
interface Filled {
  readonly what: number;
  readonly box: TurnedBox;
}

export interface Clearance {
  readonly cell: number;
  readonly lines: Map<number, Stretch[]>;
  readonly boxes: Map<number, Filled[]>;
}

/** Nothing drawn yet. `extent` (mm) sets how coarse the cells are, so that long lines stay cheap. */
export function emptyClearance(extent: number): Clearance {
  return { cell: Math.max(6, extent / 160), lines: new Map(), boxes: new Map() };
}

/** Small whole numbers. Cells far apart may share one: that costs a look, no more, since places are compared after. */
function keyOf(column: number, row: number): number {
  return ((column & 0x3fff) << 14) | (row & 0x3fff);
}

function put<T>(cells: Map<number, T[]>, key: number, thing: T): void {
  const cell = cells.get(key);
  if (cell) cell.push(thing);
  else cells.set(key, [thing]);
}

/** Visits the cells that a line passes through, and some beside it. True when a visit said so and ended the walk. */
function alongLine(cell: number, a: Place, b: Place, visit: (key: number) => boolean): boolean {
  const minX = Math.floor(Math.min(a.x, b.x) / cell);
  const maxX = Math.floor(Math.max(a.x, b.x) / cell);
  for (let column = minX; column <= maxX; column++) {
    // The part of the line within this column.
    const dx = b.x - a.x;
    const from = dx === 0 ? 0 : Math.min(1, Math.max(0, (column * cell - a.x) / dx));
    const to = dx === 0 ? 1 : Math.min(1, Math.max(0, ((column + 1) * cell - a.x) / dx));
    const y1 = a.y + from * (b.y - a.y);
    const y2 = a.y + to * (b.y - a.y);
    const minY = Math.floor(Math.min(y1, y2) / cell);
    const maxY = Math.floor(Math.max(y1, y2) / cell);
    for (let row = minY; row <= maxY; row++) if (visit(keyOf(column, row))) return true;
  }
  return false;
}

function overBox(cell: number, box: TurnedBox, visit: (key: number) => boolean): boolean {
  const reachX = Math.abs(box.cos) * box.halfWidth + Math.abs(box.sin) * box.halfHeight;
  const reachY = Math.abs(box.sin) * box.halfWidth + Math.abs(box.cos) * box.halfHeight;
  const maxX = Math.floor((box.x + reachX) / cell);
  const maxY = Math.floor((box.y + reachY) / cell);
  for (let column = Math.floor((box.x - reachX) / cell); column <= maxX; column++) {
    for (let row = Math.floor((box.y - reachY) / cell); row <= maxY; row++) {
      if (visit(keyOf(column, row))) return true;
    }
  }
  return false;
}

const SHORT_MM = 0.3;

export function addLine({ cell, lines }: Clearance, what: number, a: Place, b: Place): void {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const short = length === 0 ? 0 : Math.min(SHORT_MM / length, 1 / 3);
  const between = (t: number): Place => ({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
  const stretch = { what, a, b, shortA: between(short), shortB: between(1 - short) };
  alongLine(cell, a, b, (key) => {
    put(lines, key, stretch);
    return false;
  });
}

export function addBox({ cell, boxes }: Clearance, what: number, box: TurnedBox): void {
  const filled = { what, box };
  overBox(cell, box, (key) => {
    put(boxes, key, filled);
    return false;
  });
}

/** Whether a box meets nothing of the kinds named. */
export function isBoxFree(clearance: Clearance, box: TurnedBox, what: number): boolean {
  const { cell, lines, boxes } = clearance;
  return !overBox(
    cell,
    box,
    (key) =>
      ((what & BOXES) !== 0 &&
        (boxes.get(key)?.some((one) => (one.what & what) !== 0 && boxesOverlap(one.box, box)) ??
          false)) ||
      (lines.get(key)?.some((one) => (one.what & what) !== 0 && lineMeetsBox(one.a, one.b, box)) ??
        false),
  );
}

/** Whether a line passes over no box and crosses no line of the kinds named. */
export function isLineFree(clearance: Clearance, a: Place, b: Place, what: number): boolean {
  const { cell, lines, boxes } = clearance;
  return !alongLine(
    cell,
    a,
    b,
    (key) =>
      ((what & BOXES) !== 0 &&
        (boxes.get(key)?.some((one) => (one.what & what) !== 0 && lineMeetsBox(a, b, one.box)) ??
          false)) ||
      (lines
        .get(key)
        ?.some((one) => (one.what & what) !== 0 && linesCross(a, b, one.shortA, one.shortB)) ??
        false),
  );
}

/** Two turned rectangles are apart only if a side of one of them has the other wholly beyond it. */
export function boxesOverlap(a: TurnedBox, b: TurnedBox): boolean {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  // How far the axes of the two are turned against each other.
  const c = Math.abs(a.cos * b.cos + a.sin * b.sin);
  const s = Math.abs(a.sin * b.cos - a.cos * b.sin);
  return (
    Math.abs(dx * a.cos + dy * a.sin) < a.halfWidth + b.halfWidth * c + b.halfHeight * s &&
    Math.abs(dy * a.cos - dx * a.sin) < a.halfHeight + b.halfWidth * s + b.halfHeight * c &&
    Math.abs(dx * b.cos + dy * b.sin) < b.halfWidth + a.halfWidth * c + a.halfHeight * s &&
    Math.abs(dy * b.cos - dx * b.sin) < b.halfHeight + a.halfWidth * s + a.halfHeight * c
  );
}

/** Whether any of a line lies inside a turned rectangle. */
export function lineMeetsBox(a: Place, b: Place, box: TurnedBox): boolean {
  const ax = (a.x - box.x) * box.cos + (a.y - box.y) * box.sin;
  const ay = (a.y - box.y) * box.cos - (a.x - box.x) * box.sin;
  const dx = (b.x - box.x) * box.cos + (b.y - box.y) * box.sin - ax;
  const dy = (b.y - box.y) * box.cos - (b.x - box.x) * box.sin - ay;
  let from = 0;
  let to = 1;
  const within = (start: number, way: number, half: number): boolean => {
    if (way === 0) return Math.abs(start) < half;
    const one = (-half - start) / way;
    const other = (half - start) / way;
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
    return from < to;
  };
  return within(ax, dx, box.halfWidth) && within(ay, dy, box.halfHeight);
}

/** Whether two lines cross, each from one side of the other to the other side. */
export function linesCross(a: Place, b: Place, c: Place, d: Place): boolean {
  const side = (p: Place, q: Place, r: Place) =>
    (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** A line as a thin box, so that another along it is found too; shortened at both ends so that a chain may touch. */
export function asBox(a: Place, b: Place, halfHeight: number, shortened: number): TurnedBox {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return {
    x: (a.x + b.x) / 2,
    y: (a.y + b.y) / 2,
    halfWidth: Math.max(0, length / 2 - shortened),
    halfHeight,
    cos: length === 0 ? 1 : (b.x - a.x) / length,
    sin: length === 0 ? 0 : (b.y - a.y) / length,
  };
}
