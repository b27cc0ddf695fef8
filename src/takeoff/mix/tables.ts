import type { Practices } from '../../job/job.ts';
import type { TicketTable } from '../figure.ts';
import type { ColumnKey } from '../keys.ts';
import type { NetPour } from '../outline/pour.ts';
import {
  area,
  bagVolume,
  bagYield,
  halfBags,
  length,
  number,
  share,
  text,
  waterVolume,
  weight,
} from '../quantity.ts';
import type { JointLayout, MixResult, VolumeResult } from '../result.ts';
import { batchList, mixOf } from './batchList.ts';
import { checkpoints } from './checkpoints.ts';

/** One row a mix: bags in all, and their weight. */
export function bagsTable({ mix: { mixes } }: Practices, mix: MixResult): TicketTable {
  return {
    key: 'bags-by-mix',
    columns: ['mix', 'parts', 'bags', 'weight'],
    rows: mix.bags.map(({ mix: id, parts, bags }) => {
      const bag = mixOf(id, mixes);
      return [text(bag.name), number(parts), number(bags), weight(bags * bag.weight)];
    }),
  };
}

/** One row a batch, the last one as it is. Water only where it stands on every bag. */
export function batchTable(practices: Practices, mix: MixResult): TicketTable {
  const list = batchList(practices, mix);
  const withWater = list.every(({ water }) => water);
  const isBlend = mix.mixed.length > 1;
  const columns: readonly ColumnKey[] = [
    'batch',
    'bags-main',
    ...(isBlend ? (['bags-other'] as const) : []),
    ...(withWater ? (['batch-water-least', 'batch-water-most'] as const) : []),
    'batch-concrete',
    'bags-so-far',
    'concrete-so-far',
  ];
  return {
    key: 'batch-list',
    columns,
    rows: list.map(({ number: which, bags, made, bagsSoFar, madeSoFar, water }) => [
      number(which),
      ...bags.map(halfBags),
      ...(withWater && water ? [waterVolume(water.least), waterVolume(water.most)] : []),
      bagYield(made),
      halfBags(bagsSoFar),
      bagVolume(madeSoFar),
    ]),
  };
}

/** What should be gone when each panel, or quarter, is full. */
export function checkpointTable(
  practices: Practices,
  pour: NetPour,
  volume: VolumeResult,
  mix: MixResult,
  layout: JointLayout | undefined,
): TicketTable {
  return {
    key: 'checkpoints',
    columns: [
      'placed',
      'placed-area',
      'placed-bags',
      'placed-bags-so-far',
      ...(mix.batching ? (['placed-batches-so-far'] as const) : []),
    ],
    rows: checkpoints(practices, pour, volume, mix, layout).map((one) => [
      'panel' in one.placed ? text(one.placed.panel) : share(one.placed.share),
      area(one.area),
      halfBags(one.bags),
      halfBags(one.bagsSoFar),
      ...(one.batchesSoFar === undefined ? [] : [number(Math.round(one.batchesSoFar * 10) / 10)]),
    ]),
  };
}

/** The taped depths, each with what it is off the mean, and how much of the ground it stands for. */
export function readingsTable({ ground }: VolumeResult): readonly TicketTable[] {
  if (!ground) return [];
  return [
    {
      key: 'ground-readings',
      columns: ['reading', 'depth', 'off-mean', 'reading-weight'],
      rows: ground.readings.map(({ depth, weight: part }, i) => [
        number(i + 1),
        length(depth),
        length(depth - ground.mean),
        share(part),
      ]),
    },
  ];
}
