import { describe, expect, test } from 'vitest';
import type { TapeReadings, TapeSaid } from '../../../src/takeoff/layout/tapeSaid.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import type { Places } from '../outline/site.ts';
import { codes, LEANING_IN, layout, padJob, TEN_BY_TWELVE } from './forms.ts';

const NONE = [null, null, null, null] as const;

function judge(places: Places, tape: Partial<TapeReadings>) {
  const whole: TapeReadings = { diagonals: [null, null], sides: NONE, holds: 0, ...tape };
  const { tapeSaid, notes } = layout(padJob(places), { tape: whole });
  return { said: tapeSaid, codes: codes(notes.tape) };
}

function inches(said: TapeSaid | undefined, letter: string) {
  const move = said!.moves.find(({ corner }) => corner.letter === letter)!;
  return { along: move.along / INCH, out: move.out / INCH, inAll: move.inAll / INCH };
}

/** The true diagonals of a form: where its corners stand, in feet. */
function tapesOf(places: readonly (readonly [number, number])[]): {
  readonly diagonals: readonly [number, number];
  readonly sides: readonly [number, number, number, number];
} {
  const d = (i: number, j: number) =>
    FOOT * Math.hypot(places[j]![0] - places[i]![0], places[j]![1] - places[i]![1]);
  return { diagonals: [d(0, 2), d(1, 3)], sides: [d(0, 1), d(1, 2), d(2, 3), d(3, 0)] };
}

describe('what the tape said', () => {
  const DIAGONAL = Math.hypot(10, 12) * FOOT;

  // Worked in the trade notes by skew = D d ÷ 2ab over 12 ft; to the hundredth the true triangles say the same.
  test.each([
    [1 / 4, 0.2],
    [1 / 2, 0.39],
    [1, 0.78],
  ])('10 × 12 ft, diagonals %f in apart: the far side moves %f in', (apart, move) => {
    const half = (apart * INCH) / 2;
    const { said } = judge(TEN_BY_TWELVE, { diagonals: [DIAGONAL + half, DIAGONAL - half] });
    for (const letter of ['C', 'D']) {
      // A–C is the longer: the far side leans toward B, and has to go back toward A.
      expect(inches(said, letter).along).toBeLessThan(0);
      expect(inches(said, letter).inAll).toBeCloseTo(move, 2);
    }
    expect(inches(said, 'A').inAll).toBe(0);
    expect(inches(said, 'B').inAll).toBe(0);
    expect(said!.difference / INCH).toBeCloseTo(-apart, 9);
  });

  test('the other diagonal longer: the other way; another side held: its far side moves', () => {
    const half = INCH / 4;
    const tape = { diagonals: [DIAGONAL - half, DIAGONAL + half] as const };
    expect(inches(judge(TEN_BY_TWELVE, tape).said, 'C').along).toBeCloseTo(0.39, 2);
    // Held by B–C (12 ft), D and A move along it: 0.39 × 10 ÷ 12. B–D is longer, so the side leans toward C.
    const { said } = judge(TEN_BY_TWELVE, { ...tape, holds: 1 });
    expect(inches(said, 'B').inAll).toBe(0);
    expect(inches(said, 'D').along).toBeCloseTo(-0.325, 2);
    expect(inches(said, 'A').along).toBeCloseTo(-0.325, 2);
  });

  test('the moves bring a form back, whatever its shape, the lean, the side held and the way it was drawn', () => {
    const shapes: readonly Places[] = [
      TEN_BY_TWELVE,
      LEANING_IN,
      [
        [0, 0],
        [14, 1],
        [12, 9],
        [-2, 7],
      ],
      [
        [-2, 7],
        [12, 9],
        [14, 1],
        [0, 0],
      ],
    ];
    for (const places of shapes) {
      for (const holds of [0, 1, 2, 3]) {
        for (const lean of [-2, -0.2, 0.05, 1.5]) {
          const stands = leant(places, holds, lean);
          const { said } = judge(places, { ...tapesOf(stands), holds });
          // Where each corner stands, and the move that the tapes alone call for.
          const [i, j] = [holds, (holds + 1) % 4];
          const [a, b] = [places[i]!, places[j]!];
          const reach = Math.hypot(b[0] - a[0], b[1] - a[1]);
          const [ux, uy] = [(b[0] - a[0]) / reach, (b[1] - a[1]) / reach];
          places.forEach((meant, k) => {
            const [dx, dy] = [meant[0] - stands[k]![0], meant[1] - stands[k]![1]];
            const move = said!.moves.find(({ corner }) => corner.index === k)!;
            expect(move.along / FOOT).toBeCloseTo(ux * dx + uy * dy, 5);
            expect(Math.abs(move.out) / FOOT).toBeCloseTo(Math.abs(ux * dy - uy * dx), 5);
            expect(move.inAll / FOOT).toBeCloseTo(Math.hypot(dx, dy), 5);
          });
          expect(Math.abs(said!.misclosure)).toBeLessThan(1);
        }
      }
    }
  });

  test('equal diagonals with sides that are off: not square, and said so', () => {
    // A rectangle was drawn; what stands leans in at both ends, with equal diagonals.
    const drawn: Places = [
      [0, 0],
      [10, 0],
      [10, 12],
      [0, 12],
    ];
    const stands = [
      [0, 0],
      [10, 0],
      [9.98, 12],
      [0.02, 12],
    ] as const;
    const blind = judge(drawn, { diagonals: tapesOf(stands).diagonals });
    expect(blind.codes).toContain('tape-sides-unmeasured');
    const { said, codes: notes } = judge(drawn, tapesOf(stands));
    expect(said!.difference).toBeCloseTo(0, 6);
    expect(notes).toContain('tape-sides-off');
    expect(inches(said, 'C').along).toBeCloseTo(0.24, 2);
    expect(inches(said, 'D').along).toBeCloseTo(-0.24, 2);
  });

  test('within the band and out of it', () => {
    const tape = (apart: number) => ({
      diagonals: [DIAGONAL, DIAGONAL + apart * INCH] as const,
    });
    expect(judge(TEN_BY_TWELVE, tape(0.24)).codes).toContain('tape-within-band');
    expect(judge(TEN_BY_TWELVE, tape(0.26)).codes).toContain('tape-out-of-band');
    // A form drawn out of square is right when its diagonals differ as drawn.
    const slanted: Places = [
      [0, 0],
      [14, 1],
      [12, 9],
      [-2, 7],
    ];
    const { said, codes: notes } = judge(
      slanted,
      tapesOf(slanted as (readonly [number, number])[]),
    );
    expect(notes).toContain('tape-within-band');
    expect(Math.max(...said!.moves.map(({ inAll }) => inAll))).toBeLessThan(1);
  });

  test('nothing is judged before both diagonals are there', () => {
    const { said, codes: notes } = judge(TEN_BY_TWELVE, { diagonals: [DIAGONAL, null] });
    expect([said, notes]).toEqual([undefined, []]);
  });

  test('tapes that make no triangle are named, and no move is given', () => {
    const { said, codes: notes } = judge(TEN_BY_TWELVE, { diagonals: [23 * FOOT, DIAGONAL] });
    expect([said, notes]).toEqual([undefined, ['tape-no-triangle']]);
    const short = judge(TEN_BY_TWELVE, {
      diagonals: [DIAGONAL, DIAGONAL],
      sides: [2 * FOOT, null, null, null],
    });
    expect(short.codes).toEqual(['tape-no-triangle']);
    expect(judge(TEN_BY_TWELVE, { diagonals: [0, DIAGONAL] }).codes).toEqual(['tape-no-triangle']);
  });

  test('a diagonal misread by inches is caught by what the sides allow', () => {
    const { said, codes: notes } = judge(TEN_BY_TWELVE, {
      diagonals: [DIAGONAL + 2 * INCH, DIAGONAL],
    });
    expect(said).toBeUndefined();
    expect(notes).toEqual(['tape-misclosure', 'tape-sides-unmeasured']);
    // A form that truly leans as much has both diagonals off.
    const racked = judge(TEN_BY_TWELVE, { diagonals: [DIAGONAL + INCH, DIAGONAL - INCH] });
    expect(racked.codes).toContain('tape-out-of-band');
  });

  test('diagonals that no lean gives', () => {
    const { said, codes: notes } = judge(TEN_BY_TWELVE, { diagonals: [21 * FOOT, 8 * FOOT] });
    expect([said, notes]).toEqual([undefined, ['tape-cannot-close']]);
  });

  test('other shapes than four straight convex sides are left to the fit', () => {
    const tape = { diagonals: [FOOT, FOOT] as const };
    expect(
      judge(
        [
          [0, 0],
          [8, 0],
          [0, 6],
        ],
        tape,
      ).codes,
    ).toEqual([]);
    expect(
      judge(
        [
          [0, 0, 1],
          [10, 0],
          [10, 12],
          [0, 12],
        ],
        tape,
      ).codes,
    ).toEqual([]);
    expect(
      judge(
        [
          [0, 0],
          [10, 0],
          [3, 3],
          [0, 12],
        ],
        tape,
      ).codes,
    ).toEqual([]);
  });
});

/** The corners of a form whose sides keep their lengths when the side before the held one turns by so many degrees. */
function leant(places: Places, holds: number, degrees: number) {
  const at = (i: number) => places[(holds + i) % 4]!;
  const [a, b, c, d] = [at(0), at(1), at(2), at(3)];
  const turn = (degrees * Math.PI) / 180;
  const [dx, dy] = [d[0] - a[0], d[1] - a[1]];
  const moved: readonly [number, number] = [
    a[0] + dx * Math.cos(turn) - dy * Math.sin(turn),
    a[1] + dx * Math.sin(turn) + dy * Math.cos(turn),
  ];
  const far = Math.hypot(c[0] - d[0], c[1] - d[1]);
  const near = Math.hypot(c[0] - b[0], c[1] - b[1]);
  // Newton on the two lengths, from where it was: another way than the one under test.
  let [x, y]: readonly number[] = c as readonly number[];
  for (let i = 0; i < 50; i++) {
    const f = [
      (x! - moved[0]) ** 2 + (y! - moved[1]) ** 2 - far ** 2,
      (x! - b[0]) ** 2 + (y! - b[1]) ** 2 - near ** 2,
    ];
    const [p, q, r, s] = [
      2 * (x! - moved[0]),
      2 * (y! - moved[1]),
      2 * (x! - b[0]),
      2 * (y! - b[1]),
    ];
    const whole = p * s - q * r;
    [x, y] = [x! - (f[0]! * s - q * f[1]!) / whole, y! - (p * f[1]! - f[0]! * r) / whole];
  }
  const stands: (readonly [number, number])[] = [];
  stands[holds % 4] = [a[0], a[1]];
  stands[(holds + 1) % 4] = [b[0], b[1]];
  stands[(holds + 2) % 4] = [x!, y!];
  stands[(holds + 3) % 4] = moved;
  return stands;
}
