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
/** Form boards: nothing is written on them, but lines may cross them. */
export const BOARD = 256;
/** Buried lines: their words stand in them. */
export const UTILITY = 512;
/** Mesh and bars: they cover the slab, so what finds no room beside them is written over them, on paper of its own. */
export const STEEL = 1024;
/** Joints: their letters stand in them. */
export const JOINT = 2048;
export const EVERYTHING = 4095;
const BOXES = TEXT | SYMBOL | TICK | BOARD;

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

/** The rows and columns of cells that a box reaches over. */
function reachOf(box: TurnedBox, cell: number) {
  const x = Math.abs(box.cos) * box.halfWidth + Math.abs(box.sin) * box.halfHeight;
  const y = Math.abs(box.sin) * box.halfWidth + Math.abs(box.cos) * box.halfHeight;
  return {
    left: Math.floor((box.x - x) / cell),
    right: Math.floor((box.x + x) / cell),
    low: Math.floor((box.y - y) / cell),
    high: Math.floor((box.y + y) / cell),
  };
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
  const { left, right, low, high } = reachOf(box, cell);
  for (let column = left; column <= right; column++) {
    for (let row = low; row <= high; row++) put(boxes, keyOf(column, row), filled);
  }
}

/** Whether a box meets nothing of the kinds named. */
export function isBoxFree(clearance: Clearance, box: TurnedBox, what: number): boolean {
  const { cell, lines, boxes } = clearance;
  const { left, right, low, high } = reachOf(box, cell);
  for (let column = left; column <= right; column++) {
    for (let row = low; row <= high; row++) {
      const key = keyOf(column, row);
      if ((what & BOXES) !== 0 && meetsBoxes(boxes.get(key), box, what)) return false;
      if (meetsLines(lines.get(key), box, what)) return false;
    }
  }
  return true;
}

function meetsBoxes(filled: readonly Filled[] | undefined, box: TurnedBox, what: number): boolean {
  if (!filled) return false;
  for (const one of filled) {
    if ((one.what & what) !== 0 && boxesOverlap(one.box, box)) return true;
  }
  return false;
}

function meetsLines(
  stretches: readonly Stretch[] | undefined,
  box: TurnedBox,
  what: number,
): boolean {
  if (!stretches) return false;
  for (const one of stretches) {
    if ((one.what & what) !== 0 && lineMeetsBox(one.a, one.b, box)) return true;
  }
  return false;
}

/** Whether a line passes over no box and crosses no line of the kinds named. */
export function isLineFree(clearance: Clearance, a: Place, b: Place, what: number): boolean {
  const { cell, lines, boxes } = clearance;
  return !alongLine(cell, a, b, (key) => {
    if ((what & BOXES) !== 0) {
      for (const one of boxes.get(key) ?? NONE) {
        if ((one.what & what) !== 0 && lineMeetsBox(a, b, one.box)) return true;
      }
    }
    for (const one of lines.get(key) ?? NONE) {
      if ((one.what & what) !== 0 && linesCross(a, b, one.shortA, one.shortB)) return true;
    }
    return false;
  });
}

const NONE: readonly never[] = [];

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
  const { cos, sin, halfWidth, halfHeight } = box;
  const ax = (a.x - box.x) * cos + (a.y - box.y) * sin;
  const ay = (a.y - box.y) * cos - (a.x - box.x) * sin;
  const bx = (b.x - box.x) * cos + (b.y - box.y) * sin;
  const by = (b.y - box.y) * cos - (b.x - box.x) * sin;
  // Apart when the box of the line is beside the rectangle, else when the rectangle is all to one side of the line.
  if (Math.min(ax, bx) >= halfWidth || Math.max(ax, bx) <= -halfWidth) return false;
  if (Math.min(ay, by) >= halfHeight || Math.max(ay, by) <= -halfHeight) return false;
  const reach = Math.abs(by - ay) * halfWidth + Math.abs(bx - ax) * halfHeight;
  return Math.abs(ax * (by - ay) - ay * (bx - ax)) < reach || (ax === bx && ay === by);
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
