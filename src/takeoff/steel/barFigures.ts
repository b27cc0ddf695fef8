import type { Practices } from '../../job/job.ts';
import { proofFigure } from '../boards/proofFigure.ts';
import type { Figure } from '../figure.ts';
import { count, length, money, number, text, weight } from '../quantity.ts';
import type { BarsResult } from '../result.ts';

/** Bars to buy and to lay, with the least that their lengths alone would take. */
export function barFigures(practices: Practices, result: BarsResult): readonly Figure[] {
  const { bars } = practices.steel;
  const { cuts, lines, laid, crossings } = result;
  const { cost, boards } = cuts.plan;
  const stock = {
    key: 'bar-stock-length' as const,
    value: length(bars.stockLength),
    from: 'practice' as const,
  };
  const lap = { key: 'bar-lap' as const, value: length(result.lap), from: 'practice' as const };
  return [
    {
      key: 'bar-lines',
      value: count(lines.length, 'bar'),
      working: () => ({
        of: 'bar-lines',
        formula: 'n = Σ (⌈B ÷ s⌉ + 1)',
        inputs: [
          { key: 'bar-spacing', value: length(bars.spacing), from: 'practice' },
          { key: 'bar-cover', value: length(bars.cover), from: 'practice' },
        ],
        rounding: 'up-each',
        source: ['geometry', 'user'],
        steps: (['along', 'across', 'corner'] as const)
          .map((way) => ({ way, of: lines.filter((line) => line.way === way).length }))
          .filter(({ of }) => of > 0)
          .map(({ way, of }) => ({
            label: { along: '∥', across: '⊥', corner: '∠' }[way],
            value: count(of, 'bar'),
          })),
      }),
    },
    {
      key: 'bar-length',
      role: 'net',
      value: length(laid),
      working: () => ({
        of: 'bar-length',
        formula: 'Σ L',
        inputs: [],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    {
      key: 'bars-to-buy',
      role: 'order',
      value: count(boards.length, 'bar'),
      working: () => ({
        of: 'bars-to-buy',
        formula: 'N ≥ ⌈(Σ L + k · o) ÷ l⌉',
        inputs: [
          { key: 'bar-length', value: length(laid), from: 'figure' },
          { key: 'bar-laps', value: number(cuts.laps), from: 'sketch' },
          lap,
          stock,
          { key: 'bars-least', value: count(cuts.least, 'bar'), from: 'figure' },
        ],
        rounding: 'up',
        source: ['geometry', 'user'],
      }),
    },
    ...(cuts.problem.pricedBy === 'money' ? [moneyFigure(practices, result)] : []),
    {
      key: 'bars-least',
      value: count(cuts.least, 'bar'),
      working: () => ({
        of: 'bars-least',
        formula: 'N₀ = ⌈(Σ L + k · o) ÷ l⌉',
        inputs: [{ key: 'bar-length', value: length(laid), from: 'figure' }, lap, stock],
        rounding: 'up',
        source: ['geometry'],
      }),
    },
    {
      key: 'bar-cuts',
      value: count(cost.cuts, 'cut'),
      working: () => ({
        of: 'bar-cuts',
        formula: 'k = Σ kᵢ',
        inputs: [],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    proofFigure('bars-proof', practices, cuts),
    {
      key: 'bar-weight',
      role: 'order',
      value: weight(result.weight),
      working: () => ({
        of: 'bar-weight',
        formula: 'W = N · l · q',
        inputs: [
          { key: 'bar-size', value: text(bars.size), from: 'practice' },
          { key: 'bars-to-buy', value: count(boards.length, 'bar'), from: 'figure' },
          stock,
        ],
        rounding: 'none',
        source: ['rebar-sizes'],
      }),
    },
    {
      key: 'bar-ties',
      value: count(Math.ceil(crossings / 2) + 2 * cuts.laps, 'tie'),
      working: () => ({
        of: 'bar-ties',
        formula: '⌈x ÷ 2⌉ + 2k',
        inputs: [
          { key: 'bar-crossings', value: number(crossings), from: 'sketch' },
          { key: 'bar-laps', value: number(cuts.laps), from: 'sketch' },
        ],
        rounding: 'up',
        source: ['common-practice'],
      }),
    },
  ];
}

function moneyFigure({ currency }: Practices, { cuts }: BarsResult): Figure {
  const { boards, cost } = cuts.plan;
  const each = cuts.problem.stock[0]!.price;
  return {
    key: 'bars-money',
    role: 'order',
    value: money(cost.price, currency),
    working: () => ({
      of: 'bars-money',
      formula: 'C = N · p',
      inputs: [
        { key: 'bars-to-buy', value: count(boards.length, 'bar'), from: 'figure' },
        { key: 'price-of-one', value: money(each, currency), from: 'practice' },
      ],
      rounding: 'none',
      source: ['user'],
    }),
  };
}
