import type { Job } from '../../job/job.ts';
import type { Quantity, TicketTable } from '../figure.ts';
import { length, money, number, term, text } from '../quantity.ts';
import type { BoardsResult } from '../result.ts';
import { boughtRows } from './grouped.ts';
import { keptRests } from './leftovers.ts';
import { piecesByRun } from './piecesByRun.ts';

/** The boards by run, the cut list, what to buy, and what is left that is worth keeping. */
export function boardTables(job: Job, boards: BoardsResult): readonly TicketTable[] {
  if (boards.problem.demands.length === 0) return [];
  const rests = keptRests(job, boards.plan);
  const bought = boughtRows(boards);
  return [
    runsTable(boards),
    cutList(boards),
    ...(bought.length > 0 ? [buyTable(job, boards)] : []),
    ...(rests.length > 0
      ? [
          {
            key: 'board-rests',
            columns: ['board', 'board-left'],
            rows: rests.map(({ mark, left }) => [text(mark), length(left)]),
          } as const,
        ]
      : []),
  ];
}

/** One row a run: how its boards end, what they must come to, and the pieces in their order. */
function runsTable({ problem, plan }: BoardsResult): TicketTable {
  const pieces = piecesByRun(plan);
  return {
    key: 'board-runs',
    columns: ['mark', 'board-start', 'board-end', 'board-need', 'board-pieces'],
    rows: problem.demands.map(({ run, start, end, need }) => [
      text(run),
      term(`end-${start.kind}`),
      term(`end-${end.kind}`),
      length(need),
      text(
        pieces
          .get(run)!
          .map(({ mark }) => mark)
          .join(' + '),
      ),
    ]),
  };
}

const AS_ABOVE: Quantity = text('');

/** One row a piece, the board named with its first. */
function cutList({ plan }: BoardsResult): TicketTable {
  return {
    key: 'board-cut-list',
    columns: [
      'board',
      'board-from',
      'board-length',
      'board-piece',
      'board-run',
      'length',
      'board-left',
    ],
    rows: plan.boards.flatMap((board) =>
      board.pieces.map((piece, nth) => {
        const last = nth === board.pieces.length - 1;
        return [
          ...(nth === 0
            ? [text(board.mark), term(`board-${board.from}`), length(board.length)]
            : [AS_ABOVE, AS_ABOVE, AS_ABOVE]),
          text(piece.mark),
          text(piece.run),
          length(piece.length),
          last ? length(board.left) : AS_ABOVE,
        ];
      }),
    ),
  };
}

/** One row a length; with prices where every one is known. */
function buyTable({ practices }: Job, boards: BoardsResult): TicketTable {
  const priced = boards.problem.pricedBy === 'money';
  return {
    key: 'board-buy',
    columns: priced
      ? ['board-length', 'board-count', 'board-price', 'board-sum']
      : ['board-length', 'board-count'],
    rows: boughtRows(boards).map((row) => [
      length(row.length),
      number(row.count),
      ...(priced
        ? [money(row.price, practices.currency), money(row.count * row.price, practices.currency)]
        : []),
    ]),
  };
}
