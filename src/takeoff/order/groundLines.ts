import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import { CUBIC_METRE, CUBIC_YARD } from '../../units/grid.ts';
import { length, tubeVolume } from '../quantity.ts';
import type { Takeoff } from '../result.ts';
import { byLength } from './formLines.ts';
import { line, type OrderLine } from './line.ts';
import type { BaseNeed } from './orderResult.ts';

/** What lies under the slab, along its edges, in its joints and on its top. */
export function groundLines(job: Job, takeoff: Takeoff): readonly OrderLine[] {
  const { pour } = takeoff;
  const order = orderOf(job.practices);
  const base = pour && baseOf(job, pour.area);
  const retarder = pour && retarderOf(job, pour.area);
  const { width, length: long } = order.retarder;
  return [
    ...(base ? baseLine(job, base.loose) : []),
    ...line(job, {
      item: 'retarder',
      is: 'order-retarder',
      named: [length(width), length(long)],
      count: retarder ? retarder.rolls : 0,
      unit: 'roll',
    }),
  ];
}

/** Strip, sealant and backer rod. */
export function jointLines(job: Job, { joints }: Takeoff): readonly OrderLine[] {
  if (!joints) return [];
  const { isolation, joints: rules } = job.practices;
  return [
    ...line(job, {
      item: 'strip',
      is: 'order-strip',
      named: [length(isolation.pieceLength)],
      count: joints.pieces ?? 0,
      unit: 'piece',
    }),
    ...line(job, {
      item: 'cartridge',
      is: 'order-sealant',
      named: [tubeVolume(rules.sealant.cartridge)],
      count: joints.sealed?.cartridges ?? 0,
      unit: 'cartridge',
    }),
    ...byLength(job, 'backer', 'order-backer', joints.sealed?.backer ?? 0),
  ];
}

export function cureLine(job: Job, { pour }: Takeoff): readonly OrderLine[] {
  const { cure } = orderOf(job.practices);
  return line(job, {
    item: 'cure-can',
    is: 'order-cure',
    named: [tubeVolume(cure.can)],
    count: pour && cure.use ? Math.ceil(pour.area / cure.coverage / cure.can) : 0,
    unit: 'can',
  });
}

/**
 * Base under the net area. A shrinkage of 25 % is written two ways, and a table doesn't always say which: as swell, loose
 * is 1.25 of compacted (its factor is 1 ÷ 1.25 = 0.80); as shrink, compacted is 0.75 of loose.
 * @source shrink-factor-highway
 */
export function baseOf({ practices }: Pick<Job, 'practices'>, area: number): BaseNeed | undefined {
  const { depth } = practices.base;
  if (!(depth > 0)) return undefined;
  const { shrink, means } = orderOf(practices).base;
  const compacted = area * depth;
  return {
    compacted,
    loose: means === 'swell' ? compacted * (1 + shrink) : compacted / (1 - shrink),
  };
}

/** Rolls of plastic: the net area, and what the laps take of each roll's width. Nothing where a lap is as wide as the roll. */
export function retarderOf(
  { practices }: Pick<Job, 'practices'>,
  area: number,
): { readonly covered: number; readonly rolls: number } | undefined {
  if (!practices.base.retarder) return undefined;
  const { width, length: long, lap } = orderOf(practices).retarder;
  if (!(width > lap)) return undefined;
  const covered = (area * width) / (width - lap);
  return { covered, rolls: Math.ceil(covered / (width * long)) };
}

/** Sold loose by the quarter of a cubic yard or metre: up to the next one. */
export function quarters(grid3: number, unit: 'cubic-yard' | 'cubic-metre'): number {
  const one = unit === 'cubic-yard' ? CUBIC_YARD : CUBIC_METRE;
  // A whole quarter that is a hair over by the arithmetic alone is not one more.
  return Math.ceil((grid3 / one) * 4 - 1e-9) / 4;
}

function baseLine(job: Job, loose: number): readonly OrderLine[] {
  const unit = job.units === 'metric' ? 'cubic-metre' : 'cubic-yard';
  const count = quarters(loose, unit);
  const one = unit === 'cubic-yard' ? CUBIC_YARD : CUBIC_METRE;
  return line(job, {
    item: unit === 'cubic-yard' ? 'base-yd3' : 'base-m3',
    is: 'order-base',
    count,
    unit,
    weight: ((count * one) / CUBIC_METRE) * orderOf(job.practices).base.weight,
    delivered: true,
  });
}
