import { describe, expect, test } from 'vitest';
import { cutStrips, sheetsAlong } from '../../../src/takeoff/steel/cutting.ts';
import { FOOT } from '../../../src/units/grid.ts';

const SHEET = 10 * FOOT;
const LAP = FOOT;

function cut(...feet: readonly number[]) {
  const strips = feet.map((long, row) => ({
    row,
    from: 0,
    to: long * FOOT,
    bottom: 0,
    width: 5 * FOOT,
  }));
  return cutStrips(strips, SHEET, LAP, 508);
}

test.each([
  [10, 1],
  [10.1, 2],
  [19, 2],
  [19.1, 3],
  [28, 3],
])('a strip of %f ft is %i sheets of 10 lapped by 1', (feet, count) => {
  expect(sheetsAlong(feet * FOOT, SHEET, LAP, 508)).toBe(count);
});

describe('cutting', () => {
  test('strips of whole sheets leave nothing', () => {
    const { sheets, pieces } = cut(19, 10);
    expect(sheets).toBe(3);
    expect(pieces.map(({ length }) => length / FOOT)).toEqual([10, 10, 10]);
  });

  test('an offcut serves another strip', () => {
    // 13 ft is a sheet and 4 ft; the 4 and the 6 come out of one sheet.
    expect(cut(13, 6).sheets).toBe(2);
    // 13 and 7.5: 4 and 7.5 don't.
    expect(cut(13, 7.5).sheets).toBe(3);
  });

  test('the shortest offcut that holds a piece is taken, so that longer ones are left', () => {
    // Offcuts of 3.2 and 4.2 ft: the 3 comes out of the first, both 2.1 out of the second.
    expect(cut(6.8, 5.8, 3, 2.1, 2.1).sheets).toBe(2);
  });

  test('an offcut under two feet isn’t carried', () => {
    expect(cut(8.5, 1.5).sheets).toBe(2);
    expect(cut(8, 1.5).sheets).toBe(1);
  });

  test('each piece fits its sheet, and pieces of one sheet fit it together', () => {
    const { pieces } = cut(3.3, 4.4, 5.5, 6.6, 7.7, 8.8, 9.9, 11.1, 12.2, 23.4, 2.1, 2.2);
    const used = new Map<number, number>();
    for (const { sheet, length } of pieces) used.set(sheet, (used.get(sheet) ?? 0) + length);
    for (const length of used.values()) expect(length).toBeLessThanOrEqual(SHEET + 1e-6);
  });

  test('pieces of a strip reach its end, each lapped on the one before', () => {
    const { pieces } = cut(23.4);
    const inOrder = [...pieces].sort((a, b) => a.offset - b.offset);
    expect(inOrder.map(({ offset }) => offset / FOOT)).toEqual([0, 9, 18]);
    const last = inOrder.at(-1)!;
    expect((last.offset + last.length) / FOOT).toBeCloseTo(23.4, 9);
  });
});
