import { type Box, boxesMeet } from '../../geometry/box.ts';
import { FOOT, type Grid } from '../../units/grid.ts';
import type { Bar } from './roomPast.ts';

/** What lies about, sorted by squares of ground, so that what is near a board is found without looking at it all. */
export interface BarField {
  readonly squares: Map<string, Bar[]>;
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
  const names = squaresOf(bar.box);
  if (!names) {
    wide.push(bar);
    return;
  }
  for (const name of names) {
    const list = squares.get(name);
    if (list) list.push(bar);
    else squares.set(name, [bar]);
  }
}

/** Those whose boxes meet a box, once each. */
export function barsNear({ squares, wide }: BarField, box: Box): readonly Bar[] {
  const lists = squaresOf(box)?.map((name) => squares.get(name)) ?? [...squares.values()];
  const near = new Set<Bar>();
  for (const list of [wide, ...lists]) {
    for (const bar of list ?? []) if (boxesMeet(bar.box, box, 0)) near.add(bar);
  }
  return [...near];
}

/** The squares that a box lies on; undefined when they are many. */
function squaresOf({ minX, minY, maxX, maxY }: Box): readonly string[] | undefined {
  const left = Math.floor(minX / SQUARE);
  const low = Math.floor(minY / SQUARE);
  const right = Math.floor(maxX / SQUARE);
  const high = Math.floor(maxY / SQUARE);
  if ((right - left + 1) * (high - low + 1) > MOST_SQUARES) return undefined;
  const names: string[] = [];
  for (let x = left; x <= right; x++) for (let y = low; y <= high; y++) names.push(`${x},${y}`);
  return names;
}
