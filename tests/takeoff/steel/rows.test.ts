import { describe, expect, test } from 'vitest';
import type { Polygon } from '../../../src/geometry/point.ts';
import { rowCount, rowStarts, stripsIn, turned } from '../../../src/takeoff/steel/rows.ts';

/** Small numbers: sheets 50 wide, lapped 10. */
const WIDE = 50;
const LAP = 10;

function polygon(outer: readonly (readonly number[])[], ...holes: readonly number[][][]): Polygon {
  const ring = (places: readonly (readonly number[])[]) =>
    places.map(([x, y]) => ({ x: x!, y: y! }));
  return { outer: ring(outer), holes: holes.map(ring) };
}

function strips(shape: Polygon, angle = 0) {
  const size = { width: WIDE, lap: LAP, leastPiece: 1, closeness: 1 };
  const frame = turned(shape, angle);
  return stripsIn(frame, rowStarts(frame, size), size).map(({ row, from, to, bottom, width }) => [
    row,
    Math.round(from),
    Math.round(to),
    Math.round(bottom),
    Math.round(width),
  ]);
}

const rectangle = polygon([
  [0, 0],
  [200, 0],
  [200, 90],
  [0, 90],
]);

describe('rows', () => {
  test.each([
    [50, 1],
    [51, 1],
    [52, 2],
    [90, 2],
    [91, 2],
    [92, 3],
  ])('%i across: %i (what is short by 1 is close enough)', (across, rows) => {
    expect(rowCount(across, WIDE, LAP, 1)).toBe(rows);
  });

  test('cover a rectangle, the last as wide as what is left', () => {
    expect(strips(rectangle)).toEqual([
      [0, 0, 200, 0, 50],
      [1, 0, 200, 40, 50],
    ]);
    // Across it: 200 − 10 over 40 is 5 rows, u running up and v to the left.
    expect(strips(rectangle, Math.PI / 2).map(([, from, to]) => to! - from!)).toEqual([
      90, 90, 90, 90, 90,
    ]);
  });

  //  +----+
  //  |    |         the upper row needs no more than the upper part
  //  |    +----+
  //  +---------+
  test('are cut to what the shape needs beyond the row before', () => {
    const ell = polygon([
      [0, 0],
      [200, 0],
      [200, 45],
      [80, 45],
      [80, 90],
      [0, 90],
    ]);
    expect(strips(ell)).toEqual([
      [0, 0, 200, 0, 50],
      [1, 0, 80, 40, 50],
    ]);
  });

  test('come in two where the shape does', () => {
    const u = polygon([
      [0, 0],
      [200, 0],
      [200, 90],
      [150, 90],
      [150, 40],
      [50, 40],
      [50, 90],
      [0, 90],
    ]);
    expect(strips(u)).toEqual([
      [0, 0, 200, 0, 50],
      [1, 0, 50, 40, 50],
      [1, 150, 200, 40, 50],
    ]);
  });

  test('go through past a hole, but not where it takes the whole row', () => {
    const small = polygon(
      [...rectangle.outer.map(({ x, y }) => [x, y])],
      [
        [90, 20],
        [90, 30],
        [110, 30],
        [110, 20],
      ],
    );
    expect(strips(small)[0]).toEqual([0, 0, 200, 0, 50]);
    const tall = polygon(
      [
        [0, 0],
        [200, 0],
        [200, 130],
        [0, 130],
      ],
      [
        [80, 45],
        [80, 95],
        [120, 95],
        [120, 45],
      ],
    );
    // The middle row covers 40 to 90; beyond the first one's 50 the hole takes it all.
    expect(strips(tall).filter(([row]) => row === 1)).toEqual([
      [1, 0, 80, 40, 50],
      [1, 120, 200, 40, 50],
    ]);
  });

  test('span a slanting shape at its widest within the row', () => {
    const triangle = polygon([
      [0, 0],
      [90, 0],
      [0, 90],
    ]);
    const [low, high] = strips(triangle);
    expect(low!.slice(1, 3)).toEqual([0, 89]);
    // Above 51 the triangle is 39 wide.
    expect(high!.slice(1, 3)).toEqual([0, 39]);
  });
});
