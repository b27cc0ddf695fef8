import type { Point, Ring } from '../../src/geometry/point.ts';

/** Binary places kept behind the point: an error of one in the last is about 10^-17 of a grid unit. */
const PLACES = 56n;
const ONE = 1n << PLACES;

interface Side {
  readonly ring: number;
  readonly low: Point;
  readonly high: Point;
  /** +1 when the ring runs upwards here. */
  readonly way: number;
  readonly from: bigint;
  readonly to: bigint;
}

/**
 * Twice the area of a set made of rings, square grid units, in big-integer arithmetic.
 *
 * The plane is cut into level slabs at every corner and every crossing; within a slab no two sides cross, so each gap
 * between neighbouring sides is a trapezoid that is in the set or not. Nothing is joined up into outlines, so there is
 * no topology to get wrong: two sides taken in the wrong order lie on each other, and the gap between them has no width.
 * Crossings are kept to 2^-56 of a unit, so the result is right to far better than one square unit.
 *
 * @param isIn Says from the winding number round each ring whether a place is in the set.
 */
export function doubledExactArea(
  rings: readonly Ring[],
  isIn: (windings: readonly number[]) => boolean,
): number {
  const sides = rings.flatMap((ring, r) => sidesOf(ring, r));
  const levels = new Set<bigint>();
  for (const { from, to } of sides) {
    levels.add(from);
    levels.add(to);
  }
  for (let i = 0; i < sides.length; i++) {
    for (let j = i + 1; j < sides.length; j++) {
      const level = crossingLevel(sides[i]!, sides[j]!);
      if (level !== undefined) levels.add(level);
    }
  }
  const sorted = [...levels].sort((a, b) => (a < b ? -1 : 1));
  let doubled = 0n;
  for (let k = 1; k < sorted.length; k++) {
    const low = sorted[k - 1]!;
    const high = sorted[k]!;
    doubled += ((high - low) * doubledWidth(sides, low, high, rings.length, isIn)) >> PLACES;
  }
  // Doubled widths times heights, one PLACES still on it.
  return Number(doubled >> (PLACES - 20n)) / 2 ** 20;
}

function sidesOf(ring: Ring, index: number): Side[] {
  return ring.flatMap((a, i): Side[] => {
    const b = ring[(i + 1) % ring.length]!;
    if (a.y === b.y) return [];
    const [low, high, way] = a.y < b.y ? [a, b, 1] : [b, a, -1];
    const from = BigInt(low.y) * ONE;
    return [{ ring: index, low, high, way, from, to: BigInt(high.y) * ONE }];
  });
}

/** Level at which two sides cross between their ends, if they do. */
function crossingLevel(a: Side, b: Side): bigint | undefined {
  if (Math.max(a.low.y, b.low.y) >= Math.min(a.high.y, b.high.y)) return undefined;
  if (Math.max(a.low.x, a.high.x) < Math.min(b.low.x, b.high.x)) return undefined;
  if (Math.max(b.low.x, b.high.x) < Math.min(a.low.x, a.high.x)) return undefined;
  const ax = BigInt(a.high.x - a.low.x);
  const ay = BigInt(a.high.y - a.low.y);
  const bx = BigInt(b.high.x - b.low.x);
  const by = BigInt(b.high.y - b.low.y);
  const cross = ax * by - ay * bx;
  if (cross === 0n) return undefined;
  const share = BigInt(b.low.x - a.low.x) * by - BigInt(b.low.y - a.low.y) * bx;
  const level = a.from + (share * ay * ONE) / cross;
  return level > a.from && level < a.to && level > b.from && level < b.to ? level : undefined;
}

/** Twice the width in the set, halfway up a slab. */
function doubledWidth(
  sides: readonly Side[],
  low: bigint,
  high: bigint,
  rings: number,
  isIn: (windings: readonly number[]) => boolean,
): bigint {
  const there = sides
    .filter(({ from, to }) => from <= low && to >= high)
    .map((side) => ({ side, x: doubledX(side, low + high) }))
    .sort((a, b) => (a.x < b.x ? -1 : a.x > b.x ? 1 : 0));
  const windings: number[] = new Array(rings).fill(0);
  let width = 0n;
  for (let i = 0; i + 1 < there.length; i++) {
    const { side, x } = there[i]!;
    windings[side.ring]! += side.way;
    if (isIn(windings)) width += there[i + 1]!.x - x;
  }
  return width;
}

/** Twice the x of a side at half the doubled level. */
function doubledX({ low, high, from }: Side, doubledLevel: bigint): bigint {
  const up = doubledLevel - 2n * from;
  return 2n * BigInt(low.x) * ONE + (up * BigInt(high.x - low.x)) / BigInt(high.y - low.y);
}
