import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import type { LaidCorner } from '../../../src/takeoff/layout/corners.ts';
import { crossing, tapeTie, tieError } from '../../../src/takeoff/layout/tapeTies.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { formatLength } from '../../../src/units/length.ts';
import { shape } from '../outline/site.ts';
import { codes, layout, padJob, TEN_BY_TWELVE } from './forms.ts';

function at(x: number, y: number): LaidCorner {
  return { letter: 'A', index: 0, at: { x: Math.round(x * FOOT), y: Math.round(y * FOOT) } };
}
const ZERO = { x: 0, y: 0 };
const TEN = { x: 10 * FOOT, y: 0 };

function feetInches(length: number): string {
  return formatLength(Math.round(length), 'feet-inches');
}

describe('tape ties', () => {
  test(`marks (0, 0) and (10, 0), point (6, 8) ft: 10'-0" and 8'-11 5/16"`, () => {
    // Worked by hand: √(36 + 64), √(16 + 64).
    const tie = tapeTie(at(6, 8), ZERO, TEN, false);
    expect([feetInches(tie.first), feetInches(tie.second)]).toEqual([`10'-0"`, `8'-11 5/16"`]);
    expect(tie.side).toBe('left');
    // Its twin behind the line has the same ties, and the other side.
    const twin = tapeTie(at(6, -8), ZERO, TEN, false);
    expect([twin.first, twin.second, twin.side]).toEqual([tie.first, tie.second, 'right']);
    // cos γ = ((−6)(4) + 64) ÷ (10 · 8.944) = 0.4472.
    expect(tie.angle).toBeCloseTo(63.435, 3);
  });

  test('x = (a² − b² + c²) ÷ 2c', () => {
    const found = crossing(10, Math.sqrt(80), 10)!;
    expect(found.x).toBeCloseTo(6, 12);
    expect(found.y).toBeCloseTo(8, 12);
    expect(crossing(2, 3, 10)).toBeUndefined();
    expect(crossing(20, 3, 10)).toBeUndefined();
  });

  test('the error of a small slip is e ÷ min(sin γ/2, cos γ/2)', () => {
    for (let degrees = 4; degrees < 177; degrees += 6) {
      const half = ((degrees / 2) * Math.PI) / 180;
      // Both tapes alike long, 10, crossing at γ: marks 20 sin γ/2 apart.
      const found = tieError(10, 10, 20 * Math.sin(half), 1e-7)!;
      const rule = 1e-7 / Math.min(Math.sin(half), Math.cos(half));
      expect(found / rule).toBeCloseTo(1, 4);
    }
    // As the docstring says of 90° and 30°.
    expect(tieError(10, 10, Math.SQRT2 * 10, 1e-6)! / 1e-6).toBeCloseTo(Math.SQRT2, 3);
    expect(tieError(10, 10, 20 * Math.sin(Math.PI / 12), 1e-6)! / 1e-6).toBeCloseTo(3.864, 3);
  });

  test('no slip within the reading does worse than the error says', () => {
    const e = INCH / 8 / FOOT;
    for (const [a, b, c] of [
      [10, Math.sqrt(80), 10],
      [12, 4, 10],
      [6, 6, 11],
      [30, 28, 5],
    ] as const) {
      const most = tieError(a, b, c, e)!;
      const meant = crossing(a, b, c)!;
      for (let i = -10; i <= 10; i++) {
        for (let j = -10; j <= 10; j++) {
          const off = crossing(a + (i * e) / 10, b + (j * e) / 10, c)!;
          expect(Math.hypot(off.x - meant.x, off.y - meant.y)).toBeLessThanOrEqual(most * 1.0001);
        }
      }
    }
  });

  test('an eighth of an inch at a square crossing makes 3/16 in, at 30° almost half an inch', () => {
    const square = tapeTie(at(5, 5), ZERO, TEN, false);
    expect(square.error! / INCH).toBeCloseTo(0.177, 3);
    expect(square.flat).toBe(false);
    // 5 ft either side of a point 18.66 ft out: 2 atan(5 ÷ 18.66) = 30°.
    const flat = tapeTie(at(5, 18.6603), ZERO, TEN, false);
    expect(flat.angle).toBeCloseTo(30, 3);
    expect(flat.error! / INCH).toBeCloseTo(0.483, 2);
  });

  test('warns under 30° and over 150°, and gives no bound where the arcs may miss each other', () => {
    expect(tapeTie(at(5, 18.7), ZERO, TEN, false).flat).toBe(true);
    expect(tapeTie(at(5, 18.6), ZERO, TEN, false).flat).toBe(false);
    // 2 atan(5 ÷ 1.34) = 150°.
    expect(tapeTie(at(5, 1.33), ZERO, TEN, false).flat).toBe(true);
    expect(tapeTie(at(5, 1.35), ZERO, TEN, false).flat).toBe(false);
    const between = tapeTie(at(5, 0), ZERO, TEN, false);
    expect([between.side, between.angle]).toEqual(['in-line', 180]);
    expect(between.error).toBeUndefined();
    const beyond = tapeTie(at(15, 0), ZERO, TEN, false);
    expect([beyond.side, beyond.angle, beyond.flat]).toEqual(['in-line', 0, true]);
  });

  test('a corner at a mark needs no tape', () => {
    const tie = tapeTie(at(0, 0), ZERO, TEN, false);
    expect([tie.atMark, tie.flat, tie.error]).toEqual([true, false, undefined]);
  });
});

describe('marks', () => {
  const slab = shape('existing-slab', 'old', [
    [-9, -4],
    [-1, -4],
    [-1, 16],
    [-9, 16],
  ]);

  test('stand already by default, and the best two of them are taken', () => {
    const { marks, tapeTies } = layout(padJob(TEN_BY_TWELVE, slab));
    expect(marks.map(({ feature, letter }) => feature + letter)).toEqual([
      'oldA',
      'oldB',
      'oldC',
      'oldD',
      'padA',
      'padB',
      'padC',
      'padD',
    ]);
    const worst = (rows: readonly { readonly error?: number }[]) =>
      Math.max(...rows.map(({ error = Number.POSITIVE_INFINITY }) => error));
    const chosen = worst(tapeTies!.rows);
    const old = marks.filter(({ feature }) => feature === 'old');
    for (const one of old) {
      for (const other of old) {
        if (one === other) continue;
        const all = layout(padJob(TEN_BY_TWELVE, slab), { marks: [one, other] }).tapeTies!;
        expect(chosen).toBeLessThanOrEqual(worst(all.rows));
      }
    }
  });

  test('on a bare site are two corners that were set first', () => {
    const { tapeTies } = layout(padJob(TEN_BY_TWELVE));
    expect(tapeTies!.marks.map(({ kind }) => kind)).toEqual(['pad', 'pad']);
    expect(tapeTies!.rows.filter(({ atMark }) => atMark)).toHaveLength(2);
  });

  test('that are gone or the same place are said so, and no tie is given', () => {
    const job = padJob(TEN_BY_TWELVE, slab);
    const a = { feature: 'old', corner: 'old-0' };
    const gone = layout(job, { marks: [a, { feature: 'old', corner: 'x' }] });
    expect(gone.tapeTies).toBeUndefined();
    expect(codes(gone.notes.ties)).toEqual(['layout-mark-gone']);
    const same = layout(job, { marks: [a, a] });
    expect(same.tapeTies).toBeUndefined();
    expect(codes(same.notes.ties)).toEqual(['layout-marks-coincide']);
  });

  test('of the sample job put every corner back to its place', () => {
    const { tapeTies } = layout(demoJob());
    const [one, other] = tapeTies!.marks;
    const c = Math.hypot(other.at.x - one.at.x, other.at.y - one.at.y);
    const [ux, uy] = [(other.at.x - one.at.x) / c, (other.at.y - one.at.y) / c];
    for (const { corner, first, second, side } of tapeTies!.rows) {
      const found = crossing(first, second, c) ?? { x: first, y: 0 };
      const y = side === 'right' ? -found.y : found.y;
      expect(one.at.x + ux * found.x - uy * y).toBeCloseTo(corner.at.x, 0);
      expect(one.at.y + uy * found.x + ux * y).toBeCloseTo(corner.at.y, 0);
    }
  });
});
