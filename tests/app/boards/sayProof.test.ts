import { expect, test } from 'vitest';
import { sayProof } from '../../../src/app/boards/sayProof.ts';
import { planEn } from '../../../src/app/words/planEn.ts';
import { en } from '../../../src/sheet/words/en.ts';
import type { BoardCost, BoardProblem, Proof } from '../../../src/takeoff/boards/plan.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';

const PROBLEM: BoardProblem = {
  size: '2x4',
  demands: [],
  stock: [],
  pricedBy: 'money',
  kerf: 0,
  shortest: 0,
  splices: true,
};
const COST: BoardCost = { price: 4250, cuts: 7, splices: 2, waste: 30 * INCH };

function said(proof: Proof, pricedBy: BoardProblem['pricedBy'] = 'money'): string {
  const price = pricedBy === 'money' ? COST.price : 100 * FOOT;
  const plan = { boards: [], cost: { ...COST, price }, proof };
  const problem = { ...PROBLEM, pricedBy };
  return sayProof(planEn, en, { plan, problem }, { currency: '$', units: 'feet-inches' });
}

test('a proof says how long it took, in tenths rounded up', () => {
  expect(said({ is: 'proved', seconds: 0.004 })).toContain('Proved in 0.1 s');
  expect(said({ is: 'proved', seconds: 3.21 })).toContain('Proved in 3.3 s');
});

test('a gap says what another plan could save at most: whole cents, cuts, splices, lengths', () => {
  const gap = (of: keyof BoardCost, bound: number): Proof => {
    return { is: 'gap', of, bound, seconds: 20 };
  };
  expect(said(gap('price', 4000.4))).toContain('cost at most $2.49 less');
  expect(said(gap('price', 98 * FOOT), 'length')).toContain(`buy at most 2'-0" less`);
  expect(said(gap('cuts', 4.2))).toContain('save 2 cuts at most');
  expect(said(gap('splices', 1))).toContain('save 1 splice at most');
  expect(said(gap('waste', 18 * INCH))).toContain(`leave at most 1'-0" less over`);
});

test('a first answer claims nothing', () => {
  expect(said({ is: 'first' })).toBe(planEn.first);
});
