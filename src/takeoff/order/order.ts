import type { Job } from '../../job/job.ts';
import { bidOf, orderOf } from '../../job/orderDefaults.ts';
import { priceOf } from '../../job/prices.ts';
import type { Money } from '../../units/money.ts';
import type { Figured } from '../notes.ts';
import { bidSums } from '../price/bid.ts';
import { added, timesCount } from '../price/cents.ts';
import { labour } from '../price/labour.ts';
import type { Takeoff } from '../result.ts';
import { compare } from '../truck/compare.ts';
import { haulOrder } from '../truck/haulOrder.ts';
import { bagLines, bagOrder, readyMixCount, soldBy } from './concrete.ts';
import { formLines } from './formLines.ts';
import { baseOf, cureLine, groundLines, jointLines, retarderOf } from './groundLines.ts';
import { line, type OrderLine } from './line.ts';
import { type Found, orderNotes } from './orderNotes.ts';
import type { BagOrder, OrderResult, TaskHours } from './orderResult.ts';
import { steelLines } from './steelLines.ts';

/**
 * Everything that the tickets ask for in one list, what it costs and weighs by the user's own prices, and from there
 * bags against truck, trips and bid. What can't be reckoned is absent, and a note says what is still to be typed. A line
 * without a price is in no sum; a bid is made only of a whole order.
 * @param soFar All that was figured before.
 */
export function order(job: Job, soFar: Takeoff): Figured<OrderResult> {
  const { pour, mix } = soFar;
  if (!pour) return { notes: [] };
  const rules = orderOf(job.practices);
  const bags = mix && bagOrder(job, mix);
  const readyMix = mix && readyMixCount(job, mix.needed);
  const compared = mix && bags && compare(job, mix, bags);
  const comparison = typeof compared === 'object' && !('asked' in compared) ? compared : undefined;
  const lines = allLines(job, soFar, bags, readyMix, comparison?.onSite);
  const dear = lines.some(({ price, sum }) => price !== undefined && sum === undefined);
  const sums = lines.flatMap(({ sum }) => (sum === undefined ? [] : [sum]));
  const money = dear || sums.length === 0 ? undefined : added(sums);
  const hauled = haulOrder(lines, rules.haul);
  const haul = 'plan' in hauled ? hauled : undefined;
  const tasks = labour(job, soFar, haul?.plan.trips.length);
  const unpriced = lines.filter(({ price }) => price === undefined).length;
  const incomplete = soFar.notes.some(({ weight }) => weight === 'stop');
  const wage = labourMoney(tasks, priceOf(job, 'labour-hour'));
  const whole = !incomplete && unpriced === 0 && money !== undefined && wage !== undefined;
  const bid = whole ? bidSums(money, wage, rules.bid) : undefined;
  const base = baseOf(job, pour.area);
  const retarder = retarderOf(job, pour.area);
  const figured: OrderResult = {
    lines,
    unpriced,
    labour: tasks,
    ...(money === undefined ? {} : { money }),
    ...(bags ? { bags } : {}),
    ...(readyMix === undefined ? {} : { readyMix }),
    ...(base ? { base } : {}),
    ...(retarder ? { retarder } : {}),
    ...(rules.cure.use ? { cure: pour.area / rules.cure.coverage } : {}),
    ...(comparison ? { compare: comparison } : {}),
    ...(haul ? { haul } : {}),
    ...(bid ? { bid } : {}),
  };
  const found: Found = {
    hauled,
    incomplete,
    tooDear:
      dear ||
      compared === 'too-dear' ||
      (sums.length > 0 && money === undefined) ||
      (whole && !bid),
    asked: compared && typeof compared === 'object' && 'asked' in compared ? compared.asked : [],
  };
  return { figured, notes: orderNotes(job, soFar, figured, found) };
}

function allLines(
  job: Job,
  soFar: Takeoff,
  bags: BagOrder | undefined,
  readyMix: number | undefined,
  onSite: number | undefined,
): readonly OrderLine[] {
  const byTruck = orderOf(job.practices).concrete === 'ready-mix';
  return [
    ...(byTruck || !bags ? [] : bagLines(job, bags)),
    ...(byTruck && readyMix !== undefined ? readyMixLines(job, readyMix, onSite) : []),
    ...formLines(job, soFar),
    ...steelLines(job, soFar),
    ...jointLines(job, soFar),
    ...groundLines(job, soFar),
    ...cureLine(job, soFar),
    ...bidOf(job).extras.flatMap(({ id, name, count, weight }) =>
      line(job, {
        item: `extra-${id}`,
        is: 'order-extra',
        named: [{ of: 'text', text: name }],
        count,
        unit: 'unit',
        weight: weight === undefined ? undefined : weight * count,
      }),
    ),
  ];
}

/** The load and the fees that come with it, as far as they are known: to the thousandth of a yard or metre. */
function readyMixLines(job: Job, count: number, onSite: number | undefined): readonly OrderLine[] {
  const { readyMix } = orderOf(job.practices);
  const { unit, one, mark } = soldBy(job);
  const billed = Math.max(count, (readyMix.least ?? 0) / one);
  const short = (readyMix.short ?? 0) / one;
  const missing = Math.max(0, short - count);
  const fee = (item: string) => priceOf(job, item) !== undefined;
  const minutes = onSite === undefined ? 0 : Math.ceil((onSite - (readyMix.free ?? onSite)) * 60);
  const delivered = true;
  return [
    ...line(job, {
      item: `ready-mix-${mark}`,
      is: 'order-ready-mix',
      count: Math.round(billed * 1_000) / 1_000,
      unit,
      delivered,
    }),
    ...(missing > 0 && (fee('short-load') || !fee(`missing-${mark}`))
      ? line(job, { item: 'short-load', is: 'order-short-load', count: 1, unit: 'load', delivered })
      : []),
    ...(missing > 0 && fee(`missing-${mark}`)
      ? line(job, {
          item: `missing-${mark}`,
          is: 'order-missing',
          count: Math.round(missing * 1_000) / 1_000,
          unit,
          delivered,
        })
      : []),
    ...line(job, {
      item: 'waiting-minute',
      is: 'order-waiting',
      count: minutes,
      unit: 'minute',
      delivered,
    }),
  ];
}

/** What the hours cost, to the hundredth of an hour each; nothing while any task's are missing, or there are none. */
function labourMoney(tasks: readonly TaskHours[], rate: Money | undefined): Money | undefined {
  if (rate === undefined || tasks.length === 0) return undefined;
  return added(
    tasks.map(({ hours }) => (hours === undefined ? undefined : timesCount(rate, hours))),
  );
}
