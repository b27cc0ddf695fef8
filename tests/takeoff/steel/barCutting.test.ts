import { beforeAll, expect, test } from 'vitest';
import { checkPlan } from '../../../src/takeoff/boards/checkPlan.ts';
import { searchPlan } from '../../../src/takeoff/boards/searchPlan.ts';
import { loadSolver } from '../../../src/takeoff/solver/highs.ts';
import type { Solver } from '../../../src/takeoff/solver/mip.ts';
import { cutBars, lappedLengths } from '../../../src/takeoff/steel/barCutting.ts';

const STOCK = { size: '#4', length: 20, lap: 2 } as const;

function cut(lines: readonly number[], stock: Parameters<typeof cutBars>[1] = STOCK) {
  const cuts = cutBars(lines, stock, undefined)!;
  const bars = cuts.plan.boards.map(({ pieces, left }) => ({
    pieces: pieces.map(({ length }) => length),
    left,
  }));
  return { ...cuts, bars };
}

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

test.each([
  [20, [20]],
  [21, [20, 3]],
  [38, [20, 20]],
  [38.5, [20, 20, 2.5]],
])('a line of %f ft of 20 ft bars lapped 2 ft: %j', (line, lengths) => {
  expect(lappedLengths(line, 20, 2)).toEqual(lengths);
});

test('short lengths come out of one bar; the least is by length, laps counted', () => {
  expect(cut([12, 8, 10, 10])).toMatchObject({
    bars: [
      { pieces: [12, 8], left: 0 },
      { pieces: [10, 10], left: 0 },
    ],
    least: 2,
    laps: 0,
  });
  // 30 ft in two: 20 and 12; the 8 that is left takes the 7.
  expect(cut([30, 7])).toMatchObject({
    bars: [{ pieces: [20] }, { pieces: [12, 7], left: 1 }],
    least: 2,
    laps: 1,
  });
});

test('lines in another order are the same question', () => {
  expect(cut([12, 8, 30]).key).toBe(cut([30, 12, 8]).key);
  expect(cut([12, 8, 30]).key).not.toBe(cut([30, 12, 9]).key);
});

test('a price makes it a sum of money', () => {
  const { problem, plan } = cut([12, 12, 12], { ...STOCK, price: 650 });
  expect(problem.pricedBy).toBe('money');
  expect(plan.cost.price).toBe(3 * 650);
});

test('never fewer bars than the length takes, and every length is cut once', () => {
  let state = 7;
  const draw = () => {
    state = (state * 16_807) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  for (let i = 0; i < 300; i++) {
    const lines = Array.from({ length: 1 + Math.floor(draw() * 20) }, () =>
      Math.ceil(draw() * 900),
    );
    const { bars, least, laps, problem, plan } = cut(lines, { size: '#4', length: 240, lap: 24 });
    expect(checkPlan(problem, plan)).toEqual([]);
    expect(bars.length).toBeGreaterThanOrEqual(least);
    const pieces = bars.flatMap((bar) => bar.pieces);
    const laid = lines.reduce((sum, line) => sum + line, 0);
    expect(pieces.reduce((sum, piece) => sum + piece, 0)).toBe(laid + laps * 24);
  }
});

test('the search finds what the quick answer misses, and proves it; its answer is for these lines alone', () => {
  // Out of four bars cut three ways each, to the end.
  const lines = [7, 10, 3, 5, 7, 8, 8, 2, 10, 2, 9, 9];
  const quick = cut(lines);
  expect(quick.least).toBe(4);
  expect(quick.plan.boards).toHaveLength(5);
  const found = searchPlan(quick.problem, solver, { seconds: 20, clock: () => 0 });
  if (!('plan' in found)) throw new Error('a plan');
  expect(found.plan.proof.is).toBe('proved');
  expect(found.plan.boards).toHaveLength(4);
  const searched = { key: quick.key, plan: found.plan };
  expect(cutBars(lines, STOCK, searched)!.plan).toBe(found.plan);
  expect(cutBars([...lines, 3], STOCK, searched)!.plan).not.toBe(found.plan);
});
