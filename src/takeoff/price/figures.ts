import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import { priceOf } from '../../job/prices.ts';
import type { Figure, TicketTable, WorkingInput } from '../figure.ts';
import { practice } from '../order/inputs.ts';
import type { OrderFigureKey } from '../order/keys.ts';
import type { OrderResult } from '../order/orderResult.ts';
import { count, list, money, share, term, text, weight } from '../quantity.ts';

/** Hours, and from cost to price. */
export function bidFigures(job: Job, { labour, bid }: OrderResult): readonly Figure[] {
  const { currency } = job.practices;
  const rules = orderOf(job.practices).bid;
  const hours = labour.reduce((sum, one) => sum + (one.hours ?? 0), 0);
  const cents = (amount: number) => money(amount, currency);
  const figures: Figure[] = [];
  if (labour.some((one) => one.hours !== undefined)) {
    figures.push({
      key: 'labour-hours',
      value: count(hours, 'hour'),
      working: () => ({
        of: 'labour-hours',
        formula: 'h = Σ hᵢ',
        inputs: [],
        rounding: 'none',
        source: ['user'],
      }),
    });
  }
  if (!bid) return figures;
  const figure = (key: OrderFigureKey & keyof typeof AMOUNTS): WorkingInput => ({
    key,
    value: cents(bid[AMOUNTS[key]]),
    from: 'figure',
  });
  const cost = [figure('bid-materials'), figure('bid-labour')];
  const rate = priceOf(job, 'labour-hour') ?? 0;
  const line = (
    key: OrderFigureKey & keyof typeof AMOUNTS,
    formula: string,
    inputs: readonly WorkingInput[],
    role?: Figure['role'],
  ): Figure => ({
    key,
    ...(role ? { role } : {}),
    value: cents(bid[AMOUNTS[key]]),
    working: () => ({ of: key, formula, inputs, rounding: 'cent', source: ['user'] }),
  });
  return [
    ...figures,
    line('bid-materials', 'M = Σ nᵢ · pᵢ', []),
    line('bid-labour', 'L = Σ hᵢ · w', [
      { key: 'labour-hours', value: count(hours, 'hour'), from: 'figure' },
      practice('labour-rate', cents(rate)),
    ]),
    line('bid-overhead', 'O = o · (M + L)', [
      ...cost,
      practice('overhead-share', share(rules.overhead)),
    ]),
    line(
      'bid-profit',
      rules.profitBy === 'margin'
        ? 'P = (M + L + O) ÷ (1 − p) − (M + L + O)'
        : 'P = p · (M + L + O)',
      [
        ...cost,
        figure('bid-overhead'),
        practice('profit-share', share(rules.profit)),
        practice('profit-by', term(`profit-${rules.profitBy}`)),
      ],
    ),
    line(
      'bid-tax',
      rules.taxOn === 'materials'
        ? 'T = t · M'
        : rules.taxOn === 'all'
          ? 'T = t · (M + L + O + P)'
          : 'T = 0',
      [practice('tax-share', share(rules.tax)), practice('tax-on', term(`tax-${rules.taxOn}`))],
    ),
    line(
      'bid-rounding',
      '⌈S ÷ s⌉ · s − S',
      [practice('price-step', cents(rules.step))],
      'rounding',
    ),
    line(
      'bid-price',
      'B = M + L + O + P + T + R',
      [
        ...cost,
        figure('bid-overhead'),
        figure('bid-profit'),
        figure('bid-tax'),
        figure('bid-rounding'),
      ],
      'order',
    ),
  ];
}

const AMOUNTS = {
  'bid-materials': 'materials',
  'bid-labour': 'labour',
  'bid-overhead': 'overhead',
  'bid-profit': 'profit',
  'bid-tax': 'tax',
  'bid-rounding': 'rounding',
  'bid-price': 'price',
} as const;

/** Everything that is bought. What isn't known is left blank: never a nought. */
export function orderTable({ practices: { currency } }: Job, { lines }: OrderResult): TicketTable {
  return {
    key: 'order-list',
    columns: ['order-what', 'order-count', 'weight', 'order-price', 'order-sum'],
    rows: lines.map(({ is, named, count: many, unit, weight: kg, price, sum }) => [
      list([term(is), ...named]),
      count(many, unit),
      kg === undefined ? text('–') : weight(kg),
      price === undefined ? text('–') : money(price, currency),
      sum === undefined ? text('–') : money(sum, currency),
    ]),
  };
}

/** Each task with its hours, and where they come from. */
export function labourTable({ labour }: OrderResult): readonly TicketTable[] {
  if (labour.length === 0) return [];
  return [
    {
      key: 'labour-by-task',
      columns: ['task', 'task-size', 'task-hours', 'task-from'],
      rows: labour.map(({ task, size, hours, from }) => [
        term(`task-${task}`),
        size ?? text('–'),
        hours === undefined ? text('–') : count(hours, 'hour'),
        term(`hours-${from}`),
      ]),
    },
  ];
}
