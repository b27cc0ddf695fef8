import { beforeAll, describe, expect, test } from 'vitest';
import { checkPlan } from '../../../src/takeoff/boards/checkPlan.ts';
import { firstPlan } from '../../../src/takeoff/boards/firstPlan.ts';
import { groupBound } from '../../../src/takeoff/boards/groupBound.ts';
import type { BoardPlan, BoardProblem } from '../../../src/takeoff/boards/plan.ts';
import { searchPlan } from '../../../src/takeoff/boards/searchPlan.ts';
import { compareCosts } from '../../../src/takeoff/boards/writePlan.ts';
import { reachOf } from '../../../src/takeoff/boards/yardCounts.ts';
import { loadSolver } from '../../../src/takeoff/solver/highs.ts';
import type { Solver } from '../../../src/takeoff/solver/mip.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { chance } from '../../random/chance.ts';
import { bestOfEveryPlan } from './everyPlan.ts';
import { byChance, demand, PATIO, problem, TINY, truck, yard } from './problems.ts';

const KERF = INCH / 8;
let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

function search(asked: BoardProblem, seconds = 60, onBetter?: (plan: BoardPlan) => void) {
  const clock = () => performance.now() / 1000;
  return searchPlan(asked, solver, { seconds, clock, ...(onBetter ? { onBetter } : {}) });
}

function planOf(asked: BoardProblem): BoardPlan {
  const found = search(asked);
  if ('none' in found) throw new Error(`No plan: ${JSON.stringify(found.none)}`);
  expect(checkPlan(asked, found.plan)).toEqual([]);
  expect(found.plan.proof.is).toBe('proved');
  return found.plan;
}

describe('the searched plan', () => {
  test('kerf: two 48 in pieces come out of 96 1/8 in, not out of 96 in', () => {
    const runs = [demand('r1', 48 * INCH), demand('r2', 48 * INCH)];
    const of = (length: number) => problem(runs, [yard('y', length, 500)], { kerf: KERF });
    expect(planOf(of(96 * INCH + KERF)).cost).toMatchObject({ price: 500, cuts: 1 });
    expect(planOf(of(96 * INCH)).cost).toMatchObject({ price: 1000, cuts: 2 });
  });

  test('price goes before cuts', () => {
    // Two 8 ft boards need no cut; one 16 ft board cut in two is cheaper.
    const runs = [demand('r1', 8 * FOOT), demand('r2', 8 * FOOT)];
    const stock = [yard('y8', 8 * FOOT, 600), yard('y16', 16 * FOOT, 1100)];
    expect(planOf(problem(runs, stock)).cost).toEqual({
      price: 1100,
      cuts: 1,
      splices: 0,
      waste: 0,
    });
  });

  test('a splice goes before a board bought, and a whole board before a cut', () => {
    const anywhere = [{ from: FOOT, to: 11 * FOOT }];
    const runs = [demand('r', 12 * FOOT, { spliceOn: anywhere, end: 2 * FOOT })];
    const stock = [truck('t6', 6 * FOOT, 2), truck('t7', 7 * FOOT, 1), yard('y', 12 * FOOT, 900)];
    const plan = planOf(problem(runs, stock, { shortest: FOOT, splices: true }));
    expect(plan.cost).toEqual({ price: 0, cuts: 0, splices: 1, waste: 0 });
  });

  test('pieces change places so that the splice falls where stakes stand', () => {
    const runs = [demand('r', 14 * FOOT, { spliceOn: [{ from: 5 * FOOT, to: 6.5 * FOOT }] })];
    const stock = [truck('t8', 8 * FOOT, 1), truck('t6', 6 * FOOT, 1)];
    const plan = planOf(problem(runs, stock, { shortest: FOOT, splices: true }));
    expect(plan.boards.map(({ length, pieces }) => [length, pieces[0]?.from])).toEqual([
      [8 * FOOT, 6 * FOOT],
      [6 * FOOT, 0],
    ]);
  });

  test('where the splice can only fall elsewhere, the boards are cut for it', () => {
    const runs = [demand('r', 14 * FOOT, { spliceOn: [{ from: 7 * FOOT, to: 7 * FOOT }] })];
    const stock = [truck('t8', 8 * FOOT, 2), truck('t6', 6 * FOOT, 1)];
    const plan = planOf(problem(runs, stock, { shortest: FOOT, splices: true }));
    expect(plan.cost).toEqual({ price: 0, cuts: 2, splices: 1, waste: 2 * FOOT });
  });

  test('boards of a price by length', () => {
    const runs = [demand('r1', 7 * FOOT), demand('r2', 6 * FOOT)];
    const stock = [yard('y8', 8 * FOOT, 8 * FOOT), yard('y14', 14 * FOOT, 14 * FOOT)];
    expect(planOf({ ...problem(runs, stock), pricedBy: 'length' }).cost.price).toBe(14 * FOOT);
  });

  test.each([
    ['spliced', true, 30],
    ['in one piece each', false, 200],
  ])(
    'is the best of every plan there is, %s',
    (_, splices, count) => {
      const random = chance(7);
      for (let nth = 0; nth < count; nth++) {
        const asked = byChance(random, TINY, splices);
        const best = bestOfEveryPlan(asked);
        const found = search(asked);
        if ('none' in found) expect({ asked, best }).toEqual({ asked, best: undefined });
        else {
          expect({ asked, cost: found.plan.cost }).toEqual({ asked, cost: best });
          expect(checkPlan(asked, found.plan)).toEqual([]);
        }
      }
    },
    60_000,
  );

  test('is never worse than the first one, and each better one it shows is better and holds', () => {
    const random = chance(11);
    for (let nth = 0; nth < 4; nth++) {
      const asked = byChance(random, { ...PATIO, runs: [3, 6], trucks: [1, 3] }, true);
      const first = firstPlan(asked);
      let before = 'plan' in first ? first.plan : undefined;
      const found = search(asked, 0.3, (better) => {
        expect(checkPlan(asked, better)).toEqual([]);
        if (before) expect(compareCosts(better.cost, before.cost)).toBeLessThan(0);
        before = better;
      });
      if (!('plan' in found)) continue;
      expect(found.plan.cost).toEqual(before!.cost);
      const { proof } = found.plan;
      if (proof.is === 'gap') expect(proof.bound).toBeLessThan(found.plan.cost[proof.of]);
      expect(proof.is).not.toBe('first');
    }
  });
});

describe('no plan', () => {
  test('is said as the first plan says it', () => {
    expect(search(problem([demand('r', FOOT)], []))).toEqual({ none: { is: 'no-boards' } });
    const runs = [demand('r1', 8 * FOOT), demand('r2', 7 * FOOT)];
    expect(search(problem(runs, [truck('t', 8 * FOOT, 1)]))).toEqual({
      none: { is: 'not-enough', runs: ['r2'] },
    });
  });

  test('what the first plan missed is found', () => {
    // The long run must leave the 10 ft board to the one that can't be spliced.
    const runs = [
      demand('r1', 12 * FOOT, { spliceOn: [{ from: 5 * FOOT, to: 7 * FOOT }] }),
      demand('r2', 9 * FOOT),
    ];
    const stock = [truck('t10', 10 * FOOT, 1), truck('t7', 7 * FOOT, 1), truck('t5', 5 * FOOT, 1)];
    const plan = planOf(problem(runs, stock, { shortest: FOOT, splices: true }));
    expect(plan.cost.splices).toBe(1);
  });
});

describe('what no plan comes below', () => {
  test('is never above the best of every plan', () => {
    const random = chance(23);
    for (let nth = 0; nth < 40; nth++) {
      const asked = byChance(random, TINY, true);
      const best = bestOfEveryPlan(asked);
      if (!best) continue;
      const { counts, leastPrice } = reachOf(asked, best.price);
      expect({ asked, leastPrice: leastPrice <= best.price }).toEqual({ asked, leastPrice: true });
      for (const [of, held] of [
        ['cuts', ['price']],
        ['splices', ['price', 'cuts']],
        ['waste', ['price', 'cuts', 'splices']],
      ] as const) {
        const limits = Object.fromEntries(held.map((one) => [one, best[one]]));
        const bound = groupBound({ problem: asked, counts, solver, of, limits, seconds: 10 });
        expect({ asked, of, bound: Math.min(bound, best[of]) }).toEqual({ asked, of, bound });
      }
    }
  });

  test('two runs of 7 ft from boards of 8 and 6 ft: one cut, since they come out even together', () => {
    const runs = [7, 7].map((feet, at) =>
      demand(`r${at}`, feet * FOOT, { spliceOn: [{ from: FOOT, to: 6 * FOOT }] }),
    );
    const asked = problem(runs, [truck('t8', 8 * FOOT, 1), truck('t6', 6 * FOOT, 1)], {
      shortest: FOOT,
      splices: true,
    });
    const { counts } = reachOf(asked, 0);
    const of = { problem: asked, counts, solver, limits: { price: 0 }, seconds: 10 };
    expect(groupBound({ ...of, of: 'cuts' })).toBe(1);
    expect(planOf(asked).cost).toEqual({ price: 0, cuts: 1, splices: 1, waste: 0 });
  });
});
