import { describe, expect, test } from 'vitest';
import type { Point, Polygon, Ring } from '../../../src/geometry/point.ts';
import { firstJoints, searchJoints } from '../../../src/takeoff/joints/layJoints.ts';
import type { JointLine, JointProblem, JointReport } from '../../../src/takeoff/joints/layout.ts';
import { jointReport } from '../../../src/takeoff/joints/panels.ts';
import { FOOT } from '../../../src/units/grid.ts';

function ring(...feet: readonly (readonly [number, number])[]): Ring {
  return feet.map(([x, y]) => ({ x: Math.round(x * FOOT), y: Math.round(y * FOOT) }));
}
function place(x: number, y: number): Point {
  return ring([x, y])[0]!;
}
function problem(outer: Ring, more: Partial<JointProblem> = {}, holes: Polygon['holes'] = []) {
  return {
    polygon: { outer, holes },
    insideCorners: [],
    blockOuts: [],
    oldJoints: [],
    fixed: [],
    rules: { most: 10 * FOOT, ratio: 1.5, least: 2 * FOOT, angle: 60 },
    closeness: 508,
    ...more,
  } satisfies JointProblem;
}
function sizes({ panels }: JointReport): readonly string[] {
  return panels.map(
    ({ length, width }) => `${(length / FOOT).toFixed(1)}x${(width / FOOT).toFixed(1)}`,
  );
}

const ell = ring([0, 0], [12, 0], [12, 6], [8, 6], [8, 10], [0, 10]);
const post = ring([5.75, 4.75], [5.75, 5.25], [6.25, 5.25], [6.25, 4.75]);

describe('the shortest joints that obey', () => {
  test('a slab no larger than a panel has none', () => {
    const { report, proof } = searchJoints(problem(ring([0, 0], [10, 0], [10, 8], [0, 8])));
    expect([report.joints, proof]).toEqual([[], 'proved']);
  });

  test('20 x 12 ft: halves are too wide for their length, so six of 6 ft 8 by 6 ft', () => {
    const { report, proof } = searchJoints(problem(ring([0, 0], [20, 0], [20, 12], [0, 12])));
    // Two across of 12 ft, one along of 20: by hand.
    expect(report.length).toBe(44 * FOOT);
    expect(sizes(report)).toEqual(Array.from({ length: 6 }, () => '6.7x6.0'));
    expect(proof).toBe('proved');
  });

  test('a walk 4 ft wide is cut to one and a half times its width', () => {
    const walk = problem(ring([0, 0], [24, 0], [24, 4], [0, 4]));
    const { report } = searchJoints(walk);
    expect(sizes(report)).toEqual(Array.from({ length: 4 }, () => '6.0x4.0'));
    expect(firstJoints(walk).report.broken).toEqual([]);
  });

  test('an L is cut from its inside corner, the short way', () => {
    const { report, proof } = searchJoints(problem(ell, { insideCorners: [place(8, 6)] }));
    expect(report.length).toBe(6 * FOOT);
    expect(report.joints).toMatchObject([{ from: place(8, 0), to: place(8, 6) }]);
    expect(proof).toBe('proved');
  });

  test('joints come to a post from two sides', () => {
    const spot = { feature: 'p', middle: place(6, 5), corners: post, ring: post };
    const { report } = searchJoints(
      problem(ring([0, 0], [12, 0], [12, 10], [0, 10]), { blockOuts: [spot] }, [post]),
    );
    expect(report.broken).toEqual([]);
    expect(report.length).toBe(21 * FOOT);
  });

  test('an older joint is taken up, though a panel would not need it', () => {
    const slab = ring([0, 0], [10, 0], [10, 7], [0, 7]);
    const { report } = searchJoints(problem(slab, { oldJoints: [place(5, 7)] }));
    expect(report.joints).toMatchObject([{ from: place(5, 0), to: place(5, 7) }]);
  });

  test('joints drawn by hand stay, and what they leave is mended round them', () => {
    const fixed: JointLine[] = [
      { from: place(7, 0), to: place(7, 12), by: 'hand', kind: 'construction' },
    ];
    const { report } = searchJoints(problem(ring([0, 0], [20, 0], [20, 12], [0, 12]), { fixed }));
    expect(report.joints[0]).toBe(fixed[0]);
    expect(report.broken).toEqual([]);
  });

  test('where nothing obeys, what breaks the fewest rules, each named', () => {
    const thin = problem(ring([0, 0], [30, 0], [30, 1], [0, 1]));
    const { report, proof } = searchJoints(thin, { most: 400 });
    expect(proof).toBe('gap');
    expect(new Set(report.broken.map(({ rule }) => rule))).toContain('sliver');
  });
});

describe('rules', () => {
  const square = ring([0, 0], [10, 0], [10, 10], [0, 10]);
  const line = (a: Point, b: Point): JointLine => ({ from: a, to: b, by: 'hand', kind: 'control' });
  const broken = (joints: readonly JointLine[], more: Partial<JointProblem> = {}) =>
    jointReport(problem(square, more), joints).broken.map(({ rule }) => rule);

  test.each([
    ['ends inside', [line(place(5, 0), place(5, 4))], ['ends-inside']],
    ['at 45 degrees', [line(place(0, 5), place(5, 10))], ['sharp', 'sharp']],
    [
      'a T on another joint',
      [line(place(0, 5), place(10, 5)), line(place(5, 0), place(5, 5))],
      ['ends-on-joint', 'ratio'],
    ],
    [
      'two that go on in one line',
      [
        line(place(0, 5), place(10, 5)),
        line(place(5, 0), place(5, 5)),
        line(place(5.5, 10), place(5, 5)),
      ],
      [],
    ],
    [
      'two from one place of the edge, 45 degrees apart',
      [line(place(5, 0), place(5, 10)), line(place(5, 0), place(10, 5))],
      ['ratio', 'ratio', 'sharp', 'sharp', 'sharp'],
    ],
    [
      'the same twice',
      [line(place(5, 0), place(5, 10)), line(place(5, 10), place(5, 0))],
      ['ratio', 'ratio', 'sharp'],
    ],
    ['along the edge', [line(place(0, 0), place(10, 0))], ['sharp', 'sharp']],
    ['a strip of 1 ft', [line(place(1, 0), place(1, 10))], ['ratio', 'sliver']],
    ['square across', [line(place(5, 0), place(5, 10))], ['ratio', 'ratio']],
  ])('%s', (_, joints, rules) => {
    expect(broken(joints).toSorted()).toEqual(rules.toSorted());
  });

  test('an inside corner that no joint comes to', () => {
    const report = jointReport(problem(ell, { insideCorners: [place(8, 6)] }), []);
    expect(report.broken).toMatchObject([
      { rule: 'too-long', found: 12 * FOOT },
      { rule: 'inside-corner', at: place(8, 6) },
    ]);
  });
});
