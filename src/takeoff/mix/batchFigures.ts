import type { Practices } from '../../job/job.ts';
import { CUBIC_METRE } from '../../units/grid.ts';
import type { Figure, WorkingInput } from '../figure.ts';
import { bagYield, count, density, halfBags, waterVolume, weight } from '../quantity.ts';
import type { Batching, MixResult } from '../result.ts';
import { bagStep, totalOf } from './bagSteps.ts';
import { mixOf } from './batchList.ts';

export function batchFigures(
  practices: Practices,
  mix: MixResult,
  batching: Batching,
): readonly Figure[] {
  const { batchVolume } = practices.mix;
  const size: WorkingInput = { key: 'batch-size', value: bagYield(batchVolume), from: 'practice' };
  const mixed: WorkingInput = {
    key: 'mixed-bags',
    value: halfBags(totalOf(mix.mixed)),
    from: 'worked-out',
  };
  const full: WorkingInput = {
    key: 'batch-full',
    value: count(totalOf(batching.full), 'bag'),
    from: 'figure',
  };
  return [
    {
      key: 'batch-full',
      value: count(totalOf(batching.full), 'bag'),
      working: () => ({
        of: 'batch-full',
        formula: 'k = j · (p₁ + p₂),  max j: j · (p₁ · y₁ + p₂ · y₂) ≤ M',
        inputs: [
          size,
          { key: 'batch-makes', value: bagYield(batching.fullVolume), from: 'worked-out' },
        ],
        rounding: 'none',
        source: ['common-practice', 'user'],
        steps: batching.full.map((bags) => bagStep(practices, bags)),
      }),
    },
    {
      key: 'batches',
      value: count(batching.batches, 'batch'),
      working: () => ({
        of: 'batches',
        formula: 'b = ⌈n ÷ k⌉',
        inputs: [mixed, size, full],
        rounding: 'up',
        source: ['common-practice', 'user'],
      }),
    },
    {
      key: 'last-batch',
      value: count(totalOf(batching.last), 'bag'),
      working: () => ({
        of: 'last-batch',
        formula: 'k₁ = n − (b − 1) · k',
        inputs: [
          mixed,
          { key: 'batches', value: count(batching.batches, 'batch'), from: 'figure' },
          full,
        ],
        rounding: 'none',
        source: ['geometry'],
        steps: batching.last.map((bags) => bagStep(practices, bags)),
      }),
    },
    batchWeightFigure(practices, batching),
  ];
}

/** A full batch is what a barrow, or two people, have to move. */
function batchWeightFigure({ bending }: Practices, { fullVolume }: Batching): Figure {
  const { freshWeight } = bending;
  return {
    key: 'batch-weight',
    value: weight((freshWeight * fullVolume) / CUBIC_METRE),
    working: () => ({
      of: 'batch-weight',
      formula: 'W₁ = V₁ · γ',
      inputs: [
        { key: 'batch-makes', value: bagYield(fullVolume), from: 'worked-out' },
        { key: 'fresh-concrete', value: density(freshWeight), from: 'practice' },
      ],
      rounding: 'none',
      source: ['common-practice', 'user'],
    }),
  };
}

/** Water for all the batches; of bags whose water is typed, as they say. */
export function waterFigures(practices: Practices, mix: MixResult): readonly Figure[] {
  const { water } = mix;
  return (['least', 'most'] as const).map((of): Figure => {
    const key = `water-${of}` as const;
    return {
      key,
      value: waterVolume(water[of]),
      working: () => ({
        of: key,
        formula: 'Σ n · q',
        inputs: mix.mixed.flatMap(({ mix: id }): readonly WorkingInput[] => {
          const each = mixOf(id, practices.mix.mixes).water?.[of];
          if (each === undefined) return [];
          return [{ key: `bag-water-${of}`, value: waterVolume(each), from: 'practice' }];
        }),
        rounding: 'none',
        source: water.from === 'bag' ? ['user'] : ['bag-water', 'common-practice'],
        steps: mix.mixed.map((bags) => bagStep(practices, bags)),
      }),
    };
  });
}
