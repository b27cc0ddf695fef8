import { expect, test } from 'vitest';
import { cutBars, lappedLengths } from '../../../src/takeoff/steel/barCutting.ts';

test.each([
  [20, [20]],
  [21, [20, 3]],
  [38, [20, 20]],
  [38.5, [20, 20, 2.5]],
])('a line of %f ft of 20 ft bars lapped 2 ft: %j', (line, lengths) => {
  expect(lappedLengths(line, 20, 2)).toEqual(lengths);
});

test('short lengths come out of one bar; the least is by length, laps counted', () => {
  expect(cutBars([12, 8, 10, 10], 20, 2)).toEqual({
    bars: [
      { pieces: [12, 8], left: 0 },
      { pieces: [10, 10], left: 0 },
    ],
    least: 2,
    laps: 0,
  });
  // 30 ft in two: 20 and 12; the 8 that is left takes the 7.
  expect(cutBars([30, 7], 20, 2)).toMatchObject({
    bars: [{ pieces: [20] }, { pieces: [12, 7], left: 1 }],
    least: 2,
    laps: 1,
  });
});

test('never fewer bars than the length takes, and every length is cut once', () => {
  let state = 7;
  const draw = () => {
    state = (state * 16_807) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  for (let i = 0; i < 300; i++) {
    const lines = Array.from({ length: 1 + Math.floor(draw() * 20) }, () =>
      Math.ceil(draw() * 900),
    );
    const { bars, least, laps } = cutBars(lines, 240, 24);
    expect(bars.length).toBeGreaterThanOrEqual(least);
    const cut = bars.flatMap(({ pieces }) => pieces);
    const laid = lines.reduce((sum, line) => sum + line, 0);
    expect(cut.reduce((sum, piece) => sum + piece, 0)).toBe(laid + laps * 24);
    for (const { pieces, left } of bars) {
      expect(pieces.reduce((sum, piece) => sum + piece, left)).toBe(240);
      expect(left).toBeGreaterThanOrEqual(0);
    }
  }
});
