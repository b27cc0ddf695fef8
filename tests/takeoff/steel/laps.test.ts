import { describe, expect, test } from 'vitest';
import { lapsOf, sidesOf } from '../../../src/takeoff/steel/laps.ts';
import type { MeshPiece, MeshPlan } from '../../../src/takeoff/steel/plan.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { randomPadJob } from '../../drawing/randomPads.ts';
import { slab } from './steelJobs.ts';

function planOf(
  angle: number,
  ...sizes: readonly (readonly [x: number, y: number, length: number, width: number])[]
): MeshPlan {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const pieces = sizes.map(
    ([x, y, length, width], i): MeshPiece => ({
      mark: i + 1,
      row: i,
      corner: {
        x: Math.round((x * cos - y * sin) * FOOT),
        y: Math.round((x * sin + y * cos) * FOOT),
      },
      angle,
      length: length * FOOT,
      width: width * FOOT,
      used: 0,
      cutAt: { x: 0, y: 0, turned: false },
    }),
  );
  const { plan } = takeoff(slab(8, 4)).steel!.mesh!;
  return { ...plan, angle, pieces };
}

const lengthOf = ({ from, to }: { from: { x: number; y: number }; to: { x: number; y: number } }) =>
  Math.hypot(to.x - from.x, to.y - from.y) / FOOT;

describe.each([0, 0.4, Math.PI / 2])('laps, rows at %f', (angle) => {
  // Two side by side lapped 1 ft over 5 ft, one above both lapped half a foot.
  const plan = planOf(angle, [0, 0, 10, 5], [9, 0, 6, 5], [0, 4.5, 15, 5]);

  test('each two pieces that lie over each other, how far and how long', () => {
    const found = lapsOf(plan).map(({ between, lap, length }) => [
      ...between,
      Math.round((lap / INCH) * 10) / 10,
      Math.round((length / FOOT) * 100) / 100,
    ]);
    expect(found).toEqual([
      [1, 2, 12, 5],
      [1, 3, 6, 10],
      [2, 3, 6, 6],
    ]);
  });

  test('what a later piece covers of a side is hidden, the rest is seen; together they are the whole', () => {
    const sides = sidesOf(plan);
    const sum = (i: number, hidden: boolean) =>
      sides[i]!.filter((side) => side.hidden === hidden).reduce(
        (all, one) => all + lengthOf(one),
        0,
      );
    // Of the first: its end under the second (5 ft, and 1 ft of its lower... and upper side), its top under the third.
    expect(sum(0, true) + sum(0, false)).toBeCloseTo(30, 3);
    // 5 ft of its end, 10 ft of its top; half a foot of its start lies along the third's own start, so it isn't under it.
    expect(sum(0, true)).toBeCloseTo(15, 3);
    // The top of the second, and half a foot of its start; its end lies along the third's own end.
    expect(sum(1, true)).toBeCloseTo(6.5, 3);
    expect(sum(2, true)).toBe(0);
  });
});

test('on random pads every lap is at least the rule, and no side is lost', () => {
  let laps = 0;
  for (let seed = 0; seed < 120; seed++) {
    const { mesh } = takeoff(randomPadJob(seed)).steel ?? {};
    if (!mesh) continue;
    const { plan } = mesh;
    const sides = sidesOf(plan);
    plan.pieces.forEach(({ length, width }, i) => {
      const all = sides[i]!.reduce((sum, one) => sum + lengthOf(one), 0);
      expect(all, `pad ${seed}`).toBeCloseTo((2 * (length + width)) / FOOT, 2);
    });
    laps += lapsOf(plan).length;
  }
  expect(laps).toBeGreaterThan(200);
});
