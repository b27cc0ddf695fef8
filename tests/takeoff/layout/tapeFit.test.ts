import { describe, expect, test } from 'vitest';
import { leastSquares } from '../../../src/takeoff/layout/leastSquares.ts';
import { type FitReadings, type TapeFit, tieName } from '../../../src/takeoff/layout/tapeFit.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { chance } from '../../random/chance.ts';
import type { Places } from '../outline/site.ts';
import { codes, ELL, layout, padJob, TEN_BY_TWELVE } from './forms.ts';

type Feet = readonly (readonly [number, number])[];

function judge(places: Places, fit: FitReadings) {
  const { tapeFit, notes } = layout(padJob(places), { fit });
  return { fit: tapeFit, codes: codes(notes.tape) };
}

/** What a tape reads of every tie of a form, of which the corners stand elsewhere than drawn. */
function tapesOf(places: Places, stands: Feet): Readonly<Record<string, number>> {
  return Object.fromEntries(
    layout(padJob(places)).ties.map((tie) => {
      const [a, b] = [stands[tie.from.index]!, stands[tie.to.index]!];
      return [tieName(tie), FOOT * Math.hypot(b[0] - a[0], b[1] - a[1])];
    }),
  );
}

/** The move of every corner, in inches, in the frame of the pad where the side that stays lies along x. */
function moves(fit: TapeFit | undefined): Readonly<Record<string, readonly [number, number]>> {
  return Object.fromEntries(
    fit!.moves.map(({ corner, along, out }) => [corner.letter, [along / INCH, out / INCH]]),
  );
}

describe('what the tape said of an L', () => {
  test('corners that stand off come back to their places', () => {
    // C stands 1/2 in too far out, E 3/4 in to the right and 1/4 in too near: held by A–B, 14 ft.
    const stands: Feet = [
      [0, 0],
      [14, 0],
      [14, 6 + 0.5 / 12],
      [9, 6],
      [9 + 0.75 / 12, 11 - 0.25 / 12],
      [0, 11],
    ];
    const { fit, codes: said } = judge(ELL, { tapes: tapesOf(ELL, stands), holds: 'A–B' });
    const found = moves(fit);
    expect(found['A']).toEqual([0, 0]);
    expect(found['C']![0]).toBeCloseTo(0, 3);
    expect(found['C']![1]).toBeCloseTo(-0.5, 3);
    expect(found['E']![0]).toBeCloseTo(-0.75, 3);
    expect(found['E']![1]).toBeCloseTo(0.25, 3);
    expect(found['D']![1]).toBeCloseTo(0, 3);
    expect(said).toEqual(['tape-fit-off']);
  });

  test('a form that stands as drawn is let pass', () => {
    const { fit, codes: said } = judge(ELL, { tapes: tapesOf(ELL, ELL as unknown as Feet) });
    expect(Math.max(...fit!.moves.map(({ inAll }) => inAll))).toBeLessThan(1);
    expect(said).toEqual(['tape-fit-within']);
  });

  test('nothing is said before a tape was read, and what is still to be taped is named', () => {
    expect(judge(ELL, { tapes: {} })).toEqual({ fit: undefined, codes: [] });
    const all = layout(padJob(ELL)).ties;
    const across = all.filter(({ kind, sets }) => kind === 'diagonal' && sets).map(tieName);
    const { fit, codes: said } = judge(ELL, { tapes: { 'A–B': 14 * FOOT } });
    expect([fit, said]).toEqual([undefined, ['tape-more-needed']]);
    const note = layout(padJob(ELL), { fit: { tapes: { 'A–B': 14 * FOOT } } }).notes.tape[0]!;
    const named = note.facts!['tapes'];
    for (const name of across) expect(named?.of === 'text' && named.text).toContain(name);
  });

  test('as many tapes as it takes and no more: sides as drawn, and nothing checks them', () => {
    const all = layout(padJob(ELL)).ties;
    const setting = all.filter(({ kind, sets }) => kind === 'diagonal' && sets);
    expect(all.filter(({ sets }) => sets).length).toBe(2 * 6 - 3);
    const tapes = Object.fromEntries(setting.map((tie) => [tieName(tie), tie.length]));
    expect(judge(ELL, { tapes }).codes).toEqual([
      'tape-fit-within',
      'tape-fit-unchecked',
      'tape-sides-held',
    ]);
  });

  test('a tape that was read two feet wrong is found, and no move is given', () => {
    const tapes = { ...tapesOf(ELL, ELL as unknown as Feet) };
    for (const name of Object.keys(tapes)) {
      const { fit, codes: said } = judge(ELL, {
        tapes: { ...tapes, [name]: tapes[name]! + 2 * FOOT },
      });
      expect([name, fit]).toEqual([name, undefined]);
      expect(['tape-fit-misclosure', 'tape-fit-none']).toContain(said[0]);
    }
  });
});

test('of a form with four sides it says what the linkage says', () => {
  // Found by two ways that share no arithmetic: halving an angle, and least squares.
  const stands: Feet = [
    [0, 0],
    [10, 0],
    [10.05, 12],
    [0.05, 12],
  ];
  const name = (i: number, j: number) =>
    FOOT * Math.hypot(stands[j]![0] - stands[i]![0], stands[j]![1] - stands[i]![1]);
  const { tapeSaid } = layout(padJob(TEN_BY_TWELVE), {
    tape: {
      diagonals: [name(0, 2), name(1, 3)],
      sides: [name(0, 1), name(1, 2), name(2, 3), name(3, 0)],
      holds: 0,
    },
  });
  const meant = TEN_BY_TWELVE.map(([x, y]) => ({ x: x * FOOT, y: y * FOOT }));
  const pairs = [
    [0, 1],
    [1, 2],
    [2, 3],
    [0, 3],
    [0, 2],
    [1, 3],
  ] as const;
  const found = leastSquares(
    meant,
    pairs.map(([from, to]) => ({ from, to, length: name(from, to) })),
    [0, 1],
  );
  if (typeof found === 'string') return expect.fail(found);
  tapeSaid!.moves.forEach(({ corner, along, out }) => {
    const [at, is] = [meant[corner.index]!, found[corner.index]!];
    expect(at.x - is.x).toBeCloseTo(along, 2);
    expect(at.y - is.y).toBeCloseTo(out, 2);
  });
});

test('no small step makes the squares of what is left less, on 200 random forms with readings that disagree', () => {
  const luck = chance(99);
  for (let n = 0; n < 200; n++) {
    const count = luck.whole(3, 8);
    const meant = Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * (i + luck.between(-0.3, 0.3))) / count;
      const reach = luck.between(6, 12) * FOOT;
      return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
    });
    const lengths = meant.flatMap((a, from) =>
      meant.slice(from + 1).map((b, k) => ({
        from,
        to: from + 1 + k,
        length: Math.hypot(b.x - a.x, b.y - a.y) + luck.between(-0.5, 0.5) * INCH,
      })),
    );
    const found = leastSquares(meant, lengths, [0, 1]);
    if (typeof found === 'string') return expect.fail(found);
    const left = (places: typeof meant) =>
      lengths.reduce(
        (sum, { from, to, length }) =>
          sum +
          (Math.hypot(places[to]!.x - places[from]!.x, places[to]!.y - places[from]!.y) - length) **
            2,
        0,
      );
    const least = left([...found]);
    for (let k = 0; k < 10; k++) {
      const nudged = found.map(({ x, y }) => ({
        x: x + luck.between(-1, 1) * 64,
        y: y + luck.between(-1, 1) * 64,
      }));
      expect(left(nudged)).toBeGreaterThanOrEqual(least * (1 - 1e-9));
    }
  }
});

test('too few lengths, or lengths that leave a corner free, are no fit', () => {
  const square = [
    { x: 0, y: 0 },
    { x: FOOT, y: 0 },
    { x: FOOT, y: FOOT },
    { x: 0, y: FOOT },
  ];
  const side = (from: number, to: number) => ({ from, to, length: FOOT });
  expect(leastSquares(square, [side(0, 1), side(1, 2), side(2, 3), side(3, 0)], [0, 1])).toBe(
    'free',
  );
  // Five lengths, but the same one twice.
  expect(
    leastSquares(square, [side(0, 1), side(1, 2), side(2, 3), side(3, 0), side(0, 1)], [0, 1]),
  ).toBe('free');
});
