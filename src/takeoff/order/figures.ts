import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import type { Figure, WorkingInput } from '../figure.ts';
import {
  area,
  bagVolume,
  count,
  length,
  money,
  number,
  share,
  term,
  tubeVolume,
  volume,
} from '../quantity.ts';
import type { Takeoff } from '../result.ts';
import { soldBy } from './concrete.ts';
import { practice } from './inputs.ts';
import type { OrderResult } from './orderResult.ts';
import { spareFigures } from './spareFigures.ts';

/** The list in numbers, and what was reckoned for its lines. */
export function orderFigures(job: Job, takeoff: Takeoff, order: OrderResult): readonly Figure[] {
  return [
    ...listFigures(job, order),
    ...groundFigures(job, takeoff, order),
    ...(orderOf(job.practices).concrete === 'bags' ? spareFigures(job, order) : []),
    ...readyMixFigures(job, takeoff, order),
  ];
}

function listFigures({ practices: { currency } }: Job, order: OrderResult): readonly Figure[] {
  const { lines, unpriced } = order;
  const sum = order.money;
  return [
    {
      key: 'order-lines',
      value: count(lines.length, 'line'),
      working: () => ({
        of: 'order-lines',
        formula: 'n',
        inputs: [],
        rounding: 'none',
        source: ['user'],
      }),
    },
    ...(unpriced > 0
      ? [
          {
            key: 'order-unpriced',
            value: count(unpriced, 'line'),
            working: () => ({
              of: 'order-unpriced' as const,
              formula: 'u = n − p',
              inputs: [],
              rounding: 'none' as const,
              source: ['user'],
            }),
          } satisfies Figure,
        ]
      : []),
    ...(sum === undefined
      ? []
      : [
          {
            key: 'order-money',
            role: 'order',
            value: money(sum, currency),
            working: () => ({
              of: 'order-money' as const,
              formula: 'C = Σ nᵢ · pᵢ',
              inputs: [],
              rounding: 'cent',
              source: ['user'],
              steps: lines.flatMap((line, i) =>
                line.price === undefined || line.sum === undefined
                  ? []
                  : [
                      {
                        label: `${i + 1}`,
                        value: money(line.sum, currency),
                        template: '{0} × {1}',
                        values: [count(line.count, line.unit), money(line.price, currency)],
                      },
                    ],
              ),
            }),
          } satisfies Figure,
        ]),
  ];
}

function groundFigures(job: Job, { pour }: Takeoff, order: OrderResult): readonly Figure[] {
  const { base, retarder, cure } = order;
  const rules = orderOf(job.practices);
  const net: WorkingInput = { key: 'net-area', value: area(pour?.area ?? 0), from: 'figure' };
  return [
    ...(base
      ? ([
          {
            key: 'base-compacted',
            role: 'net',
            value: volume(base.compacted),
            working: () => ({
              of: 'base-compacted',
              formula: 'V₁ = A · d',
              inputs: [net, practice('base-depth', length(job.practices.base.depth))],
              rounding: 'none',
              source: ['geometry', 'user'],
            }),
          },
          {
            key: 'base-loose',
            value: volume(base.loose),
            working: () => ({
              of: 'base-loose',
              formula: rules.base.means === 'swell' ? 'V₂ = V₁ · (1 + s)' : 'V₂ = V₁ ÷ (1 − s)',
              inputs: [
                { key: 'base-compacted', value: volume(base.compacted), from: 'figure' },
                practice('base-shrink', share(rules.base.shrink)),
                practice('base-means', term(`means-${rules.base.means}`)),
              ],
              rounding: 'none',
              source: ['shrink-factor-highway', 'user'],
            }),
          },
        ] satisfies readonly Figure[])
      : []),
    ...(retarder
      ? ([
          {
            key: 'retarder-area',
            value: area(retarder.covered),
            working: () => ({
              of: 'retarder-area',
              formula: 'A₂ = A · w ÷ (w − o)',
              inputs: [
                net,
                practice('retarder-width', length(rules.retarder.width)),
                practice('retarder-lap', length(rules.retarder.lap)),
              ],
              rounding: 'none',
              source: ['geometry', 'common-practice'],
            }),
          },
        ] satisfies readonly Figure[])
      : []),
    ...(cure === undefined
      ? []
      : ([
          {
            key: 'cure-volume',
            value: tubeVolume(cure),
            working: () => ({
              of: 'cure-volume',
              formula: 'V = A ÷ c',
              inputs: [
                net,
                practice('cure-coverage', area(rules.cure.coverage * rules.cure.can)),
                practice('cure-can', tubeVolume(rules.cure.can)),
              ],
              rounding: 'none',
              source: ['common-practice', 'user'],
            }),
          },
        ] satisfies readonly Figure[])),
  ];
}

function readyMixFigures(job: Job, { mix }: Takeoff, { readyMix }: OrderResult): readonly Figure[] {
  if (!mix || readyMix === undefined) return [];
  const byTruck = orderOf(job.practices).concrete === 'ready-mix';
  const { unit } = soldBy(job);
  return [
    {
      key: 'ready-mix',
      ...(byTruck ? { role: 'order' as const } : {}),
      value: count(readyMix, unit),
      working: () => ({
        of: 'ready-mix',
        formula: 'N = ⌈4 · V₂⌉ ÷ 4',
        inputs: [
          { key: 'needed', value: bagVolume(mix.needed), from: 'figure' },
          practice('ready-step', number(0.25)),
        ],
        rounding: 'up',
        source: ['navedtra-14070-estimate', 'common-practice'],
      }),
    },
  ];
}
