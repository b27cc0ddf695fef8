import { expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import { firstJoints, searchJoints } from '../../../src/takeoff/joints/layJoints.ts';
import { jointKey } from '../../../src/takeoff/joints/layout.ts';
import { jointProblems } from '../../../src/takeoff/joints/problem.ts';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../../src/takeoff/pourPolygons.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';

const wishes = {
  fixed: [],
  oldJoints: [],
  rules: { most: 10 * FOOT, ratio: 1.5, least: 2 * FOOT, angle: 60 },
  closeness: 508,
};

test('the sample: five inside corners (stoop, step of the front edge, broken patio), post and clean-out', () => {
  const pour = netPour(demoJob()).pour!;
  const [problem] = jointProblems(pour, pourPolygons(pour, 508), wishes);
  expect(problem!.insideCorners.length).toBe(5);
  expect(problem!.insideCorners).toContainEqual({ x: 120.5 * INCH, y: 0 });
  expect(problem!.blockOuts.map(({ feature }) => feature).toSorted()).toEqual(['f50', 'f51']);
  expect(problem!.blockOuts[0]!.middle).toEqual({ x: 36.25 * INCH, y: 40.5 * INCH });
  expect(jointKey(problem!)).toBe(jointKey({ ...problem! }));
});

test('an older joint counts where it comes to the edge of the pour, and nowhere else', () => {
  const pour = netPour(demoJob()).pour!;
  const on = { x: 60 * INCH, y: 0 };
  const off = { x: 60 * INCH, y: 60 * INCH };
  const [problem] = jointProblems(pour, pourPolygons(pour, 508), {
    ...wishes,
    oldJoints: [on, off],
  });
  expect(problem!.oldJoints).toEqual([on]);
});

test('panels of a layout come to the whole pour', () => {
  const pour = netPour(demoJob()).pour!;
  const polygons = pourPolygons(pour, 508);
  const [problem] = jointProblems(pour, polygons, wishes);
  const { panels } = firstJoints(problem!).report;
  const sum = panels.reduce((all, { area }) => all + area, 0);
  expect(panels.length).toBeGreaterThan(1);
  // But for arcs taken as chords and places rounded to the grid: a thousandth.
  expect(Math.abs(sum / pour.area - 1)).toBeLessThan(1e-3);
});

test('of a joint drawn by hand counts what lies in the pour, though neither end is on its edge', () => {
  const pour = netPour(demoJob()).pour!;
  const joint = (x: number, from: number, to: number) => ({
    from: { x: x * INCH, y: from * INCH },
    to: { x: x * INCH, y: to * INCH },
    by: 'hand' as const,
    kind: 'control' as const,
  });
  const inside = joint(80, 20, 60);
  const over = joint(80, -48, 100);
  const beside = joint(-90, 0, 60);
  const [problem] = jointProblems(pour, pourPolygons(pour, 508), {
    ...wishes,
    fixed: [inside, over, beside],
  });
  // From the front edge to the stoop.
  expect(problem!.fixed).toEqual([inside, joint(80, 0, 84.6875)]);
});

test('the sample: joints at every corner, post and clean-out, no sliver, and proved least', () => {
  const pour = netPour(demoJob()).pour!;
  const [problem] = jointProblems(pour, pourPolygons(pour, 508), {
    ...wishes,
    rules: { ...wishes.rules, most: 8.75 * FOOT },
  });
  const { report, proof } = searchJoints(problem!);
  expect(report.broken).toEqual([]);
  expect(proof).toBe('proved');
  // From the stoop's corner to the step of the front edge, as anyone would lay it.
  const ends = report.joints.map(({ from, to }) => [from, to]);
  expect(ends).toContainEqual(
    expect.arrayContaining([
      { x: 120.5 * INCH, y: 0 },
      { x: 108.1875 * INCH, y: 84.6875 * INCH },
    ]),
  );
});
