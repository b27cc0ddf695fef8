import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { USUAL_POUR_DAY } from '../../../src/job/pourDay.ts';
import type { PourEntry, PourLog } from '../../../src/job/pourLog.ts';
import { outlook } from '../../../src/takeoff/pourDay/outlook.ts';
import { progressOf } from '../../../src/takeoff/pourDay/progress.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { CUBIC_FOOT, FOOT } from '../../../src/units/grid.ts';
import { type Chance, chance } from '../../random/chance.ts';
import { batch, front, log, pad } from './pours.ts';

function seen(job: Job, pourLog: PourLog) {
  const found = outlook(job.practices, takeoff(job), pourLog);
  if (!found) throw new Error('the pour is figured');
  return found;
}

describe('what the log comes to', () => {
  const job = pad();
  const mix = takeoff(job).mix!;
  const { mixes } = job.practices.mix;

  test('bags are the sum of the batches; a half bag is an opened bag', () => {
    const entries = [batch(0), batch(5), batch(10, 1.5)];
    const { batches, bags, used, has } = progressOf(log(...entries), mix, mixes);
    expect(batches).toBe(3);
    expect(bags).toEqual([{ mix: 'regular', had: 65, used: 5.5, opened: 6, left: 59 }]);
    expect(used / CUBIC_FOOT).toBeCloseTo(3.3, 9);
    expect(has / CUBIC_FOOT).toBeCloseTo(39, 9);
  });

  test('bags fetched and bags counted at the pad stand in for those of the ticket', () => {
    const more: PourEntry = { is: 'more', at: 0, bags: [{ mix: 'regular', bags: 4 }] };
    const counted = { ...log(more), onHand: [{ mix: 'regular', bags: 50 }] };
    expect(progressOf(counted, mix, mixes).bags[0]?.had).toBe(54);
  });

  test('the pace is that of the last batches, and none of one', () => {
    expect(progressOf(log(batch(3)), mix, mixes).pace).toBeNull();
    // A long wait before them is forgotten: seven batches, five minutes apart.
    const later = Array.from({ length: 7 }, (_, i) => batch(200 + 5 * i));
    const { pace } = progressOf(log(batch(0), ...later), mix, mixes);
    expect((pace! * 60_000) / CUBIC_FOOT).toBeCloseTo(1.2 / 5, 9);
    // Two taps in one moment are no pace.
    expect(progressOf(log(batch(3), batch(3)), mix, mixes).pace).toBeNull();
  });

  test('a mix that the job no longer lists makes nothing that is known', () => {
    const entry: PourEntry = { is: 'batch', at: 0, bags: [{ mix: 'gone', bags: 2 }] };
    const { used, bags } = progressOf(log(entry), mix, mixes);
    expect(used).toBe(0);
    expect(bags.at(-1)).toMatchObject({ mix: 'gone', used: 2 });
  });
});

describe('how it will come out', () => {
  // 35 ft³ net; needed 38.5 ft³ are 64.17 bags of 0.60; 65 at the pad.
  test('before a tap of the front is the plan', () => {
    const { total, placed, plan, has, advice } = seen(pad(), log(batch(0)));
    expect(placed).toBeNull();
    expect(plan.bags).toBeCloseTo(38.5 / 0.6, 6);
    expect(total.expected).toBeCloseTo(plan.bags, 6);
    expect(has).toBeCloseTo(65, 9);
    expect(advice.is).toBe('watch');
  });

  test('half placed with half of the plan in is the plan, surer', () => {
    const half = Array.from({ length: 16 }, (_, i) => batch(5 * i));
    const before = seen(pad(), log());
    const { total, placed, since } = seen(pad(), log(...half, front(80, 6 * FOOT), batch(85)));
    expect(placed).toBeCloseTo(0.5, 12);
    expect(since).toBe(1);
    expect(total.expected).toBeGreaterThan(63);
    expect(total.expected).toBeLessThan(65);
    expect(total.most - total.least).toBeLessThan(before.total.most - before.total.least);
  });

  test('half placed with 40 bags in comes out short, and somebody goes while there is time', () => {
    const batches = Array.from({ length: 20 }, (_, i) => batch(5 * i));
    const { advice, total } = seen(pad(), log(...batches, front(96, 6 * FOOT)));
    expect(total.expected).toBeGreaterThan(68);
    if (advice.is !== 'short') throw new Error('it is short');
    // 25 bags left at 2 bags in 5 min last 62.5 min: a trip of an hour and a margin of 15 min have run out.
    expect(advice.within).toBe(0);
    expect(advice.late).toBeUndefined();
    expect(advice.send).toBeGreaterThanOrEqual(Math.ceil(advice.short));
    expect(advice.send).toBe(Math.ceil(total.most - 65));
  });

  test('tells how long sending can wait, and when it is too late', () => {
    const batches = Array.from({ length: 20 }, (_, i) => batch(5 * i));
    const job = pad();
    const tripped = (tripMinutes: number) => {
      const pourDay = { ...USUAL_POUR_DAY, tripMinutes };
      const changed = { ...job, practices: { ...job.practices, pourDay } };
      return seen(changed, log(...batches, front(96, 6 * FOOT))).advice;
    };
    const soon = tripped(20);
    expect(soon.is === 'short' && soon.within).toBeCloseTo(62.5 - 20 - 15, 6);
    const far = tripped(90);
    expect(far.is === 'short' && far.within).toBe(0);
    expect(far.is === 'short' && far.late).toBeCloseTo(90 - 62.5, 6);
  });

  test('all placed is what went in', () => {
    const batches = Array.from({ length: 30 }, (_, i) => batch(5 * i));
    const { total, advice } = seen(pad(), log(...batches, front(150, 12 * FOOT)));
    expect(total.expected).toBeCloseTo(60, 9);
    expect([total.least, total.most]).toEqual([total.expected, total.expected]);
    expect(advice.is === 'enough' && advice.left).toBeCloseTo(5, 9);
  });

  test('expects what is commonly lost, and not what is bought to be safe', () => {
    const job = pad();
    const { practices } = job;
    const waste = { ...practices.waste, by: 'parts' as const };
    const { plan, forecast } = seen({ ...job, practices: { ...practices, waste } }, log());
    // 35 ft³ and 2 % spilled; a quarter inch of spread is 2.5 ft³ of one standard deviation.
    expect(plan.bags).toBeCloseTo((35 * 1.02) / 0.6, 4);
    expect(forecast.deviation).toBeGreaterThan((1.02 * 0.25) / 3.5);
  });

  test('is nothing while the pour isn’t figured', () => {
    const job = pad();
    expect(outlook(job.practices, { ...takeoff({ ...job, features: [] }) }, log())).toBeUndefined();
  });
});

/** A standard normal, by the polar way of Box and Muller. */
function normal({ share }: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share());
}

test('pours over random ground come out in the band as often as it says, and ever nearer', () => {
  const luck = chance(17);
  const job = pad();
  const figured = takeoff(job);
  const { pourDay: _, ...practices } = job.practices;
  const stops = [3, 6, 9, 11];
  const inside = stops.map(() => 0);
  const off = stops.map(() => 0);
  const POURS = 400;
  for (let pour = 0; pour < POURS; pour++) {
    // Depth of each patch of 2 by 2 ft, in inches, and a tenth spilt or stuck to the drum.
    const lower = 0.25 * normal(luck);
    const columns = Array.from({ length: 6 }, () => {
      const patches = Array.from({ length: 5 }, () => 3.5 + lower + 0.5 * normal(luck));
      return 1.1 * patches.reduce((sum, depth) => sum + depth, 0) * 4 * (1 / 12);
    });
    const volumeTo = (feet: number) =>
      columns.reduce((sum, column, i) => sum + column * Math.min(1, Math.max(0, feet / 2 - i)), 0);
    const truth = volumeTo(12) / 0.6;
    const entries: PourEntry[] = [];
    let bags = 0;
    stops.forEach((stop, i) => {
      for (; bags < volumeTo(stop) / 0.6 - 0.25; bags += 0.5) entries.push(batch(bags, 0.5));
      // Tapped half a foot off, more or less.
      entries.push(front(bags, Math.round((stop + 0.5 * normal(luck)) * FOOT)));
      const { total } = outlook(practices, figured, log(...entries))!;
      if (truth >= total.least && truth <= total.most) inside[i]! += 1;
      off[i]! += Math.abs(total.expected - truth);
    });
  }
  for (const count of inside) {
    expect(count / POURS).toBeGreaterThan(0.73);
    expect(count / POURS).toBeLessThan(0.88);
  }
  const mean = off.map((sum) => sum / POURS);
  expect(mean).toEqual(mean.toSorted((a, b) => b - a));
  // In bags, with 11 of 12 ft placed.
  expect(mean.at(-1)!).toBeLessThan(2);
});
