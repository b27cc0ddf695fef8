import type { LooseRing, LooseShape } from './engine.ts';
import { toGrid } from './round.ts';

/** A crossing that a float engine found is no farther than this from the lines that make it, grid units. */
const FLOAT_ERROR = 2 ** -8;

interface Line {
  readonly ax: number;
  readonly ay: number;
  readonly dx: number;
  readonly dy: number;
}

/**
 * A place where two of the edges that went into a clipper cross, rounded to the grid: found again in whole numbers, so
 * that it comes out the same however the job is turned (where lines cross at a slight angle, float error reaches the
 * rounding). With no two edges to make it, the place itself, rounded.
 */
export function settledCorner(
  x: number,
  y: number,
  shapes: readonly LooseShape[],
): [number, number] {
  if (Number.isInteger(x) && Number.isInteger(y)) return [x, y];
  const lines: Line[] = [];
  for (const shape of shapes) for (const ring of shape) linesThrough(ring, x, y, lines);
  let best: [Line, Line] | undefined;
  let most = 0;
  for (let i = 0; i < lines.length; i++) {
    for (let j = i + 1; j < lines.length; j++) {
      const p = lines[i]!;
      const q = lines[j]!;
      const cross = p.dx * q.dy - p.dy * q.dx;
      const sine = (cross * cross) / ((p.dx * p.dx + p.dy * p.dy) * (q.dx * q.dx + q.dy * q.dy));
      if (sine > most) {
        most = sine;
        best = [p, q];
      }
    }
  }
  return best ? crossing(best[0], best[1]) : [toGrid(x), toGrid(y)];
}

/** Adds the edges of a ring that pass through a place, as far as floats can tell. */
function linesThrough(ring: LooseRing, x: number, y: number, into: Line[]): void {
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const [ax, ay] = a;
    const [bx, by] = b;
    a = b;
    if ((ax < x - 1 && bx < x - 1) || (ax > x + 1 && bx > x + 1)) continue;
    if ((ay < y - 1 && by < y - 1) || (ay > y + 1 && by > y + 1)) continue;
    const dx = bx - ax;
    const dy = by - ay;
    const off = dx * (y - ay) - dy * (x - ax);
    if (off * off <= FLOAT_ERROR * FLOAT_ERROR * (dx * dx + dy * dy)) into.push({ ax, ay, dx, dy });
  }
}

/** Where two lines through whole-number corners meet, to the nearest grid place, halves away from the origin. */
function crossing(p: Line, q: Line): [number, number] {
  const cross = BigInt(p.dx) * BigInt(q.dy) - BigInt(p.dy) * BigInt(q.dx);
  const share = BigInt(q.ax - p.ax) * BigInt(q.dy) - BigInt(q.ay - p.ay) * BigInt(q.dx);
  return [
    nearest(BigInt(p.ax) * cross + share * BigInt(p.dx), cross),
    nearest(BigInt(p.ay) * cross + share * BigInt(p.dy), cross),
  ];
}

/** A fraction of whole numbers, to the nearest whole number, halves away from zero. */
function nearest(top: bigint, bottom: bigint): number {
  const sign = top < 0n === bottom < 0n ? 1n : -1n;
  const n = top < 0n ? -top : top;
  const d = bottom < 0n ? -bottom : bottom;
  return Number(sign * ((2n * n + d) / (2n * d)));
}
