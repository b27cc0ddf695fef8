import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../../src/takeoff/boards/checkPlan.ts';
import { firstPlan } from '../../../src/takeoff/boards/firstPlan.ts';
import type { BoardProblem } from '../../../src/takeoff/boards/plan.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { chance } from '../../random/chance.ts';
import { byChance, demand, PATIO, problem, TINY, truck, yard } from './problems.ts';

function planOf(asked: BoardProblem) {
  const found = firstPlan(asked);
  if ('none' in found) throw new Error(`No plan: ${JSON.stringify(found.none)}`);
  expect(checkPlan(asked, found.plan)).toEqual([]);
  return found.plan;
}

const KERF = INCH / 8;

describe('the first plan', () => {
  test('two 48 in pieces come out of 96 1/8 in with a kerf of 1/8 in, not out of 96 in', () => {
    const runs = [demand('r1', 48 * INCH), demand('r2', 48 * INCH)];
    const of = (length: number) => problem(runs, [truck('t', length, 2)], { kerf: KERF });
    expect(planOf(of(96 * INCH + KERF)).boards).toHaveLength(1);
    expect(planOf(of(96 * INCH)).boards).toHaveLength(2);
  });

  test('a board that may run long needs no cut', () => {
    const runs = [demand('r', 9 * FOOT, { end: FOOT })];
    const plan = planOf(problem(runs, [truck('t', 10 * FOOT, 1)], { kerf: KERF }));
    expect(plan.cost).toEqual({ price: 0, cuts: 0, splices: 0, waste: FOOT });
    expect(plan.boards[0]?.pieces).toEqual([{ mark: 'A1', run: 'r', from: 0, length: 10 * FOOT }]);
  });

  test('what the end has no room for runs long at the start', () => {
    const runs = [demand('r', 9 * FOOT, { start: 2 * FOOT, end: INCH })];
    const plan = planOf(problem(runs, [truck('t', 10 * FOOT, 1)]));
    expect(plan.boards[0]?.pieces[0]).toMatchObject({ from: -11 * INCH, length: 10 * FOOT });
  });

  test('the truck goes before the yard, and of the yard the cheapest that holds the pieces', () => {
    const runs = [demand('r1', 8 * FOOT), demand('r2', 7 * FOOT)];
    const stock = [
      yard('y16', 16 * FOOT, 1400),
      yard('y8', 8 * FOOT, 600),
      truck('t', 8 * FOOT, 1),
    ];
    const plan = planOf(problem(runs, stock, { kerf: KERF }));
    expect(plan.boards.map(({ stock }) => stock)).toEqual(['t', 'y8']);
    expect(plan.cost.price).toBe(600);
  });

  test('a run longer than any board is spliced where stakes can stand', () => {
    const run = demand('r', 20 * FOOT, { spliceOn: [{ from: 9 * FOOT, to: 11 * FOOT }] });
    const stock = [yard('y', 12 * FOOT, 900)];
    const plan = planOf(problem([run], stock, { kerf: KERF, shortest: 2 * FOOT, splices: true }));
    expect(plan.cost).toMatchObject({ price: 1800, splices: 1 });
  });

  test('short boards of the truck are spliced before one is bought', () => {
    const run = demand('r', 12 * FOOT, { spliceOn: [{ from: FOOT, to: 11 * FOOT }] });
    const stock = [truck('t', 6 * FOOT, 2), yard('y', 12 * FOOT, 900)];
    const plan = planOf(problem([run], stock, { shortest: 2 * FOOT, splices: true }));
    expect(plan.cost).toEqual({ price: 0, cuts: 0, splices: 1, waste: 0 });
  });

  test('nothing to form needs no board', () => {
    expect(planOf(problem([], [])).boards).toEqual([]);
  });

  test.each([
    ['patio, spliced', PATIO, true, 400],
    ['patio', PATIO, false, 1500],
    ['tiny, spliced', TINY, true, 1500],
    ['tiny', TINY, false, 2000],
  ])('answers its problem, or says why not: %s', (_, scale, splices, count) => {
    const random = chance(31);
    let plans = 0;
    for (let nth = 0; nth < count; nth++) {
      const asked = byChance(random, scale, splices);
      const found = firstPlan(asked);
      if ('plan' in found) {
        plans++;
        const faults = checkPlan(asked, found.plan);
        if (faults.length > 0) expect({ asked, faults }).toBeUndefined();
      } else if (found.none.is === 'not-enough') expect(found.none.runs.length).toBeGreaterThan(0);
    }
    expect(plans).toBeGreaterThan(count / 10);
  });
});

describe('no plan', () => {
  const noneOf = (asked: BoardProblem) => {
    const found = firstPlan(asked);
    return 'none' in found ? found.none : found.plan;
  };

  test('no boards at all', () => {
    expect(noneOf(problem([demand('r', FOOT)], []))).toEqual({ is: 'no-boards' });
    expect(noneOf(problem([demand('r', FOOT)], [truck('t', FOOT, 0)]))).toEqual({
      is: 'no-boards',
    });
  });

  test('a run longer than any board, splices forbidden or nowhere to be made', () => {
    const none = { is: 'run-too-long', run: 'r', longest: 16 * FOOT };
    const stock = [yard('y', 16 * FOOT, 1)];
    const anywhere = [{ from: FOOT, to: 19 * FOOT }];
    expect(noneOf(problem([demand('r', 20 * FOOT, { spliceOn: anywhere })], stock))).toEqual(none);
    expect(noneOf(problem([demand('r', 20 * FOOT)], stock, { splices: true }))).toEqual(none);
    const near = [{ from: FOOT, to: 2 * FOOT }];
    expect(
      noneOf(problem([demand('r', 20 * FOOT, { spliceOn: near })], stock, { splices: true })),
    ).toEqual(none);
  });

  test('more runs than the truck has boards for', () => {
    const runs = [demand('r1', 8 * FOOT), demand('r2', 7 * FOOT)];
    expect(noneOf(problem(runs, [truck('t', 8 * FOOT, 1)]))).toEqual({
      is: 'not-enough',
      runs: ['r2'],
    });
  });
});
