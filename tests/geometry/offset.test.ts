import { describe, expect, test } from 'vitest';
import { doubledArea } from '../../src/geometry/area.ts';
import { insetPolygons } from '../../src/geometry/offset.ts';
import type { Polygon, Ring } from '../../src/geometry/point.ts';
import { INCH } from '../../src/units/grid.ts';

function ring(places: readonly (readonly [number, number])[]): Ring {
  return places.map(([x, y]) => ({ x: x * INCH, y: y * INCH }));
}

function squareInches(polygons: readonly Polygon[]): number {
  const rings = polygons.flatMap(({ outer, holes }) => [outer, ...holes]);
  return rings.reduce((sum, one) => sum + doubledArea(one) / 2 / INCH ** 2, 0);
}

const square = ring([
  [0, 0],
  [40, 0],
  [40, 40],
  [0, 40],
]);

describe('inset', () => {
  test('two 40 × 40 squares joined by a neck 3 wide, inset by 2: two squares of 36, 2,592 in all', () => {
    const joined = ring([
      [0, 0],
      [40, 0],
      [40, 18],
      [60, 18],
      [60, 0],
      [100, 0],
      [100, 40],
      [60, 40],
      [60, 21],
      [40, 21],
      [40, 40],
      [0, 40],
    ]);
    const inset = insetPolygons([{ outer: joined, holes: [] }], 2 * INCH);
    expect(inset).toHaveLength(2);
    expect(squareInches(inset)).toBe(2592);
  });

  test('holes grow', () => {
    const hole = ring([
      [10, 10],
      [10, 20],
      [20, 20],
      [20, 10],
    ]);
    const inset = insetPolygons([{ outer: square, holes: [hole] }], 2 * INCH);
    expect(squareInches(inset)).toBe(36 * 36 - 14 * 14);
    expect(doubledArea(inset[0]!.holes[0]!)).toBeLessThan(0);
  });

  test('by more than half the width leaves nothing', () => {
    expect(insetPolygons([{ outer: square, holes: [] }], 21 * INCH)).toEqual([]);
    expect(insetPolygons([], INCH)).toEqual([]);
  });

  test('by nothing changes nothing, wherever it lies', () => {
    const far = square.map(({ x, y }) => ({ x: x + 12_345_678, y: y - 7 }));
    const [same] = insetPolygons([{ outer: far, holes: [] }], 0);
    expect(doubledArea(same!.outer)).toBe(doubledArea(far));
    expect(new Set(same!.outer.map(({ x, y }) => `${x} ${y}`))).toEqual(
      new Set(far.map(({ x, y }) => `${x} ${y}`)),
    );
  });

  test('outward, a sharp corner is cut off at twice the distance', () => {
    const needle = ring([
      [0, 0],
      [100, 0],
      [100, 4],
    ]);
    const [grown] = insetPolygons([{ outer: needle, holes: [] }], -INCH);
    const leftmost = Math.min(...grown!.outer.map(({ x }) => x));
    expect(leftmost).toBeGreaterThanOrEqual(-2 * INCH);
    expect(leftmost).toBeLessThan(0);
  });
});
