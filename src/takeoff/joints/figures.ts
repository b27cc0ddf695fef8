import type { Practices } from '../../job/job.ts';
import type { Figure, TicketTable } from '../figure.ts';
import { count, length, term, text } from '../quantity.ts';
import type { JointsResult } from '../result.ts';

/** Isolation strip: its length, and the pieces to get. */
export function jointFigures({ isolation }: Practices, joints: JointsResult): readonly Figure[] {
  return [
    {
      key: 'strip-length',
      role: 'net',
      value: length(joints.total),
      working: () => ({
        of: 'strip-length',
        formula: 'L = Σ l',
        inputs: [],
        rounding: 'none',
        source: ['geometry', 'ready-mix-joints', 'user'],
        steps: joints.isolation.map((run, i) => ({ label: `${i + 1}`, value: length(run.length) })),
      }),
    },
    {
      key: 'strip-pieces',
      role: 'order',
      value: count(joints.pieces, 'piece'),
      working: () => ({
        of: 'strip-pieces',
        formula: 'n = ⌈L ÷ p⌉',
        inputs: [
          { key: 'strip-length', value: length(joints.total), from: 'figure' },
          { key: 'strip-piece-length', value: length(isolation.pieceLength), from: 'practice' },
        ],
        rounding: 'up',
        source: ['common-practice', 'user'],
      }),
    },
  ];
}

export function stripsTable(joints: JointsResult): TicketTable {
  return {
    key: 'strips',
    columns: ['mark', 'meets', 'length'],
    rows: joints.isolation.map((run, i) => [text(`${i + 1}`), term(run.kind), length(run.length)]),
  };
}
