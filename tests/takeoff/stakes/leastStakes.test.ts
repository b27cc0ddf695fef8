import { describe, expect, test } from 'vitest';
import {
  leastStakes,
  leastStakesRound,
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

/** The same run with stakes set by hand on any ground, and splices with a stretch on either side of each. */
function withMusts(staking: Staking, luck: Chance): Staking {
  const parts = staking.length / PART;
  const fixed = Array.from(
    { length: luck.oneOf([0, 0, 1, 2, 3]) },
    () => luck.whole(0, parts) * PART,
  );
  const near = Array.from({ length: luck.oneOf([0, 1, 1, 2, 3]) }, () => {
    const splice = luck.whole(0, parts);
    const wide = luck.whole(1, 6);
    return [
      { from: (splice - wide) * PART, to: (splice - 1) * PART },
      { from: (splice + 1) * PART, to: (splice + wide) * PART },
    ];
  }).flat();
  return { ...staking, fixed, near };
}

/** Every stretch that must have a support, cut to the run; those off it left out. */
function mustsOf(staking: Staking): readonly Stretch[] {
  const { near = [], fixed = [], length } = staking;
  const { edge } = limits(staking);
  const to = length - edge;
  return [
    ...near
      .map((one) => ({ from: Math.max(one.from, edge), to: Math.min(one.to, to) }))
      .filter((one) => one.from <= one.to),
    ...fixed.map((place) => {
      const at = Math.min(Math.max(place, edge), to);
      return { from: at, to: at };
    }),
  ];
}

/** What is clear once stakes set by hand are taken as standing. */
function groundOf(staking: Staking, clear: readonly Stretch[]): readonly Stretch[] {
  return [...clear, ...mustsOf({ ...staking, near: [] })];
}

/** The least by trying every place after every other: blocked ones first, then all of them. */
function exactLeast(staking: Staking, clear: readonly Stretch[]): number {
  const { length, spacing, fromEnd } = staking;
  const { edge, first, last } = limits(staking);
  const musts = mustsOf(staking);
  const places: number[] = [];
  for (let at = 0; at <= length; at += STEP) if (at >= edge && at <= length - edge) places.push(at);
  const ground = groundOf(staking, clear);
  const cost = places.map((place) => (isClear(ground, place) ? 1 : WORST + 1));
  const short = length <= fromEnd;
  const best = places.map((place, i) =>
    (short || place <= first) && musts.every(({ to }) => to >= place)
      ? cost[i]!
      : Number.POSITIVE_INFINITY,
  );
  for (let i = 0; i < places.length; i++) {
    for (let j = 0; j < i; j++) {
      if (places[i]! - places[j]! > spacing) continue;
      if (musts.some(({ from, to }) => from > places[j]! && to < places[i]!)) continue;
      best[i] = Math.min(best[i]!, best[j]! + cost[i]!);
    }
  }
  return Math.min(
    ...best.filter(
      (_, i) => (short || places[i]! >= last) && musts.every(({ from }) => from <= places[i]!),
    ),
  );
}

/** As exactLeast, round a run that closes on itself: the best from every place there is. */
function exactRound(
  length: number,
  spacing: number,
  clear: readonly Stretch[],
  fixed: readonly number[],
): number {
  const most = Math.min(spacing, Math.ceil(length / 3));
  const steps = length / STEP;
  const cost = Array.from({ length: steps }, (_, i) =>
    isClear(clear, i * STEP) || fixed.includes(i * STEP) ? 1 : WORST + 1,
  );
  const isSet = (i: number) => fixed.includes((i % steps) * STEP);
  let least = Number.POSITIVE_INFINITY;
  for (let start = 0; start < steps; start++) {
    const best = new Array<number>(steps + 1).fill(Number.POSITIVE_INFINITY);
    best[0] = cost[start]!;
    for (let i = 1; i <= steps; i++) {
      const own = i === steps ? 0 : cost[(start + i) % steps]!;
      for (let j = i - 1; j >= 0 && (i - j) * STEP <= most; j--) {
        best[i] = Math.min(best[i]!, best[j]! + own);
        // Past a place set by hand no gap may reach.
        if (isSet(start + j)) break;
      }
    }
    least = Math.min(least, best[steps]!);
  }
  return least;
}

describe('the fewest stakes', () => {
  /** Whether it is the least, and keeps every rule; gives how many are blocked. */
  function check(staking: Staking, clear: readonly Stretch[], n: number): number {
    const found = leastStakes(staking, clear);
    const told = `${n}: ${JSON.stringify({ staking, clear, found })}`;
    const blocked = found.filter((support) => support.blocked).length;
    expect(WORST * blocked + found.length, told).toBe(exactLeast(staking, clear));
    const along = found.map((support) => support.along);
    const ground = groundOf(staking, clear);
    for (const support of found) {
      expect(isClear(ground, support.along), told).toBe(!support.blocked);
      expect(Number.isInteger(support.along), told).toBe(true);
    }
    const { edge, first, last } = limits(staking);
    expect(along[0]!, told).toBeGreaterThanOrEqual(edge);
    expect(along.at(-1)!, told).toBeLessThanOrEqual(staking.length - edge);
    for (const must of mustsOf(staking)) {
      expect(
        along.some((place) => must.from <= place && place <= must.to),
        told,
      ).toBe(true);
    }
    if (staking.length > staking.fromEnd) {
      expect(along[0]!, told).toBeLessThanOrEqual(first);
      expect(along.at(-1)!, told).toBeGreaterThanOrEqual(last);
    }
    for (let i = 1; i < along.length; i++) {
      expect(along[i]! - along[i - 1]!, told).toBeGreaterThan(0);
      expect(along[i]! - along[i - 1]!, told).toBeLessThanOrEqual(staking.spacing);
    }
    return blocked;
  }

  test('are as few as an exact solver finds, keep every rule, on 4000 random runs', () => {
    const luck = chance(31);
    let blockedRuns = 0;
    for (let n = 0; n < 4_000; n++) {
      const { staking, clear } = randomRun(luck);
      if (check(staking, clear, n) > 0) blockedRuns++;
    }
    expect(blockedRuns).toBeGreaterThan(400);
    expect(blockedRuns).toBeLessThan(3_600);
  });

  test('are as few with stakes set by hand and splices, on 2000 random runs', () => {
    const luck = chance(32);
    let bound = 0;
    for (let n = 0; n < 2_000; n++) {
      const run = randomRun(luck);
      const staking = withMusts(run.staking, luck);
      check(staking, run.clear, n);
      if (leastStakes(staking, run.clear).length > leastStakes(run.staking, run.clear).length)
        bound++;
    }
    // The places that must be held do make it more.
    expect(bound).toBeGreaterThan(300);
  });

  test('round a run that closes on itself are as few, on 400 random runs', () => {
    const luck = chance(33);
    for (let n = 0; n < 400; n++) {
      const length = luck.whole(1, 8) * 3 * PART;
      const spacing = luck.whole(2, 10) * PART;
      const clear: Stretch[] = [];
      for (let at = luck.whole(0, 6); at * PART < length; at += luck.whole(1, 8)) {
        const to = Math.min(length / PART - 1, at + luck.whole(0, 8));
        clear.push({ from: at * PART, to: to * PART });
        at = to;
      }
      const fixed = luck.likely(0.4) ? [luck.whole(0, length / PART - 1) * PART] : [];
      const found = leastStakesRound({ length, spacing, fixed }, clear);
      const told = `${n}: ${JSON.stringify({ length, spacing, clear, fixed, found })}`;
      const blocked = found.filter((support) => support.blocked).length;
      expect(WORST * blocked + found.length, told).toBe(exactRound(length, spacing, clear, fixed));
      for (const place of fixed)
        expect(
          found.map(({ along }) => along),
          told,
        ).toContain(place);
      found.forEach(({ along }, i) => {
        const next = found[i + 1]?.along ?? found[0]!.along + length;
        expect(next - along, told).toBeLessThanOrEqual(Math.min(spacing, Math.ceil(length / 3)));
      });
    }
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
