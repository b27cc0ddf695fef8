import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import { FOOT, type Grid, METRE } from '../../units/grid.ts';
import { DRESSED } from '../forms/rules.ts';
import type { CountUnit } from '../keys.ts';
import { length, text } from '../quantity.ts';
import type { Hold, Takeoff } from '../result.ts';
import { line, type OrderLine } from './line.ts';

const HELD: readonly (readonly [Hold, 'stake' | 'kicker' | 'spreader' | 'weight'])[] = [
  ['inside-stake', 'stake'],
  ['kicker', 'kicker'],
  ['spreader', 'spreader'],
  ['weight', 'weight'],
];

/** Boards by their length, stuff to bend, stakes and what else holds the forms, cleats, nails or screws. */
export function formLines(job: Job, takeoff: Takeoff): readonly OrderLine[] {
  return [...boardLines(job, takeoff), ...bentLine(job, takeoff), ...holdLines(job, takeoff)];
}

function boardLines(job: Job, { boards }: Takeoff): readonly OrderLine[] {
  if (!boards) return [];
  const { problem, plan } = boards;
  return problem.stock
    .filter(({ from }) => from === 'yard')
    .toSorted((a, b) => a.length - b.length)
    .flatMap(({ id, length: long }) => {
      const count = plan.boards.filter((one) => one.from === 'yard' && one.stock === id).length;
      const { depth, thickness } = DRESSED[job.practices.formBoard];
      const cubicMetres = (long / METRE) * (depth / METRE) * (thickness / METRE);
      return line(job, {
        item: `board-${id}`,
        is: 'order-board',
        named: [text(problem.size), length(long)],
        count,
        unit: 'board',
        weight: count * cubicMetres * orderOf(job.practices).haul.lumber,
      });
    });
}

function bentLine(job: Job, { boards }: Takeoff): readonly OrderLine[] {
  return byLength(
    job,
    'bent-form',
    'order-bent-form',
    (boards?.curved ?? []).reduce((sum, run) => sum + run.length, 0),
  );
}

/** Something sold by the whole foot or metre: a price is of the unit that it was typed for. */
export function byLength(
  job: Job,
  item: string,
  is: OrderLine['is'],
  grid: Grid,
): readonly OrderLine[] {
  const metric = job.units === 'metric';
  const count = Math.ceil(grid / (metric ? METRE : FOOT));
  return line(job, {
    item: `${item}-${metric ? 'm' : 'ft'}`,
    is,
    count,
    unit: metric ? 'metre' : 'foot',
  });
}

function holdLines(job: Job, { stakes }: Takeoff): readonly OrderLine[] {
  if (!stakes) return [];
  const { fastening } = stakes;
  const driven = stakes.stakes.length;
  const braced = stakes.stakes.filter(({ kicker }) => kicker).length;
  const counted = (unit: (typeof HELD)[number][1]) =>
    HELD.filter(([, one]) => one === unit)
      .map(([hold]) => stakes.held.filter(({ how }) => how === hold).length)
      .reduce((sum, one) => sum + one, 0) +
    (unit === 'stake' ? driven : unit === 'kicker' ? braced : 0);
  const units: readonly (typeof HELD)[number][1][] = ['stake', 'kicker', 'spreader', 'weight'];
  const screws = fastening.by === 'screws';
  return [
    ...units.flatMap((unit) =>
      line(job, { item: unit, is: `order-${unit}`, count: counted(unit), unit }),
    ),
    ...line(job, {
      item: 'cleat',
      is: 'order-cleat',
      named: [length(job.practices.boards.cleatLength)],
      count: fastening.cleats,
      unit: 'cleat' satisfies CountUnit,
    }),
    ...line(job, {
      item: screws ? 'screw-box' : 'nail-box',
      is: screws ? 'order-screws' : 'order-nails',
      count: fastening.boxes,
      unit: 'box',
      weight: screws ? undefined : fastening.boxes * job.practices.fastening.nailBox,
    }),
  ];
}
