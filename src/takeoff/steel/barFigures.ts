import type { Practices } from '../../job/job.ts';
import type { Figure, TicketTable } from '../figure.ts';
import { count, length, number, tapeLength, term, text, weight } from '../quantity.ts';
import type { BarsResult, DowelsResult } from '../result.ts';

/** Bars to buy and to lay, with the least that their lengths alone would take. */
export function barFigures({ steel }: Practices, result: BarsResult): readonly Figure[] {
  const { bars } = steel;
  const { cuts, lines, laid, crossings } = result;
  const stock = {
    key: 'bar-stock-length' as const,
    value: length(bars.stockLength),
    from: 'practice' as const,
  };
  const lap = { key: 'bar-lap' as const, value: length(result.lap), from: 'practice' as const };
  return [
    {
      key: 'bar-lines',
      value: count(lines.length, 'bar'),
      working: () => ({
        of: 'bar-lines',
        formula: 'n = Σ (⌈B ÷ s⌉ + 1)',
        inputs: [
          { key: 'bar-spacing', value: length(bars.spacing), from: 'practice' },
          { key: 'bar-cover', value: length(bars.cover), from: 'practice' },
        ],
        rounding: 'up-each',
        source: ['geometry', 'user'],
        steps: (['along', 'across', 'corner'] as const)
          .map((way) => ({ way, of: lines.filter((line) => line.way === way).length }))
          .filter(({ of }) => of > 0)
          .map(({ way, of }) => ({
            label: { along: '∥', across: '⊥', corner: '∠' }[way],
            value: count(of, 'bar'),
          })),
      }),
    },
    {
      key: 'bar-length',
      role: 'net',
      value: length(laid),
      working: () => ({
        of: 'bar-length',
        formula: 'Σ L',
        inputs: [],
        rounding: 'none',
        source: ['geometry'],
      }),
    },
    {
      key: 'bars-to-buy',
      role: 'order',
      value: count(cuts.bars.length, 'bar'),
      working: () => ({
        of: 'bars-to-buy',
        formula: 'N ≥ ⌈(Σ L + k · o) ÷ l⌉',
        inputs: [
          { key: 'bar-length', value: length(laid), from: 'figure' },
          { key: 'bar-laps', value: number(cuts.laps), from: 'sketch' },
          lap,
          stock,
          { key: 'bars-least', value: count(cuts.least, 'bar'), from: 'figure' },
        ],
        rounding: 'up',
        source: ['geometry', 'user'],
      }),
    },
    {
      key: 'bars-least',
      value: count(cuts.least, 'bar'),
      working: () => ({
        of: 'bars-least',
        formula: 'N₀ = ⌈(Σ L + k · o) ÷ l⌉',
        inputs: [{ key: 'bar-length', value: length(laid), from: 'figure' }, lap, stock],
        rounding: 'up',
        source: ['geometry'],
      }),
    },
    {
      key: 'bar-weight',
      role: 'order',
      value: weight(result.weight),
      working: () => ({
        of: 'bar-weight',
        formula: 'W = N · l · q',
        inputs: [
          { key: 'bar-size', value: text(bars.size), from: 'practice' },
          { key: 'bars-to-buy', value: count(cuts.bars.length, 'bar'), from: 'figure' },
          stock,
        ],
        rounding: 'none',
        source: ['rebar-sizes'],
      }),
    },
    {
      key: 'bar-ties',
      value: count(Math.ceil(crossings / 2) + 2 * cuts.laps, 'tie'),
      working: () => ({
        of: 'bar-ties',
        formula: '⌈x ÷ 2⌉ + 2k',
        inputs: [
          { key: 'bar-crossings', value: number(crossings), from: 'sketch' },
          { key: 'bar-laps', value: number(cuts.laps), from: 'sketch' },
        ],
        rounding: 'up',
        source: ['common-practice'],
      }),
    },
  ];
}

/** Every bar to buy, and what is cut from it; bars cut alike stand in one row. */
export function barCutsTable({ cuts }: BarsResult): TicketTable {
  const rows = new Map<string, { times: number; pieces: readonly number[]; left: number }>();
  for (const { pieces, left } of cuts.bars) {
    const key = pieces.join();
    const row = rows.get(key) ?? { times: 0, pieces, left };
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

/** Pieces of one bar, those as long as each other together. */
function alike(pieces: readonly number[]) {
  const found: { length: number; times: number }[] = [];
  for (const piece of pieces) {
    const last = found[found.length - 1];
    if (last && last.length === piece) last.times += 1;
    else found.push({ length: piece, times: 1 });
  }
  return found;
}

/** Dowels, and how deep the holes are drilled. */
export function dowelFigures(
  { steel }: Practices,
  { size, places }: DowelsResult,
): readonly Figure[] {
  const { dowels } = steel;
  return [
    {
      key: 'dowels',
      role: 'order',
      value: count(places.length, 'dowel'),
      working: () => ({
        of: 'dowels',
        formula: 'Σ (⌈(L − 2e) ÷ s⌉ + 1)',
        inputs: [
          { key: 'dowel-diameter', value: tapeLength(size.diameter, 16), from: 'practice' },
          { key: 'dowel-length', value: length(size.length), from: 'practice' },
          { key: 'dowel-spacing', value: length(size.spacing), from: 'practice' },
          { key: 'dowel-from-corner', value: length(dowels.fromCorner), from: 'practice' },
          { key: 'dowel-set', value: term(`set-${dowels.set}`), from: 'practice' },
        ],
        rounding: 'up-each',
        source: dowels.by === 'table' ? ['dowel-tables'] : ['user'],
      }),
    },
    {
      key: 'dowel-hole',
      value: tapeLength(size.length / 2, 16),
      working: () => ({
        of: 'dowel-hole',
        formula: 'l ÷ 2',
        inputs: [{ key: 'dowel-length', value: length(size.length), from: 'practice' }],
        rounding: 'none',
        source: ['common-practice'],
      }),
    },
  ];
}
