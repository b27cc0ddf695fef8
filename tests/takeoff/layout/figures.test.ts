import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { sayNote, sayQuantity, workingLines } from '../../../src/sheet/words/say.ts';
import type { TicketTable } from '../../../src/takeoff/figure.ts';
import {
  bandFigure,
  fitFigures,
  fitMovesTable,
  layoutTables,
  movesTable,
  offsetsTable,
  tapeFigures,
  tapeTiesTable,
  tieErrorFigure,
} from '../../../src/takeoff/layout/figures.ts';
import {
  LAYOUT_FIGURE_KEYS,
  LAYOUT_NOTE_CODES,
  LAYOUT_TABLE_KEYS,
} from '../../../src/takeoff/layout/keys.ts';
import type { Layout, LayoutChoice } from '../../../src/takeoff/layout/layout.ts';
import { tieName } from '../../../src/takeoff/layout/tapeFit.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { shape, wall } from '../outline/site.ts';
import { ELL, layout, padJob, TEN_BY_TWELVE } from './forms.ts';

const DIAGONAL = Math.round(Math.hypot(10, 12) * FOOT);
const NONE = [null, null, null, null] as const;

function read(first: number, second: number) {
  return {
    diagonals: [DIAGONAL + first * INCH, DIAGONAL + second * INCH],
    sides: NONE,
    holds: 0,
  } as const;
}

function said(table: TicketTable): readonly (readonly string[])[] {
  return table.rows.map((row) => row.map((cell) => sayQuantity(en, cell, 'feet-inches')));
}

function figuresOf({ ties, tapeTies, tapeSaid, tapeFit }: Layout) {
  const error = tapeTies && tieErrorFigure(tapeTies);
  return [
    bandFigure(ties),
    ...(error ? [error] : []),
    ...(tapeSaid ? tapeFigures(tapeSaid) : []),
    ...(tapeFit ? fitFigures(tapeFit) : []),
  ];
}

test('every figure opens to a working with a source, and all of it can be said in every style of units', () => {
  const whole = layout(padJob(TEN_BY_TWELVE), { tape: read(1 / 8, -1 / 8) });
  const drawn = layout(padJob(ELL)).ties.map((tie) => [tieName(tie), tie.length] as const);
  const fitted = layout(padJob(ELL), { fit: { tapes: Object.fromEntries(drawn) } });
  const figures = [...figuresOf(whole), ...fitFigures(fitted.tapeFit!)];
  expect(figures.map(({ key }) => key).sort()).toEqual([...LAYOUT_FIGURE_KEYS].sort());
  const tables = [...layoutTables(whole, 'feet-inches'), movesTable(whole.tapeSaid!)];
  expect(tables.map(({ key }) => key).sort()).toEqual([...LAYOUT_TABLE_KEYS].sort());
  for (const style of ['feet-inches', 'decimal-feet', 'metric'] as const) {
    for (const figure of figures) {
      const working = figure.working();
      expect(working.of).toBe(figure.key);
      expect(working.source.length).toBeGreaterThan(0);
      expect(workingLines(en, working, style).join('\n')).not.toMatch(
        /[{}]|NaN|Infinity|undefined/,
      );
    }
    const moves = [movesTable(whole.tapeSaid!), fitMovesTable(fitted.tapeFit!)];
    for (const table of [...layoutTables(whole, style), ...moves]) {
      for (const row of table.rows) {
        expect(row).toHaveLength(table.columns.length);
        for (const cell of row) {
          expect(sayQuantity(en, cell, style)).not.toMatch(/NaN|Infinity|undefined/);
        }
      }
    }
  }
});

describe('tables as they are read', () => {
  test('the moves: C and D to A by 3/16 in and a bit, nothing square to the side', () => {
    const { tapeSaid } = layout(padJob(TEN_BY_TWELVE), { tape: read(1 / 8, -1 / 8) });
    expect(said(movesTable(tapeSaid!))).toEqual([
      ['A', '0"', '–', '0"', '–', '0"'],
      ['B', '0"', '–', '0"', '–', '0"'],
      ['C', '3/16"', 'A', '0"', '–', '3/16"'],
      ['D', '3/16"', 'A', '0"', '–', '3/16"'],
    ]);
  });

  test('offsets to an eighth, and to a sixty-fourth beside it in inches alone', () => {
    const { offsets } = layout(
      padJob([
        [0, 0],
        [10, 0],
        [10, 12.0625],
        [0, 12.0625],
      ]),
    );
    // 12'-0 3/4" is the longest side: the line runs along it.
    expect(said(offsetsTable(offsets!, 'feet-inches'))[0]).toHaveLength(5);
    expect(offsetsTable(offsets!, 'metric').columns).toEqual(['corner', 'station', 'offset']);
    const odd = layout(
      padJob([
        [0, 0],
        [10 + 3 / 16 / 12, 0],
        [10 + 3 / 16 / 12, 8],
        [0, 8],
      ]),
    );
    const row = said(offsetsTable(odd.offsets!, 'feet-inches')).find(([letter]) => letter === 'B');
    expect(row).toEqual(['B', `10'-0 1/4"`, '0"', `10'-0 3/16"`, '0"']);
  });

  test('a corner at a mark, and one in line with both', () => {
    const slab = shape('existing-slab', 'old', [
      [10, 0],
      [20, 0],
      [20, 9],
      [10, 9],
    ]);
    const { tapeTies } = layout(padJob(TEN_BY_TWELVE, slab), {
      marks: [
        { feature: 'old', corner: 'old-0' },
        { feature: 'old', corner: 'old-1' },
      ],
    });
    const rows = said(tapeTiesTable(tapeTies!));
    expect(rows[0]!.slice(3)).toEqual(['in line', '0°', 'no fix']);
    expect(rows[1]!.slice(3)).toEqual(['–', '–', 'at the mark']);
    // Without a bound for one corner there is no figure for the worst.
    expect(tieErrorFigure(tapeTies!)).toBeUndefined();
  });
});

test('every note that is listed is given by some form, and has all its facts', () => {
  const square = padJob(TEN_BY_TWELVE);
  const slab = shape('existing-slab', 'old', [
    [-9, -4],
    [-1, -4],
    [-1, 16],
    [-9, 16],
  ]);
  const shed = wall('shed', [
    [-1, 2],
    [-0.5, 2],
    [-0.5, 9],
    [-1, 9],
  ]);
  const round = Array.from({ length: 70 }, (_, i): readonly [number, number] => [
    20 * Math.cos((2 * Math.PI * i) / 70),
    20 * Math.sin((2 * Math.PI * i) / 70),
  ]);
  const ends = (feature: string, one: number, other: number) =>
    [
      { feature, corner: `${feature}-${one}` },
      { feature, corner: `${feature}-${other}` },
    ] as const;
  const dot = wall(
    'dot',
    [
      [0, 20],
      [0, 20],
      [4, 20],
    ],
    { closed: false },
  );
  // A pad that fills the gap between four walls it is poured against has no form at all.
  const ring = [0, 1, 2, 3].map((i) => {
    const places = TEN_BY_TWELVE;
    return wall(`w${i}`, [places[i]!, places[(i + 1) % 4]!], { closed: false });
  });
  const ell = padJob(ELL);
  const ties = layout(ell).ties;
  const drawn = Object.fromEntries(ties.map((tie) => [tieName(tie), tie.length]));
  const setting = ties.filter(({ kind, sets }) => kind === 'diagonal' && sets).map(tieName);
  const across = setting[0]!;
  const last = setting.at(-1)!;
  const cases: readonly (readonly [Job, LayoutChoice])[] = [
    [square, {}],
    [square, { tape: read(0, 0) }],
    [square, { tape: read(1, -1) }],
    [square, { tape: read(3, 0) }],
    [square, { tape: read(60, -90) }],
    [square, { tape: read(300, 0) }],
    [square, { tape: { ...read(0, 0), sides: [10 * FOOT, 12 * FOOT, 10.04 * FOOT, 12 * FOOT] } }],
    [square, { pad: 'gone' }],
    [square, { baseline: { feature: 'gone', corner: 'x' } }],
    [padJob(TEN_BY_TWELVE, dot), { baseline: { feature: 'dot', corner: 'dot-0' } }],
    [padJob(TEN_BY_TWELVE, slab), { marks: ends('old', 0, 9) }],
    [padJob(TEN_BY_TWELVE, slab), { marks: ends('old', 0, 0) }],
    [padJob(TEN_BY_TWELVE, slab), { marks: ends('old', 1, 0) }],
    [padJob(TEN_BY_TWELVE, slab, shed), { marks: ends('old', 1, 2) }],
    [
      padJob([
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 12],
      ]),
      {},
    ],
    [padJob(round), {}],
    [ell, { fit: { tapes: { 'A–B': 14 * FOOT } } }],
    [ell, { fit: { tapes: drawn } }],
    [ell, { fit: { tapes: { ...drawn, [across]: drawn[across]! + 2 * FOOT } } }],
    [ell, { fit: { tapes: Object.fromEntries(setting.map((name) => [name, drawn[name]!])) } }],
    [
      ell,
      {
        fit: {
          tapes: Object.fromEntries(
            setting.map((name) => [name, drawn[name]! + (name === across ? FOOT / 4 : 0)]),
          ),
        },
      },
    ],
    [
      ell,
      {
        fit: {
          tapes: Object.fromEntries(
            setting.map((name) => [name, name === last ? FOOT / 2 : drawn[name]!]),
          ),
        },
      },
    ],
    [
      padJob([
        [0, 0],
        [8, 0],
        [0, 6],
      ]),
      {},
    ],
    [
      padJob([
        [0, 0],
        [10, 0],
        [3, 3],
        [0, 12],
      ]),
      {},
    ],
    [padJob(TEN_BY_TWELVE, ...ring), {}],
    [demoJob(), {}],
  ];
  const codes = new Set<string>();
  for (const [job, choice] of cases) {
    const { notes } = layout(job, choice);
    for (const note of Object.values(notes).flat()) {
      codes.add(note.code);
      expect(sayNote(en, note, 'feet-inches')).not.toMatch(/[{}]|NaN|Infinity|undefined/);
    }
  }
  // A form always has two corners of its own to hook a tape on.
  expect(LAYOUT_NOTE_CODES.filter((code) => !codes.has(code))).toEqual(['layout-no-marks']);
});
