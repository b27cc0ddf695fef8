import type { LineStyle, Mark } from '../../drawing/marks.ts';
import type { Job } from '../../job/job.ts';
import type { Comparison } from '../../takeoff/order/orderResult.ts';
import { bagCost, truckCost } from '../../takeoff/truck/costs.ts';
import { formatNumber } from '../../units/format.ts';
import { CUBIC_METRE, CUBIC_YARD } from '../../units/grid.ts';
import { formatMoney } from '../../units/money.ts';
import { frame, furniture, line, text } from '../furniture.ts';
import { shortened } from '../lettering.ts';
import type { SheetPage } from '../page.ts';
import type { Words } from '../words/words.ts';
import type { Block } from './blocks.ts';

/** All of the plot, mm. */
export const PLOT_HEIGHT = 62;
const SMALL_MM = 2.5;
const LEFT = 17;
const TOP = 9;
const BOTTOM = 16;
/** Straight pieces that each line is drawn with: its jumps are then no wider than a hair. */
const PIECES = 240;

/** What bags and a truck cost over volume: two lines, this job's volume, and where the cheaper changes. */
export function costPlot(job: Job, compare: Comparison, width: number, words: Words): Block {
  return {
    height: PLOT_HEIGHT,
    leads: false,
    draw: (x, y) => plotMarks(job, compare, { x, y, width }, words),
  };
}

/** The plot as a page of its own, for a screen. */
export function costPage(job: Job, compare: Comparison, width: number, words: Words): SheetPage {
  const marks = plotMarks(job, compare, { x: 2, y: 1, width: width - 4 }, words);
  return {
    width,
    height: PLOT_HEIGHT + 2,
    title: words.layout.order.plot,
    parts: [furniture(marks)],
  };
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

function plotMarks(
  { practices, units }: Job,
  compare: Comparison,
  { x, y, width }: Place,
  { layout }: Words,
): readonly Mark[] {
  const says = layout.order;
  const { rates, volume } = compare;
  const unit = units === 'metric' ? CUBIC_METRE : CUBIC_YARD;
  const evens = compare.breakEvens.filter((one) => one.volume <= 6 * volume);
  const far = Math.max(2 * volume, ...evens.map((one) => 1.25 * one.volume));
  const bags = (at: number) => bagCost(rates.bags, at);
  const truck = (at: number) => truckCost(rates.truck, at);
  const high = Math.max(bags(far), truck(far), truck(0), bags(0), 1) * 1.05;
  const box = {
    x: x + LEFT,
    y: y + TOP,
    width: width - LEFT - 2,
    height: PLOT_HEIGHT - TOP - BOTTOM,
  };
  const across = (at: number) => box.x + (at / far) * box.width;
  const up = (cents: number) => box.y + box.height - (cents / high) * box.height;
  const curve = (cost: (at: number) => number, style: LineStyle): readonly Mark[] =>
    Array.from({ length: PIECES }, (_, i) => {
      const [from, to] = [(i * far) / PIECES, ((i + 1) * far) / PIECES];
      return line(across(from), up(cost(from)), across(to), up(cost(to)), style);
    }).filter((_, i) => style !== DASHED || i % 6 < 4);
  const money = (cents: number) => formatMoney(cents, practices.currency).replace(/\.00$/, '');
  const steps = ticks(far / unit).map((at) => ({ at: at * unit, said: formatNumber(at) }));
  const label = (said: string, atX: number, atY: number, anchor: 'start' | 'middle' | 'end') =>
    text(said, atX, atY, { height: SMALL_MM, anchor });
  const foot = box.y + box.height;
  return [
    text(shortened(says.plot, 3.2, width), x, y + 5, { height: 3.2, style: 'label' }),
    frame(box),
    ...ticks(high / 100).flatMap((at) => [
      line(box.x - 1, up(at * 100), box.x, up(at * 100), 'hairline'),
      label(money(at * 100), box.x - 1.5, up(at * 100) + 0.9, 'end'),
    ]),
    ...steps.flatMap(({ at, said }) => [
      line(across(at), foot, across(at), foot + 1, 'hairline'),
      label(said, across(at), foot + 4, 'middle'),
    ]),
    ...curve(bags, 'outline'),
    ...curve(truck, DASHED),
    line(across(volume), box.y, across(volume), foot, 'centre'),
    ...evens.map((one) =>
      line(
        across(one.volume),
        up(bags(one.volume)) - 1.6,
        across(one.volume),
        up(bags(one.volume)) + 1.6,
        'form',
      ),
    ),
    label(units === 'metric' ? 'm³' : 'yd³', box.x - 1.5, foot + 4, 'end'),
    ...key(x + 2, foot + 8.5, Math.min(40, (width - 2) / 3), says),
  ];
}

/** Drawn in dashes, so that the two are told apart in black. */
const DASHED = 'outline-existing';

/** Where the pen is down in the sample of each line, mm. */
const KEY_DASHES = {
  outline: [[0, 5.6]],
  [DASHED]: [
    [0, 2.2],
    [3.4, 5.6],
  ],
  centre: [
    [0, 2.2],
    [2.6, 3],
    [3.4, 5.6],
  ],
} as const;

function key(
  x: number,
  y: number,
  each: number,
  says: { readonly keyBags: string; readonly keyTruck: string; readonly keyJob: string },
): readonly Mark[] {
  const rows = [
    { said: says.keyBags, style: 'outline' },
    { said: says.keyTruck, style: DASHED },
    { said: says.keyJob, style: 'centre' },
  ] as const;
  return rows.flatMap(({ said, style }, i) => [
    ...KEY_DASHES[style].map(([from, to]) =>
      line(x + i * each + from, y, x + i * each + to, y, style === 'centre' ? 'hairline' : style),
    ),
    text(shortened(said, SMALL_MM, each - 7.5), x + i * each + 6.8, y + 0.9, { height: SMALL_MM }),
  ]);
}

/** Round numbers up to the most, three to six of them, without nought. */
function ticks(most: number): readonly number[] {
  const rough = most / 4;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 2.5, 5, 10].map((one) => one * power).find((one) => one >= rough)!;
  return Array.from({ length: Math.floor(most / step) }, (_, i) => (i + 1) * step);
}
