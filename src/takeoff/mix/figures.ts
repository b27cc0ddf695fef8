import type { Practices } from '../../job/job.ts';
import type { Figure, WorkingInput } from '../figure.ts';
import { bagVolume, bagYield, count, halfBags, number, weight } from '../quantity.ts';
import type { BagCount, MixResult, VolumeResult } from '../result.ts';
import { allowanceFigures, worstFigure } from './allowanceFigures.ts';
import { bagStep, totalOf } from './bagSteps.ts';
import { batchFigures, waterFigures } from './batchFigures.ts';
import { mixOf } from './batchList.ts';

/** The lines from the net to the bags, each of them on its own: net + allowance = needed, needed + roundings = made. */
export function mixFigures(
  practices: Practices,
  slab: VolumeResult,
  mix: MixResult,
): readonly Figure[] {
  const { batching } = mix;
  return [
    ...allowanceFigures(practices, slab, mix),
    neededFigure(mix),
    ...roundingFigures(practices, mix),
    bagsFigure(practices, mix),
    madeFigure(practices, mix),
    expectedFigure(practices, mix),
    worstFigure(practices, slab, mix),
    bagWeightFigure(practices, mix),
    ...(batching ? batchFigures(practices, mix, batching) : []),
    ...waterFigures(practices, mix),
  ];
}

function neededFigure(mix: MixResult): Figure {
  return {
    key: 'needed',
    value: bagVolume(mix.needed),
    working: () => ({
      of: 'needed',
      formula: 'V₂ = V + a',
      inputs: [
        { key: 'net-volume', value: bagVolume(mix.net), from: 'figure' },
        { key: 'allowance', value: bagVolume(mix.allowance), from: 'figure' },
      ],
      rounding: 'none',
      source: ['geometry'],
    }),
  };
}

/** What whole bags add, what filling the last batch adds, and half bags that stay open. */
function roundingFigures(
  { mix: { halfBags: halves } }: Practices,
  mix: MixResult,
): readonly Figure[] {
  const blended = mix.needed + mix.blendRounding;
  const mixed = blended + mix.batchRounding;
  const line = (
    key: 'bag-rounding' | 'batch-rounding' | 'open-rounding',
    value: number,
    formula: string,
    inputs: readonly WorkingInput[],
  ): Figure => ({
    key,
    role: 'rounding',
    value: bagVolume(value),
    working: () => ({ of: key, formula, inputs, rounding: 'none', source: ['common-practice'] }),
  });
  const needed: WorkingInput = { key: 'needed', value: bagVolume(mix.needed), from: 'figure' };
  const inParts: WorkingInput = {
    key: 'blend-made',
    value: bagVolume(blended),
    from: 'worked-out',
  };
  const inMixer: WorkingInput = { key: 'mixed-made', value: bagVolume(mixed), from: 'worked-out' };
  const made: WorkingInput = { key: 'made', value: bagVolume(mix.made), from: 'figure' };
  return [
    line('bag-rounding', mix.blendRounding, 'u = Vₚ − V₂', [inParts, needed]),
    ...(mix.batching
      ? [line('batch-rounding', mix.batchRounding, 'u₁ = Vₘ − Vₚ', [inMixer, inParts])]
      : []),
    ...(halves ? [line('open-rounding', mix.openRounding, 'u₂ = V₃ − Vₘ', [made, inMixer])] : []),
  ];
}

function bagsFigure(practices: Practices, mix: MixResult): Figure {
  return {
    key: 'bags',
    role: 'order',
    value: count(mix.totalBags, 'bag'),
    working: () => ({
      of: 'bags',
      formula: mix.bags.length === 1 ? 'n = ⌈V₂ ÷ y⌉' : 'min n: n₁ · y₁ + n₂ · y₂ ≥ V₂',
      inputs: [
        { key: 'needed', value: bagVolume(mix.needed), from: 'figure' },
        ...yields(practices, mix.bags),
        { key: 'mixed-bags', value: halfBags(totalOf(mix.mixed)), from: 'worked-out' },
      ],
      rounding: 'up',
      source: ['bag-yields', 'user'],
      steps: mix.bags.map((bags) => bagStep(practices, bags)),
    }),
  };
}

function madeFigure(practices: Practices, mix: MixResult): Figure {
  return {
    key: 'made',
    value: bagVolume(mix.made),
    working: () => ({
      of: 'made',
      formula: 'V₃ = Σ n · y',
      inputs: [
        { key: 'bags', value: count(mix.totalBags, 'bag'), from: 'figure' },
        ...yields(practices, mix.bags),
      ],
      rounding: 'nearest',
      source: ['bag-yields', 'user'],
      steps: mix.bags.map(({ mix: id, bags }) => {
        const bag = mixOf(id, practices.mix.mixes);
        return {
          label: bag.name,
          value: bagVolume(bags * bag.yield),
          template: '{0} × {1}',
          values: [number(bags), bagYield(bag.yield)],
        };
      }),
    }),
  };
}

function expectedFigure(practices: Practices, mix: MixResult): Figure {
  return {
    key: 'bags-expected',
    value: count(mix.expectedBags, 'bag'),
    working: () => ({
      of: 'bags-expected',
      formula: 'min n: Σ n · y ≥ V',
      inputs: [
        { key: 'net-volume', value: bagVolume(mix.net), from: 'figure' },
        ...yields(practices, mix.bags),
      ],
      rounding: 'up',
      source: ['bag-yields', 'user'],
    }),
  };
}

function bagWeightFigure(practices: Practices, mix: MixResult): Figure {
  return {
    key: 'bag-weight',
    role: 'order',
    value: weight(mix.weight),
    working: () => ({
      of: 'bag-weight',
      formula: 'W = Σ n · w',
      inputs: [{ key: 'bags', value: count(mix.totalBags, 'bag'), from: 'figure' }],
      rounding: 'none',
      source: ['user'],
      steps: mix.bags.map(({ mix: id, bags }) => {
        const bag = mixOf(id, practices.mix.mixes);
        return {
          label: bag.name,
          value: weight(bags * bag.weight),
          template: '{0} × {1}',
          values: [number(bags), weight(bag.weight)],
        };
      }),
    }),
  };
}

function yields(practices: Practices, bags: readonly BagCount[]): readonly WorkingInput[] {
  return bags.map(({ mix }) => ({
    key: 'bag-yield',
    value: bagYield(mixOf(mix, practices.mix.mixes).yield),
    from: 'practice',
  }));
}
