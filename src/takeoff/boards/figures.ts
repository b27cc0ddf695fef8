import type { Practices } from '../../job/job.ts';
import type { Figure, Working, WorkingStep } from '../figure.ts';
import { count, length, money, number } from '../quantity.ts';
import type { BoardsResult } from '../result.ts';
import { boughtRows, type Grouped, groupedByStock } from './grouped.ts';
import { piecesByRun } from './piecesByRun.ts';
import type { BoardCost } from './plan.ts';
import { proofFigure } from './proofFigure.ts';

/** What the boards come to: to buy, from the truck, the work of cutting them, what is over, and how sure that is. */
export function boardFigures(practices: Practices, boards: BoardsResult): readonly Figure[] {
  const { problem, plan } = boards;
  if (problem.demands.length === 0) return [];
  const { cost } = plan;
  const bought = boughtRows(boards);
  const truck = groupedByStock(boards, 'truck');
  const priced = problem.pricedBy === 'money';
  return [
    {
      key: 'boards-bought',
      role: 'order',
      value: count(sumOf(bought), 'board'),
      working: () => ({
        ...byLength(bought),
        of: 'boards-bought',
        formula: 'n = Σ nᵢ',
        inputs: cuttingInputs(practices),
      }),
    },
    {
      key: priced ? 'boards-money' : 'boards-length-bought',
      role: 'order',
      value: priced ? money(cost.price, practices.currency) : length(cost.price),
      working: () => (priced ? moneyWorking(practices, bought) : lengthWorking(bought)),
    },
    {
      key: 'boards-from-truck',
      role: 'order',
      value: count(sumOf(truck), 'board'),
      working: () => ({ ...byLength(truck), of: 'boards-from-truck', formula: 't = Σ tᵢ' }),
    },
    {
      key: 'board-cuts',
      value: count(cost.cuts, 'cut'),
      working: () => ({
        of: 'board-cuts',
        formula: 'k = Σ kᵢ',
        inputs: cuttingInputs(practices),
        rounding: 'none',
        source: ['user', 'geometry'],
        steps: plan.boards.map(({ mark, cuts }) => ({ label: mark, value: count(cuts, 'cut') })),
      }),
    },
    {
      key: 'board-splices',
      value: count(cost.splices, 'splice'),
      working: () => splicesWorking(boards),
    },
    ...(cost.splices > 0 ? [cleatsFigure(practices, cost)] : []),
    {
      key: 'boards-waste',
      value: length(cost.waste),
      working: () => wasteWorking(boards),
    },
    proofFigure('boards-proof', practices, boards),
  ];
}

function sumOf(rows: readonly Grouped[]): number {
  return rows.reduce((sum, row) => sum + row.count, 0);
}

/** One step a length of board. */
function byLength(rows: readonly Grouped[]): Omit<Working, 'of' | 'formula'> {
  return {
    inputs: [],
    rounding: 'none',
    source: ['geometry', 'user'],
    steps: rows.map(
      (row): WorkingStep => ({
        label: row.marks.join(', '),
        value: count(row.count, 'board'),
        template: '{0} × {1}',
        values: [number(row.count), length(row.length)],
      }),
    ),
  };
}

function cuttingInputs({ boards }: Practices): Working['inputs'] {
  return [
    { key: 'saw-kerf', value: length(boards.kerf), from: 'practice' },
    { key: 'shortest-piece', value: length(boards.shortest), from: 'practice' },
  ];
}

function moneyWorking({ currency }: Practices, bought: readonly Grouped[]): Working {
  return {
    of: 'boards-money',
    formula: 'C = Σ nᵢ · pᵢ',
    inputs: [],
    rounding: 'none',
    source: ['user'],
    steps: bought.map(
      (row): WorkingStep => ({
        label: row.marks.join(', '),
        value: money(row.count * row.price, currency),
        template: '{0} × {1}',
        values: [number(row.count), money(row.price, currency)],
      }),
    ),
  };
}

function lengthWorking(bought: readonly Grouped[]): Working {
  return {
    of: 'boards-length-bought',
    formula: 'L = Σ nᵢ · lᵢ',
    inputs: [],
    rounding: 'none',
    source: ['user'],
    steps: bought.map(
      (row): WorkingStep => ({
        label: row.marks.join(', '),
        value: length(row.count * row.length),
        template: '{0} × {1}',
        values: [number(row.count), length(row.length)],
      }),
    ),
  };
}

function splicesWorking({ problem, plan }: BoardsResult): Working {
  const pieces = piecesByRun(plan);
  return {
    of: 'board-splices',
    formula: 's = Σ (pᵢ − 1)',
    inputs: [],
    rounding: 'none',
    source: ['geometry'],
    steps: problem.demands
      .filter(({ run }) => pieces.get(run)!.length > 1)
      .map(({ run }) => ({
        label: run,
        value: count(pieces.get(run)!.length - 1, 'splice'),
        template: '{0} − {1}',
        values: [number(pieces.get(run)!.length), number(1)],
      })),
  };
}

function cleatsFigure({ boards }: Practices, { splices }: BoardCost): Figure {
  return {
    key: 'board-cleats',
    role: 'order',
    value: count(splices, 'cleat'),
    working: () => ({
      of: 'board-cleats',
      formula: 'c = s',
      inputs: [
        { key: 'board-splices', value: count(splices, 'splice'), from: 'figure' },
        { key: 'cleat-length', value: length(boards.cleatLength), from: 'practice' },
      ],
      rounding: 'none',
      source: ['common-practice', 'user'],
    }),
  };
}

function wasteWorking({ problem, plan }: BoardsResult): Working {
  const used = plan.boards.reduce((sum, board) => sum + board.length, 0);
  const needed = problem.demands.reduce((sum, { need }) => sum + need, 0);
  return {
    of: 'boards-waste',
    formula: 'w = Σ B − Σ L',
    inputs: [
      { key: 'boards-used', value: length(used), from: 'figure' },
      { key: 'boards-needed', value: length(needed), from: 'sketch' },
    ],
    rounding: 'none',
    source: ['geometry'],
    steps: plan.boards
      .filter(({ left }) => left > 0)
      .map(({ mark, left }) => ({ label: mark, value: length(left) })),
  };
}
