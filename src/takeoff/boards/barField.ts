import { type Box, boxesMeet } from '../../geometry/box.ts';
import { FOOT, type Grid } from '../../units/grid.ts';
import type { Bar } from './roomPast.ts';

/** What lies about, sorted by squares of ground, so that what is near a board is found without looking at it all. */
export interface BarField {
  readonly squares: Map<number, Bar[]>;
  /** Those that lie on more squares than a few. */
  readonly wide: Bar[];
}

const SQUARE: Grid = 4 * FOOT;
const MOST_SQUARES = 64;

export function barField(bars: readonly Bar[]): BarField {
  const field: BarField = { squares: new Map(), wide: [] };
  for (const bar of bars) addBar(field, bar);
  return field;
}

export function addBar({ squares, wide }: BarField, bar: Bar): void {
  const numbers = squaresOf(bar.box);
  if (!numbers) {
    wide.push(bar);
    return;
  }
  for (const number of numbers) {
    const list = squares.get(number);
    if (list) list.push(bar);
    else squares.set(number, [bar]);
  }
}

/** Those whose boxes meet a box, once each. */
export function barsNear({ squares, wide }: BarField, box: Box): readonly Bar[] {
  const near = wide.filter((bar) => boxesMeet(bar.box, box, 0));
  const lists = squaresOf(box)?.map((number) => squares.get(number)) ?? [...squares.values()];
  for (const list of lists) {
    for (const bar of list ?? []) {
      if (boxesMeet(bar.box, box, 0) && !near.includes(bar)) near.push(bar);
    }
  }
  return near;
}

/** More squares than a site has in one direction, so that each has a number of its own. */
const SQUARES_UP = 2 ** 20;

/** The numbers of the squares that a box lies on; undefined when they are many. */
function squaresOf({ minX, minY, maxX, maxY }: Box): readonly number[] | undefined {
  const left = Math.floor(minX / SQUARE);
  const low = Math.floor(minY / SQUARE);
  const right = Math.floor(maxX / SQUARE);
  const high = Math.floor(maxY / SQUARE);
  if ((right - left + 1) * (high - low + 1) > MOST_SQUARES) return undefined;
  const numbers: number[] = [];
  for (let x = left; x <= right; x++) {
    for (let y = low; y <= high; y++) numbers.push(x * SQUARES_UP + y);
  }
  return numbers;
}
