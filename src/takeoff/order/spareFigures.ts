import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import type { Figure } from '../figure.ts';
import { count, money, number, share } from '../quantity.ts';
import { bagsOnPallet } from './concrete.ts';
import { practice } from './inputs.ts';
import type { OrderResult } from './orderResult.ts';

/** How many bags to take and why, and how they come: by the pallet. */
export function spareFigures(job: Job, { bags }: OrderResult): readonly Figure[] {
  if (!bags) return [];
  return [...(bags.by ? takeFigures(job, bags, bags.by) : []), ...palletFigures(job, bags)];
}

type Bags = NonNullable<OrderResult['bags']>;

function takeFigures(
  { practices }: Job,
  bags: Bags,
  by: NonNullable<Bags['by']>,
): readonly Figure[] {
  const { currency } = practices;
  const rules = orderOf(practices).bags;
  const known = rules.jobs >= 2;
  return [
    {
      key: 'spare-ratio',
      value: share(by.ratio),
      working: () => ({
        of: 'spare-ratio',
        formula: 'q = c₁ ÷ (c₁ + c₂)',
        inputs: [
          practice('short-cost', money(by.short, currency)),
          practice('over-cost', money(by.over, currency)),
        ],
        rounding: 'none',
        source: ['critical-ratio'],
      }),
    },
    {
      key: 'spare-average',
      value: count(by.expected, 'bag'),
      working: () => ({
        of: 'spare-average',
        formula: 'μ = n₀ · (1 + b)',
        inputs: [practice('bags-over', share(rules.over))],
        rounding: 'none',
        source: ['user'],
      }),
    },
    {
      key: 'bags-to-take',
      value: count(by.take, 'bag'),
      working: () => ({
        of: 'bags-to-take',
        formula: known ? 'Q = ⌈μ + t(q) · σ · √(1 + 1 ÷ m)⌉' : 'Q = ⌈μ + z(q) · σ⌉',
        inputs: [
          { key: 'spare-average', value: count(by.expected, 'bag'), from: 'figure' },
          practice('bags-spread', share(rules.spread)),
          practice('spread-jobs', count(rules.jobs, 'job')),
          { key: 'spare-quantile', value: number(by.quantile), from: 'worked-out' },
          { key: 'spare-ratio', value: share(by.ratio), from: 'figure' },
        ],
        rounding: 'up',
        source: ['critical-ratio', 'user'],
      }),
    },
    {
      key: 'spare-bags',
      role: 'allowance',
      value: count(bags.spare, 'bag'),
      working: () => ({
        of: 'spare-bags',
        formula: 'max(0, Q − N)',
        inputs: [
          { key: 'bags-to-take', value: count(by.take, 'bag'), from: 'figure' },
          { key: 'bags', value: count(bags.total - bags.spare, 'bag'), from: 'figure' },
        ],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
  ];
}

function palletFigures({ practices }: Job, bags: Bags): readonly Figure[] {
  const { pallets, deposit } = bags;
  if (!pallets) return [];
  const { perPallet } = orderOf(practices).bags;
  return [
    {
      key: 'pallets',
      role: 'order',
      value: count(pallets, 'pallet'),
      working: () => ({
        of: 'pallets',
        formula: 'P = Σ ⌊n ÷ p⌋',
        inputs: bags.bags.map(({ mix }) =>
          practice('bags-per-pallet', count(bagsOnPallet(mix.weight, perPallet) ?? 0, 'bag')),
        ),
        rounding: 'none',
        source: perPallet === undefined ? ['pallet-bags'] : ['user'],
      }),
    },
    ...(deposit === undefined
      ? []
      : [
          {
            key: 'pallet-deposit',
            value: money(deposit, practices.currency),
            working: () => ({
              of: 'pallet-deposit' as const,
              formula: 'P · d',
              inputs: [
                {
                  key: 'pallets' as const,
                  value: count(pallets, 'pallet'),
                  from: 'figure' as const,
                },
                practice(
                  'deposit-one',
                  money(pallets === 0 ? 0 : deposit / pallets, practices.currency),
                ),
              ],
              rounding: 'none' as const,
              source: ['user'],
            }),
          } satisfies Figure,
        ]),
  ];
}
