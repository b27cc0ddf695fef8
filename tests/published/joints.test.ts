import { expect, test } from 'vitest';
import { searchJoints } from '../../src/takeoff/joints/layJoints.ts';
import { panelMost } from '../../src/takeoff/joints/rules.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { reference } from '../references/references.ts';

const CAP = 18 * FOOT;

function feet(inches: number, factor: number, cap = CAP): number {
  return panelMost(inches * INCH, factor, cap) / FOOT;
}

test.each([
  [4, 8, 10, 12],
  [5, 10, 13, 15],
  [6, 12, 15, 18],
])('%i in: %i, %i, %i ft by stone and slump', (inches, small, large, stiff) => {
  reference('joint-spacing-table');
  expect(feet(inches, 24)).toBe(small);
  // 5 in at 30 is 12 1/2 ft, which the table shows as 13.
  expect(Math.round(feet(inches, 30))).toBe(large);
  expect(feet(inches, 36)).toBe(stiff);
});

test('8 to 12 ft for 4 in, and 18 ft whatever the thickness', () => {
  reference('joint-spacing-concrete-code');
  expect([feet(4, 24), feet(4, 36)]).toEqual([8, 12]);
  expect([feet(8, 36), feet(12, 24)]).toEqual([18, 18]);
  // In feet: a study page that turns the same rule into 12 to 18 in is wrong by twelve.
  expect([feet(6, 24), feet(6, 36)]).toEqual([12, 18]);
});

test.each([
  [4, 10],
  [5, 12],
  [6, 15],
])('an association: %i in, %i ft, thirty times to the foot below', (inches, published) => {
  reference('joint-spacing-association');
  expect(Math.floor(feet(inches, 30))).toBe(published);
});

test.each([
  [3, 8, 12],
  [4, 10, 12],
  [5, 12, 12],
  [6, 12, 12],
  [4, 5, 5],
])('another: %i in, %i ft, with a cap of %i', (inches, published, cap) => {
  reference('joint-spacing-regional');
  // 3 in at 30 is 7 1/2 ft, shown as 8.
  expect(Math.round(feet(inches, 30, cap * FOOT))).toBe(published);
});

test('a drive 12 ft wide and 3 1/2 in thick needs a joint down its middle', () => {
  reference('joint-spacing-regional');
  const place = (x: number, y: number) => ({ x: x * FOOT, y: y * FOOT });
  const { report } = searchJoints({
    polygon: { outer: [place(0, 0), place(24, 0), place(24, 12), place(0, 12)], holes: [] },
    insideCorners: [],
    blockOuts: [],
    oldJoints: [],
    fixed: [],
    rules: { most: panelMost(3.5 * INCH, 30, CAP), ratio: 1.5, least: 2 * FOOT, angle: 60 },
    closeness: 508,
  });
  expect(report.broken).toEqual([]);
  expect(report.joints).toContainEqual(
    expect.objectContaining({ from: place(0, 6), to: place(24, 6) }),
  );
});
