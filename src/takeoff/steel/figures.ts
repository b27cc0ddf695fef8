import type { Practices } from '../../job/job.ts';
import type { Figure, TicketTable, WorkingInput, WorkingStep } from '../figure.ts';
import { area, count, length, text, weight, weightByArea } from '../quantity.ts';
import type { MeshPiece, SteelResult } from '../result.ts';
import { LEAST_OFFCUT, netCover } from './rules.ts';
import { wireUsed } from './styles.ts';

/** Mesh sheets from the layout, with the least by area beside them. */
export function steelFigures(practices: Practices, steel: SteelResult): readonly Figure[] {
  const { mesh } = practices.steel;
  const size = steel.sheet;
  const sheet: readonly WorkingInput[] = [
    { key: 'mesh-sheet-length', value: length(size.length), from: 'practice' },
    { key: 'mesh-sheet-width', value: length(size.width), from: 'practice' },
  ];
  return [
    {
      key: 'mesh-area',
      role: 'net',
      value: area(steel.insetArea),
      working: () => ({
        of: 'mesh-area',
        formula: 'A₁ = A(c)',
        inputs: [{ key: 'mesh-cover', value: length(mesh.cover), from: 'practice' }],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    {
      key: 'mesh-rows',
      value: count(steel.rows, 'row'),
      working: () => ({
        of: 'mesh-rows',
        formula: 'm = ⌈(B − o) ÷ (w − o)⌉',
        inputs: [...sheet.slice(1), { key: 'mesh-lap', value: length(size.lap), from: 'practice' }],
        rounding: 'up',
        source: ['estimating-book-mesh-lap', 'geometry'],
        steps: [
          {
            label: 'w − o',
            value: length(netCover(size.width, size.lap)),
            template: '{0} − {1}',
            values: [length(size.width), length(size.lap)],
          },
        ],
      }),
    },
    {
      key: 'mesh-sheets',
      role: 'order',
      value: count(steel.sheets, 'sheet'),
      working: () => ({
        of: 'mesh-sheets',
        formula: 'n = Σ ⌈(L − o) ÷ (l − o)⌉ − r',
        inputs: [
          ...sheet,
          { key: 'mesh-lap', value: length(size.lap), from: 'practice' },
          { key: 'mesh-least-offcut', value: length(LEAST_OFFCUT), from: 'practice' },
          { key: 'mesh-least', value: count(steel.leastByArea, 'sheet'), from: 'figure' },
        ],
        rounding: 'up-each',
        source: ['geometry', 'common-practice', 'user'],
        steps: rowSteps(steel.pieces),
      }),
    },
    {
      key: 'mesh-least',
      value: count(steel.leastByArea, 'sheet'),
      working: () => ({
        of: 'mesh-least',
        formula: 'n₀ = ⌈A₁ ÷ (l · w)⌉',
        inputs: [{ key: 'mesh-area', value: area(steel.insetArea), from: 'figure' }, ...sheet],
        rounding: 'up',
        source: ['geometry'],
      }),
    },
    {
      key: 'mesh-weight',
      role: 'order',
      value: weight(steel.weight),
      working: () => ({
        of: 'mesh-weight',
        formula: 'W = n · l · w · q',
        inputs: [
          { key: 'mesh-sheets', value: count(steel.sheets, 'sheet'), from: 'figure' },
          ...sheet,
          {
            key: 'mesh-weight-by-area',
            value: weightByArea(wireUsed(mesh).weight),
            from: 'practice',
          },
        ],
        rounding: 'none',
        source: ['welded-wire-table-1975', 'user'],
      }),
    },
  ];
}

/** One step a row: its pieces, from one end to the other. */
function rowSteps(pieces: readonly MeshPiece[]): readonly WorkingStep[] {
  const rows = new Map<number, MeshPiece[]>();
  for (const piece of pieces) rows.set(piece.row, [...(rows.get(piece.row) ?? []), piece]);
  return [...rows.entries()]
    .sort(([a], [b]) => a - b)
    .map(([row, those]) => ({
      label: `${row + 1}`,
      value: count(those.length, 'piece'),
      template: those.map((_, i) => `{${i}}`).join(' + '),
      values: those.map((piece) => length(piece.length)),
    }));
}

/** Every piece, and the sheet that it is cut from. */
export function meshCutsTable(steel: SteelResult): TicketTable {
  const pieces = [...steel.pieces].sort((a, b) => a.row - b.row || a.sheet - b.sheet);
  return {
    key: 'mesh-cuts',
    columns: ['row', 'sheet', 'length', 'width'],
    rows: pieces.map((piece) => [
      text(`${piece.row + 1}`),
      text(`${piece.sheet + 1}`),
      length(piece.length),
      length(piece.width),
    ]),
  };
}
