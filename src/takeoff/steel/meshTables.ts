import type { Practices } from '../../job/job.ts';
import type { TicketTable } from '../figure.ts';
import { count, length, money, number, term, text } from '../quantity.ts';
import type { MeshResult } from '../result.ts';

/** What is bought, what is cut from, the pieces, and what is left that is worth keeping. */
export function meshTables(practices: Practices, mesh: MeshResult): readonly TicketTable[] {
  const bought = mesh.plan.used.some(({ from }) => from === 'yard');
  return [
    ...(bought ? [meshBuyTable(practices, mesh)] : []),
    meshUsedTable(mesh),
    meshCutsTable(mesh),
    ...(mesh.plan.rests.length > 0 ? [meshRestsTable(mesh)] : []),
  ];
}

/** One row, as one kind is bought; with its price where every price is known. */
function meshBuyTable({ currency }: Practices, { plan, problem }: MeshResult): TicketTable {
  const bought = plan.used.filter(({ from }) => from === 'yard');
  const { form, length: long, width } = bought[0]!;
  const priced = problem.pricedBy === 'money';
  return {
    key: 'mesh-buy',
    columns: priced
      ? ['mesh-form', 'length', 'width', 'board-count', 'board-price', 'board-sum']
      : ['mesh-form', 'length', 'width', 'board-count'],
    rows: [
      [
        term(`form-${form}`),
        length(long),
        length(width),
        count(bought.length, form),
        ...(priced
          ? [money(plan.cost.price / bought.length, currency), money(plan.cost.price, currency)]
          : []),
      ],
    ],
  };
}

/** Every piece, its row and size, and the sheet that it is cut from. */
function meshCutsTable({ plan }: MeshResult): TicketTable {
  return {
    key: 'mesh-cuts',
    columns: ['piece', 'row', 'length', 'width', 'used-mesh'],
    rows: plan.pieces.map((piece) => [
      text(`${piece.mark}`),
      text(`${piece.row + 1}`),
      length(piece.length),
      length(piece.width),
      number(piece.used + 1),
    ]),
  };
}

/** Every sheet and roll, where it comes from, its size and what is left of a roll's length. */
function meshUsedTable({ plan }: MeshResult): TicketTable {
  return {
    key: 'mesh-used',
    columns: ['used-mesh', 'from', 'length', 'width', 'left'],
    rows: plan.used.map((one) => [
      number(one.mark),
      term(`from-${one.from}-${one.form}`),
      length(one.length),
      length(one.width),
      // A sheet is cut into, and what is left of it isn't one length.
      one.form === 'roll' ? length(one.length - one.taken) : text(''),
    ]),
  };
}

/** What is left of sheets and rolls, no smaller than the smallest piece. */
function meshRestsTable({ plan }: MeshResult): TicketTable {
  return {
    key: 'mesh-rests',
    columns: ['used-mesh', 'length', 'width'],
    rows: plan.rests.map((rest) => [
      number(rest.used + 1),
      length(rest.length),
      length(rest.width),
    ]),
  };
}
