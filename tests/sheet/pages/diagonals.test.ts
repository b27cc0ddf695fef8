import { expect, test } from 'vitest';
import { diagonalsOf } from '../../../src/drawing/dimension/diagonals.ts';
import { loopsToMeasure } from '../../../src/drawing/dimensions.ts';
import type { Job } from '../../../src/job/job.ts';
import { padLayouts } from '../../../src/sheet/pages/padLayouts.ts';
import { tiesTable } from '../../../src/takeoff/layout/figures.ts';
import { axesAlong } from '../../../src/takeoff/layout/printedAcross.ts';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import type { Takeoff } from '../../../src/takeoff/result.ts';
import { formatLength } from '../../../src/units/length.ts';
import { randomPadJob } from '../../drawing/randomPads.ts';

const UNITS = ['feet-inches', 'metric', 'decimal-feet'] as const;

/** Diagonals of the plan and of the table of ties that end at the same two corners: what each of them says. */
function bothSay(job: Job): readonly (readonly [string, string])[] {
  const { pour } = netPour(job);
  const takeoff = { notes: [], ...(pour ? { pour } : {}) } as unknown as Takeoff;
  const diagonals = loopsToMeasure(job, takeoff)
    .filter(({ hole }) => !hole)
    .flatMap((loop) => diagonalsOf(loop, axesAlong(loop.sides), job.units));
  return padLayouts(job, takeoff, {}).flatMap(({ layout: { ties } }) => {
    const { rows } = tiesTable(ties);
    return ties.flatMap(({ from, to }, i) => {
      const same = diagonals.find(
        (one) =>
          (isAt(one.from, from.at) && isAt(one.to, to.at)) ||
          (isAt(one.from, to.at) && isAt(one.to, from.at)),
      );
      const printed = rows[i]![1]!;
      if (!same || printed.of !== 'length') return [];
      const said = [same.length, printed.grid].map((one) => formatLength(one, job.units));
      return [[said[0]!, said[1]!] as const];
    });
  });
}

function isAt(one: { x: number; y: number }, other: { x: number; y: number }): boolean {
  return one.x === other.x && one.y === other.y;
}

test('a diagonal in the table of ties is the one on the plan, whatever the shape, turned or cut', () => {
  let found = 0;
  for (let seed = 0; seed < 240; seed++) {
    const job: Job = { ...randomPadJob(seed), units: UNITS[seed % 3]! };
    for (const [plan, table] of bothSay(job)) {
      found++;
      expect(table, `pad ${seed}`).toBe(plan);
    }
  }
  expect(found).toBeGreaterThan(50);
});
