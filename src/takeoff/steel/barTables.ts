import type { Practices } from '../../job/job.ts';
import type { TicketTable } from '../figure.ts';
import { count, length, money, term, text } from '../quantity.ts';
import type { BarsResult } from '../result.ts';

/** Bars by their length, what to buy, and what each is cut into. */
export function barTables(practices: Practices, bars: BarsResult): readonly TicketTable[] {
  return [barLengthsTable(bars), barBuyTable(practices, bars), barCutsTable(bars)];
}

/** Lines by which way they lie and how long they are, the longest first. */
function barLengthsTable({ lines }: BarsResult): TicketTable {
  return {
    key: 'bar-lengths',
    columns: ['bar-way', 'bar-count', 'length'],
    rows: (['along', 'across', 'corner'] as const).flatMap((way) => {
      const lengths = lines.filter((line) => line.way === way).map((line) => line.length);
      return alike(lengths.sort((a, b) => b - a)).map((group, i) => [
        i === 0 ? term(`way-${way}`) : text(''),
        count(group.times, 'bar'),
        length(group.length),
      ]);
    }),
  };
}

/** One row: bars are bought in one length. With the price where it is known. */
function barBuyTable({ currency, steel }: Practices, { size, cuts }: BarsResult): TicketTable {
  const { plan, problem } = cuts;
  const priced = problem.pricedBy === 'money';
  const each = problem.stock[0]!.price;
  const bought = plan.boards.length;
  return {
    key: 'bar-buy',
    columns: priced
      ? ['bar-size', 'length', 'board-count', 'board-price', 'board-sum']
      : ['bar-size', 'length', 'board-count'],
    rows: [
      [
        text(size),
        length(steel.bars.stockLength),
        count(bought, 'bar'),
        ...(priced ? [money(each, currency), money(bought * each, currency)] : []),
      ],
    ],
  };
}

/** Every bar to buy, and what is cut from it; bars cut alike stand in one row. */
function barCutsTable({ cuts }: BarsResult): TicketTable {
  const rows = new Map<string, { times: number; pieces: readonly number[]; left: number }>();
  for (const { pieces, left } of cuts.plan.boards) {
    const lengths = pieces.map((piece) => piece.length);
    const key = lengths.join();
    const row = rows.get(key) ?? { times: 0, pieces: lengths, left };
    rows.set(key, { ...row, times: row.times + 1 });
  }
  return {
    key: 'bar-cuts',
    columns: ['bar-count', 'bar-pieces', 'length', 'left'],
    rows: [...rows.values()].flatMap(({ times, pieces, left }) =>
      alike(pieces).map((piece, i) => [
        i === 0 ? count(times, 'bar') : text(''),
        text(`${piece.times} ×`),
        length(piece.length),
        i === 0 ? length(left) : text(''),
      ]),
    ),
  };
}

/** Lengths in their order, those as long as the one before together. */
function alike(lengths: readonly number[]) {
  const found: { length: number; times: number }[] = [];
  for (const one of lengths) {
    const last = found[found.length - 1];
    if (last && last.length === one) last.times += 1;
    else found.push({ length: one, times: 1 });
  }
  return found;
}
