import type { Point } from '../../geometry/point.ts';
import { between } from './corners.ts';

/** A length between two places, by their numbers. */
export interface Length {
  readonly from: number;
  readonly to: number;
  readonly length: number;
}

const MOST_ROUNDS = 60;
/** Closer than this, grid units, is the same place. */
const SETTLED = 1e-4;
/** A pivot this small beside the largest: the lengths leave something free to move. */
const FREE = 1e-7;

/**
 * Places whose lengths between them are as near to those given as they can be: the sum of the squares of what is left is
 * least, every length trusted alike. The first place of `held` stays where it is, the second on the line between them.
 * Found by linear steps from where the places were meant to be, each halved until it helps. 'free' when the lengths don't
 * fix every place, 'unsettled' when none are found. Floats.
 * Source: geometry (least squares, Gauss's method).
 */
export function leastSquares(
  meant: readonly Point[],
  lengths: readonly Length[],
  [first, second]: readonly [number, number],
): readonly Point[] | 'free' | 'unsettled' {
  const reach = between(meant[first]!, meant[second]!);
  const ux = (meant[second]!.x - meant[first]!.x) / reach;
  const uy = (meant[second]!.y - meant[first]!.y) / reach;
  // Two numbers a place, but none for the first of those held, and one for the second.
  const ways = meant.flatMap((_, place): readonly (readonly [number, number, number])[] => {
    if (place === first) return [];
    if (place === second) return [[place, ux, uy]];
    return [
      [place, 1, 0],
      [place, 0, 1],
    ];
  });
  if (lengths.length < ways.length) return 'free';
  let places = meant;
  let left = misfit(places, lengths);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const step = stepFrom(places, lengths, ways);
    // Where they were meant to be some place is free; farther on they have folded flat: there is no such form.
    if (!step) return round === 0 ? 'free' : 'unsettled';
    const size = Math.max(...step.map(Math.abs));
    let share = 1;
    let next = moved(places, ways, step, share);
    while (misfit(next, lengths) > left && share > 1e-6) {
      share /= 2;
      next = moved(places, ways, step, share);
    }
    if (misfit(next, lengths) <= left) {
      places = next;
      left = misfit(next, lengths);
    }
    if (size * share < SETTLED || share <= 1e-6) return places;
  }
  return 'unsettled';
}

function misfit(places: readonly Point[], lengths: readonly Length[]): number {
  return lengths.reduce((sum, { from, to, length }) => {
    const off = between(places[from]!, places[to]!) - length;
    return sum + off * off;
  }, 0);
}

type Way = readonly [place: number, x: number, y: number];

function moved(
  places: readonly Point[],
  ways: readonly Way[],
  step: readonly number[],
  share: number,
): readonly Point[] {
  const next = places.map(({ x, y }) => ({ x, y }));
  ways.forEach(([place, x, y], i) => {
    next[place]!.x += share * step[i]! * x;
    next[place]!.y += share * step[i]! * y;
  });
  return next;
}

/** The step by which the lengths would come out, were they to change in proportion; nothing when some way is free. */
function stepFrom(
  places: readonly Point[],
  lengths: readonly Length[],
  ways: readonly Way[],
): readonly number[] | undefined {
  const size = ways.length;
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  for (const { from, to, length } of lengths) {
    const a = places[from]!;
    const b = places[to]!;
    const is = between(a, b);
    if (is === 0) continue;
    const [dx, dy] = [(b.x - a.x) / is, (b.y - a.y) / is];
    const row = ways.map(([place, x, y]) =>
      place === to ? dx * x + dy * y : place === from ? -dx * x - dy * y : 0,
    );
    for (let i = 0; i < size; i++) {
      if (row[i] === 0) continue;
      right[i]! += row[i]! * (length - is);
      for (let j = 0; j < size; j++) matrix[i]![j]! += row[i]! * row[j]!;
    }
  }
  return solved(matrix, right);
}

/** Solves a symmetric system by elimination with the largest pivot first; nothing when a pivot is as good as none. */
function solved(matrix: readonly Float64Array[], right: Float64Array): number[] | undefined {
  const rows = matrix.map((row, i) => Float64Array.of(...row, right[i]!));
  const size = rows.length;
  const largest = Math.max(...rows.map((row, i) => Math.abs(row[i]!)));
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let i = column + 1; i < size; i++) {
      if (Math.abs(rows[i]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = i;
    }
    if (Math.abs(rows[pivot]![column]!) <= FREE * largest) return undefined;
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    for (let i = column + 1; i < size; i++) {
      const share = rows[i]![column]! / rows[column]![column]!;
      if (share === 0) continue;
      for (let j = column; j <= size; j++) rows[i]![j]! -= share * rows[column]![j]!;
    }
  }
  const found: number[] = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    let sum = rows[i]![size]!;
    for (let j = i + 1; j < size; j++) sum -= rows[i]![j]! * found[j]!;
    found[i] = sum / rows[i]![i]!;
  }
  return found;
}
