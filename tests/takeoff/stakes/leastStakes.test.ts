import { describe, expect, test } from 'vitest';
import {
  leastStakes,
  type Staking,
  type Stretch,
} from '../../../src/takeoff/stakes/leastStakes.ts';
import { HALF_STAKE, stakePlaces } from '../../../src/takeoff/stakes/rules.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { type Chance, chance } from '../../random/chance.ts';

/** All lengths of the random runs are whole numbers of these, so the least is found among places on half of one. */
const PART = HALF_STAKE;
const STEP = PART / 2;
const WORST = 1_000;

function randomRun(luck: Chance): { staking: Staking; clear: readonly Stretch[] } {
  const parts = luck.whole(1, 60);
  const staking = {
    length: parts * PART,
    spacing: luck.whole(2, 14) * PART,
    fromEnd: luck.whole(0, 8) * PART,
    closeness: luck.likely(0.2) ? STEP : 0,
  };
  const clear: Stretch[] = [];
  for (let at = luck.whole(0, 10); at <= parts; at += luck.whole(1, luck.oneOf([3, 8, 25]))) {
    const to = Math.min(parts, at + luck.whole(0, luck.oneOf([1, 6, 20])));
    clear.push({ from: at * PART, to: to * PART });
    at = to;
  }
  return { staking, clear };
}

const isClear = (clear: readonly Stretch[], place: number) =>
  clear.some(({ from, to }) => from <= place && place <= to);

/** Where supports may stand at all, and how near an end the first and last must be: the rule, worked by itself. */
function limits({ length, fromEnd, closeness }: Staking) {
  const zone = Math.min(fromEnd, Math.max(0, Math.floor(length / 2 - HALF_STAKE)));
  return {
    edge: Math.min(HALF_STAKE, zone),
    first: zone,
    last: Math.max(length - zone - closeness, zone + 1),
  };
}

/** The least by trying every place after every other: blocked ones first, then all of them. */
function exactLeast(staking: Staking, clear: readonly Stretch[]): number {
  const { length, spacing, fromEnd } = staking;
  const { edge, first, last } = limits(staking);
  const places: number[] = [];
  for (let at = 0; at <= length; at += STEP) if (at >= edge && at <= length - edge) places.push(at);
  const cost = places.map((place) => (isClear(clear, place) ? 1 : WORST + 1));
  if (length <= fromEnd) return Math.min(...cost);
  const best = places.map((place, i) => (place <= first ? cost[i]! : Number.POSITIVE_INFINITY));
  for (let i = 0; i < places.length; i++) {
    for (let j = 0; j < i; j++) {
      if (places[i]! - places[j]! > spacing) continue;
      best[i] = Math.min(best[i]!, best[j]! + cost[i]!);
    }
  }
  return Math.min(...best.filter((_, i) => places[i]! >= last));
}

describe('the fewest stakes', () => {
  test('are as few as an exact solver finds, keep every rule, on 6000 random runs', () => {
    const luck = chance(31);
    let blockedRuns = 0;
    for (let n = 0; n < 6_000; n++) {
      const { staking, clear } = randomRun(luck);
      const found = leastStakes(staking, clear);
      const told = `${n}: ${JSON.stringify({ staking, clear, found })}`;
      const blocked = found.filter((support) => support.blocked).length;
      if (blocked > 0) blockedRuns++;
      expect(WORST * blocked + found.length, told).toBe(exactLeast(staking, clear));
      const along = found.map((support) => support.along);
      for (const support of found) {
        expect(isClear(clear, support.along), told).toBe(!support.blocked);
        expect(Number.isInteger(support.along), told).toBe(true);
      }
      const { edge, first, last } = limits(staking);
      expect(along[0]!, told).toBeGreaterThanOrEqual(edge);
      expect(along.at(-1)!, told).toBeLessThanOrEqual(staking.length - edge);
      if (staking.length <= staking.fromEnd) continue;
      expect(along[0]!, told).toBeLessThanOrEqual(first);
      expect(along.at(-1)!, told).toBeGreaterThanOrEqual(last);
      for (let i = 1; i < along.length; i++) {
        expect(along[i]! - along[i - 1]!, told).toBeGreaterThan(0);
        expect(along[i]! - along[i - 1]!, told).toBeLessThanOrEqual(staking.spacing);
      }
    }
    expect(blockedRuns).toBeGreaterThan(500);
    expect(blockedRuns).toBeLessThan(5_500);
  });

  const staking = { length: 12 * FOOT, spacing: 3 * FOOT, fromEnd: FOOT, closeness: 0 };
  const feet = (clear: readonly (readonly [number, number])[]) =>
    leastStakes(
      staking,
      clear.map(([from, to]) => ({ from: from * FOOT, to: to * FOOT })),
    ).map(({ along, blocked }) => [along / FOOT, blocked]);

  test('stand evenly where all of the ground is clear', () => {
    const { count, gap } = stakePlaces(staking.length, staking.spacing, staking.fromEnd, 0);
    expect(feet([[0, 12]])).toEqual(
      Array.from({ length: count }, (_, i) => [1 + (i * gap) / FOOT, false]),
    );
  });

  test('are evened out on either side of what is in the way', () => {
    // 3 to 5 taken: the place at 3 1/2 goes to 3, and the rest share what is left of the run.
    expect(
      feet([
        [0, 3],
        [5, 12],
      ]),
    ).toEqual(
      [
        [1, false],
        [3, false],
        [5.666665, false],
        [8.333335, false],
        [11, false],
      ].map(([at, blocked]) => [expect.closeTo(at as number, 4), blocked]),
    );
  });

  test('where none can go for longer than the spacing, one is missing for each that it takes', () => {
    expect(
      feet([
        [0, 2],
        [9, 12],
      ]),
    ).toEqual([
      [1, false],
      [3.5, true],
      [6, true],
      [9, false],
      [11, false],
    ]);
    // The end itself: no clear ground within a foot of it.
    expect(feet([[0, 10]]).at(-1)).toEqual([expect.closeTo(11), true]);
    expect(feet([]).map(([, blocked]) => blocked)).toEqual([true, true, true, true, true]);
  });

  test('a run shorter than the distance from the ends has one, nearest its middle', () => {
    const short = { ...staking, length: 10 * INCH };
    expect(leastStakes(short, [{ from: 6 * INCH, to: 9 * INCH }])).toEqual([
      { along: 6 * INCH, blocked: false },
    ]);
    expect(leastStakes(short, [])).toEqual([{ along: 5 * INCH, blocked: true }]);
  });
});
