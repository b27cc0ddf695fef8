import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import type { Tie } from '../../../src/takeoff/layout/diagonals.ts';
import { passBand } from '../../../src/takeoff/layout/rules.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { formatLength } from '../../../src/units/length.ts';
import { reference } from '../../references/references.ts';
import { type Places, wall } from '../outline/site.ts';
import { codes, LEANING_IN, layout, padJob, TEN_BY_TWELVE } from './forms.ts';

function said(ties: readonly Tie[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    ties.map(({ from, to, length }) => [
      `${from.letter}${to.letter}`,
      formatLength(Math.round(length), 'feet-inches'),
    ]),
  );
}

/** How many independent lengths the setting ties hold: the rank of their rigidity matrix, by elimination. */
function rank(ties: readonly Tie[], corners: readonly { readonly letter: string }[]): number {
  const column = new Map(corners.map(({ letter }, i) => [letter, 2 * i]));
  const rows = ties.map(({ from, to, length }) => {
    const row = new Array<number>(2 * corners.length).fill(0);
    const [i, j] = [column.get(from.letter)!, column.get(to.letter)!];
    const [x, y] = [(to.at.x - from.at.x) / length, (to.at.y - from.at.y) / length];
    [row[i], row[i + 1], row[j], row[j + 1]] = [-x, -y, x, y];
    return row;
  });
  let found = 0;
  for (let at = 0; at < 2 * corners.length; at++) {
    const pivot = rows.slice(found).reduce(
      (best, row) => {
        return Math.abs(row[at]!) > Math.abs(best?.[at] ?? 0) ? row : best;
      },
      undefined as number[] | undefined,
    );
    if (!pivot || Math.abs(pivot[at]!) < 1e-9) continue;
    rows.splice(rows.indexOf(pivot), 1);
    rows.splice(found, 0, pivot);
    for (const row of rows.slice(found + 1)) {
      const share = row[at]! / pivot[at]!;
      for (let k = 0; k < row.length; k++) row[k]! -= share * pivot[k]!;
    }
    found++;
  }
  return found;
}

describe('sides and diagonals', () => {
  test('of a rectangle: four sides, both diagonals, and five of the six set it', () => {
    const { ties, notes } = layout(padJob(TEN_BY_TWELVE));
    expect(said(ties)).toEqual({
      AB: `10'-0"`,
      BC: `12'-0"`,
      CD: `10'-0"`,
      AD: `12'-0"`,
      AC: `15'-7 7/16"`,
      BD: `15'-7 7/16"`,
    });
    expect(ties.filter(({ sets }) => sets)).toHaveLength(5);
    expect(codes(notes.form)).toContain('layout-not-proof');
  });

  test('of a form that leans in: equal diagonals, but opposite sides tell', () => {
    const found = said(layout(padJob(LEANING_IN)).ties);
    expect(found['AC']).toBe(`15'-0"`);
    expect(found['BD']).toBe(`15'-0"`);
    expect([found['AB'], found['CD']]).toEqual([`10'-0"`, `8'-0"`]);
    expect([found['BC'], found['AD']]).toEqual([`12'-0 1/2"`, `12'-0 1/2"`]);
  });

  test('35 × 40 ft has a diagonal of 53.151 ft', () => {
    reference('navedtra-14043-diagonal');
    const { ties } = layout(
      padJob([
        [0, 0],
        [40, 0],
        [40, 35],
        [0, 35],
      ]),
    );
    const [diagonal] = ties.filter(({ kind }) => kind === 'diagonal');
    expect(diagonal!.length / FOOT).toBeCloseTo(53.151, 3);
  });

  const SHAPES: Readonly<Record<string, Places>> = {
    triangle: [
      [0, 0],
      [8, 0],
      [0, 6],
    ],
    rectangle: TEN_BY_TWELVE,
    'five corners': [
      [0, 0],
      [12, 0],
      [14, 7],
      [6, 11],
      [-1, 8],
    ],
    'L of six': [
      [0, 0],
      [14, 0],
      [14, 5],
      [6, 5],
      [6, 10],
      [0, 10],
    ],
    'U of eight': [
      [0, 0],
      [20, 0],
      [20, 12],
      [14, 12],
      [14, 6],
      [5, 6],
      [5, 12],
      [0, 12],
    ],
  };
  test.each(Object.entries(SHAPES))('%s: 2n − 3 lengths set it, all independent', (_, places) => {
    const { laid, ties } = layout(padJob(places));
    const n = places.length;
    const setting = ties.filter(({ sets }) => sets);
    expect(laid!.corners).toHaveLength(n);
    expect(setting).toHaveLength(2 * n - 3);
    expect(rank(setting, laid!.corners)).toBe(2 * n - 3);
    const pairs = ties.map(({ from, to }) => from.letter + to.letter);
    expect(new Set(pairs).size).toBe(pairs.length);
    // One more than needed at least, wherever there is one more.
    expect(ties.length > 2 * n - 3).toBe(n > 3);
  });

  test('a wall within the form is gone round where it can be', () => {
    const shed = wall('shed', [
      [4, 4],
      [9, 4],
      [9, 7],
      [4, 7],
    ]);
    const { ties } = layout(
      padJob(
        [
          [0, 0],
          [13, 0],
          [13, 11],
          [0, 11],
        ],
        shed,
      ),
    );
    const across = ties.filter(({ kind }) => kind === 'diagonal');
    expect(across.map(({ blocked }) => blocked)).toEqual([true, true]);
    expect(ties.filter(({ blocked }) => blocked)).toHaveLength(2);
  });

  test('of the sample job: only corners that a form meets, lettered as in its outline', () => {
    const { laid, ties } = layout(demoJob());
    const letters = laid!.corners.map(({ letter }) => letter).join('');
    expect(letters.startsWith('ABCDEF')).toBe(true);
    // The patio's own corner lies inside the concrete's old edge: nothing to form there.
    expect(letters).not.toContain('G');
    expect(ties.filter(({ sets }) => sets)).toHaveLength(2 * letters.length - 3);
    // A curved side is taped along its chord.
    expect(ties.filter(({ kind }) => kind === 'chord')).toHaveLength(1);
  });

  test('the pass band is a quarter inch to 20 ft, and grows from there', () => {
    expect(passBand(15.62 * FOOT)).toBe(INCH / 4);
    expect(passBand(20 * FOOT)).toBe(INCH / 4);
    expect(passBand(40 * FOOT)).toBe(INCH / 2);
  });
});

describe('what stands in the way of setting out', () => {
  test('no pour, no such pad', () => {
    const crossed = padJob([
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 12],
    ]);
    expect(codes(layout(crossed).notes.form)).toEqual(['layout-no-pour']);
    expect(layout(crossed).ties).toEqual([]);
    const gone = layout(padJob(TEN_BY_TWELVE), { pad: 'another' });
    expect(codes(gone.notes.form)).toEqual(['layout-pad-gone']);
    expect(gone.laid).toBeUndefined();
  });

  test('a form of very many corners', () => {
    const round = Array.from({ length: 70 }, (_, i): readonly [number, number] => {
      const angle = (2 * Math.PI * i) / 70;
      return [20 * Math.cos(angle), 20 * Math.sin(angle)];
    });
    expect(codes(layout(padJob(round)).notes.form)).toEqual(['layout-many-corners']);
  });
});
