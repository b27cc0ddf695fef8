import type { BagMix, Practices } from '../../job/job.ts';
import type { Figure, TicketTable, WorkingInput, WorkingStep } from '../figure.ts';
import { bagVolume, bagYield, count, number, share, text, weight } from '../quantity.ts';
import type { BagCount, Batching, MixResult } from '../result.ts';

/** The lines from the net to the bags, each of them on its own: net + allowance = needed, needed + rounding = made. */
export function mixFigures(practices: Practices, mix: MixResult): readonly Figure[] {
  const { waste } = practices;
  const mixes = practices.mix.mixes;
  const needed: WorkingInput = { key: 'needed', value: bagVolume(mix.needed), from: 'figure' };
  const made: WorkingInput = { key: 'made', value: bagVolume(mix.made), from: 'figure' };
  return [
    {
      key: 'allowance',
      role: 'allowance',
      value: bagVolume(mix.allowance),
      working: () => ({
        of: 'allowance',
        formula: 'a = max(f · V, m · y)',
        inputs: [
          { key: 'net-volume', value: bagVolume(mix.net), from: 'figure' },
          { key: 'waste-share', value: share(waste.share), from: 'practice' },
          { key: 'waste-bags', value: count(waste.minimumBags, 'bag'), from: 'practice' },
          ...yields(mix.bags, mixes),
        ],
        rounding: 'nearest',
        source: ['navedtra-14070-estimate', 'common-practice', 'user'],
      }),
    },
    {
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
    },
    {
      key: 'bag-rounding',
      role: 'rounding',
      value: bagVolume(mix.rounding),
      working: () => ({
        of: 'bag-rounding',
        formula: 'u = V₃ − V₂',
        inputs: [made, needed],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    {
      key: 'bags',
      role: 'order',
      value: count(mix.totalBags, 'bag'),
      working: () => ({
        of: 'bags',
        formula: mix.bags.length === 1 ? 'n = ⌈V₂ ÷ y⌉' : 'min n: n₁ · y₁ + n₂ · y₂ ≥ V₂',
        inputs: [needed, ...yields(mix.bags, mixes)],
        rounding: 'up',
        source: ['bag-yields', 'user'],
        steps: mix.bags.map((bags) => bagStep(bags, mixes)),
      }),
    },
    {
      key: 'made',
      value: bagVolume(mix.made),
      working: () => ({
        of: 'made',
        formula: 'V₃ = Σ n · y',
        inputs: [
          { key: 'bags', value: count(mix.totalBags, 'bag'), from: 'figure' },
          ...yields(mix.bags, mixes),
        ],
        rounding: 'nearest',
        source: ['bag-yields', 'user'],
        steps: mix.bags.map(({ mix: id, bags }) => {
          const bag = bagOf(id, mixes);
          return {
            label: bag.name,
            value: bagVolume(bags * bag.yield),
            template: '{0} × {1}',
            values: [number(bags), bagYield(bag.yield)],
          };
        }),
      }),
    },
    {
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
          const bag = bagOf(id, mixes);
          return {
            label: bag.name,
            value: weight(bags * bag.weight),
            template: '{0} × {1}',
            values: [number(bags), weight(bag.weight)],
          };
        }),
      }),
    },
    ...(mix.batching ? batchFigures(practices, mix, mix.batching) : []),
  ];
}

function batchFigures(practices: Practices, mix: MixResult, batching: Batching): readonly Figure[] {
  const { mixes, batchVolume } = practices.mix;
  const size: WorkingInput = { key: 'batch-size', value: bagYield(batchVolume), from: 'practice' };
  return [
    {
      key: 'batches',
      value: count(batching.batches, 'batch'),
      working: () => ({
        of: 'batches',
        formula: 'b = ⌈n ÷ k⌉',
        inputs: [
          { key: 'bags', value: count(mix.totalBags, 'bag'), from: 'figure' },
          size,
          { key: 'batch-bags', value: count(totalOf(batching.full), 'bag'), from: 'figure' },
        ],
        rounding: 'up',
        source: ['common-practice', 'user'],
        steps: batching.full.map((bags) => bagStep(bags, mixes)),
      }),
    },
    {
      key: 'last-batch',
      value: count(totalOf(batching.last), 'bag'),
      working: () => ({
        of: 'last-batch',
        formula: 'k₁ = n − (b − 1) · k',
        inputs: [
          { key: 'bags', value: count(mix.totalBags, 'bag'), from: 'figure' },
          { key: 'batches', value: count(batching.batches, 'batch'), from: 'figure' },
          { key: 'batch-bags', value: count(totalOf(batching.full), 'bag'), from: 'figure' },
        ],
        rounding: 'none',
        source: ['geometry'],
        steps: batching.last.map((bags) => bagStep(bags, mixes)),
      }),
    },
  ];
}

function totalOf(bags: readonly BagCount[]): number {
  return bags.reduce((sum, each) => sum + each.bags, 0);
}

function bagStep({ mix: id, bags }: BagCount, mixes: readonly BagMix[]): WorkingStep {
  return { label: bagOf(id, mixes).name, value: count(bags, 'bag') };
}

function yields(bags: readonly BagCount[], mixes: readonly BagMix[]): readonly WorkingInput[] {
  return bags.map(({ mix }) => ({
    key: 'bag-yield',
    value: bagYield(bagOf(mix, mixes).yield),
    from: 'practice',
  }));
}

/** The mix of a count. A takeoff is read with the job that it was figured from, so it is there. */
function bagOf(id: string, mixes: readonly BagMix[]): BagMix {
  const bag = mixes.find((one) => one.id === id);
  if (!bag) throw new Error(`The takeoff counts bags of “${id}”, which the job doesn't list.`);
  return bag;
}

/** One row a mix: bags in all, in a full batch, and their weight. */
export function bagsTable({ mix: { mixes } }: Practices, mix: MixResult): TicketTable {
  return {
    key: 'bags-by-mix',
    columns: ['mix', 'parts', 'bags', 'weight'],
    rows: mix.bags.map(({ mix: id, parts, bags }) => {
      const bag = bagOf(id, mixes);
      return [text(bag.name), number(parts), number(bags), weight(bags * bag.weight)];
    }),
  };
}
