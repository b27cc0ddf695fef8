import type { Grid } from '../../units/grid.ts';
import { FOOT } from '../../units/grid.ts';
import type { NetPour } from '../outline/pour.ts';
import { longestWay } from './longestWay.ts';

/** Directions nearer to each other than this, radians, are one: 1/16 in to 2 ft. Our own default. */
const SAME_WAY = 1 / 384;
/** More directions than this aren't tried: those of the most edge count. Our own limit. */
const MOST_WAYS = 6;
const QUARTER = Math.PI / 2;

/** Directions of the pour's straight sides, a quarter turn being none: that of the longest side first, then by length. */
export function rowDirections(pour: NetPour, closeness: Grid): readonly number[] {
  const longest = longestWay(pour, closeness);
  const found = [{ way: longest, length: Number.POSITIVE_INFINITY }];
  for (const { rings } of pour.pieces) {
    for (const { edges } of rings) {
      for (const { arc, from, to } of edges) {
        const [dx, dy] = [to.x - from.x, to.y - from.y];
        const length = Math.hypot(dx, dy);
        if (arc || length < FOOT) continue;
        const way = Math.atan2(dy, dx);
        const known = found.find((one) => apart(one.way, way) < SAME_WAY);
        if (known) known.length += length;
        else found.push({ way, length });
      }
    }
  }
  return found
    .sort((a, b) => b.length - a.length)
    .slice(0, MOST_WAYS)
    .map(({ way }) => way);
}

/** The angle between two directions, quarter turns left out. */
function apart(a: number, b: number): number {
  const turn = Math.abs(a - b) % QUARTER;
  return Math.min(turn, QUARTER - turn);
}
