import { expect, test } from 'vitest';
import { chordOff } from '../../../src/takeoff/stakes/spacing.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, shape } from '../outline/site.ts';
import { staked } from './staked.ts';

test.each([
  // radius in ft, flat in in: chord in in, by hand from 2·√(2·R·f − f²)
  [2, 0.5, 9.747],
  [5, 0.5, 15.46],
  [10, 0.5, 21.886],
  [10, 0.25, 15.484],
])(
  'a board between stakes stands %f ft of radius off by %f in at a chord of %f in',
  (radius, flat, chord) => {
    expect(chordOff(radius * FOOT, flat * INCH) / INCH).toBeCloseTo(chord, 2);
  },
);

test('a radius less than that leaves all the way across', () => {
  expect(chordOff(INCH, 3 * INCH)).toBe(2 * INCH);
});

test('boards between stakes on an arc stand off it by no more than the practice says', () => {
  for (const radius of [1, 2, 3, 5, 8, 14]) {
    const job = jobOf([
      shape('pad', 'pad', [
        [0, 0],
        [2 * radius, 0],
        [2 * radius, 8, radius],
        [0, 8],
      ]),
    ]);
    const { stakes, forms } = staked(job);
    const at = forms.runs.findIndex(({ curved }) => curved);
    const { gap, spacing, governs } = stakes!.byRun[at]!;
    expect(governs).toBe('curve');
    expect(gap).toBeLessThanOrEqual(spacing + INCH / 16 + 1);
    const half = gap / (2 * radius * FOOT);
    expect(radius * FOOT * (1 - Math.cos(half))).toBeLessThanOrEqual(INCH / 2 + 8);
    expect(spacing).toBeLessThanOrEqual(18 * INCH);
  }
});

test('round a whole circle stakes move clear of what is there, and none is too far', () => {
  // A pad has corners: two half circles.
  const pad = shape('pad', 'pad', [
    [4, 0, 4],
    [-4, 0, 4],
  ]);
  const pipe = shape('no-stake-zone', 'pipe', [
    [3.5, -0.3],
    [5, -0.3],
    [5, 0.3],
    [3.5, 0.3],
  ]);
  const { stakes, forms } = staked(jobOf([pad, pipe]));
  expect(forms.runs).toHaveLength(1);
  const [run] = stakes!.byRun;
  expect(run!.held).toBe(0);
  expect(run!.gap).toBeLessThanOrEqual(run!.spacing + INCH / 16);
  for (const { at } of stakes!.stakes) {
    expect(at.x < 3.5 * FOOT || Math.abs(at.y) >= 0.3 * FOOT + 0.75 * INCH - 2).toBe(true);
  }
});
