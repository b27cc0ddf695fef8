import { describe, expect, test } from 'vitest';
import { makeBoard } from '../../src/drawing/dimension/board.ts';
import type { Mark } from '../../src/drawing/marks.ts';
import { drawStakes } from '../../src/drawing/stakes.ts';
import { en } from '../../src/drawing/words/en.ts';
import type { HeldPlace, Stake, StakesResult } from '../../src/takeoff/result.ts';
import { INCH, MILLIMETRE } from '../../src/units/grid.ts';

/** From the face: 1 1/2 in of board and half a stake. */
const OFF = 2.25 * INCH;

const stake: Stake = {
  at: { x: 0, y: -OFF },
  outward: -Math.PI / 2,
  run: 'R1',
  along: 10 * INCH,
};

function drawn(more: Partial<StakesResult>, ratio = 48): readonly Mark[] {
  const gridPerMm = ratio * MILLIMETRE;
  const board = makeBoard({
    gridPerMm,
    origin: { x: 0, y: 0 },
    units: 'feet-inches',
    words: en,
    lettering: { height: 2.8, label: 3, first: 9, step: 7 },
    keeps: true,
    hatched: [],
    extentMm: 100,
  });
  const none = { stakes: [], byRun: [], held: [], broken: [] };
  const fastening = { by: 'duplex-nails', count: 0, boxes: 0, cleats: 0 } as const;
  const band = { inner: 0, outer: 1.5 * INCH, thin: false };
  return drawStakes(board, { ...none, fastening, ...more }, band, OFF);
}

const symbols = (marks: readonly Mark[]) =>
  marks.flatMap((mark) => (mark.kind === 'symbol' ? [mark.symbol] : []));

function held(how: HeldPlace['how'], to?: HeldPlace['to']): HeldPlace {
  return { ...stake, how, why: 'pour', ...(to ? { to } : {}) };
}

describe('signs that tell stakes apart without colour', () => {
  test('driven, and set by hand', () => {
    expect(symbols(drawn({ stakes: [stake] }))).toEqual(['stake']);
    expect(symbols(drawn({ stakes: [{ ...stake, hand: 'h1' }] }))).toEqual(['stake-hand']);
  });

  test('a kicker is a line out from its stake to a foot', () => {
    const marks = drawn({ stakes: [{ ...stake, kicker: true }] });
    expect(symbols(marks)).toEqual(['dot', 'stake']);
    const line = marks.find((mark) => mark.kind === 'line');
    const foot = marks.find((mark) => mark.kind === 'symbol' && mark.symbol === 'dot');
    expect(line?.kind === 'line' && line.path.segments[0]!.to).toEqual(
      foot?.kind === 'symbol' && foot.at,
    );
    expect(foot?.kind === 'symbol' && foot.at.y).toBeLessThan(-OFF);
  });

  test('what holds the form where no stake can be driven', () => {
    expect(symbols(drawn({ held: [held('weight')] }))).toEqual(['weight']);
    expect(symbols(drawn({ held: [held('inside-stake')] }))).toEqual(['stake-inside']);
    expect(symbols(drawn({ held: [held('kicker')] }))).toEqual(['dot']);
    expect(symbols(drawn({ held: [held('spreader')] }))).toEqual(['end-bar', 'end-bar']);
  });

  test('a kicker from farther out and a spreader go to the place that was found', () => {
    const to = { x: 0, y: -40 * INCH };
    for (const how of ['kicker', 'spreader'] as const) {
      const marks = drawn({ held: [held(how, to)] });
      const far = marks.findLast((mark) => mark.kind === 'symbol');
      expect(far).toMatchObject({ at: to });
    }
  });

  test('an inside stake is drawn on the pour’s side of the face', () => {
    const [mark] = drawn({ held: [held('inside-stake', { x: 0, y: 0.75 * INCH })] });
    expect(mark?.kind === 'symbol' && mark.at.y).toBeGreaterThan(0);
  });

  test('a broken rule has a mark beside it, clear of the stake', () => {
    const broken = [
      { run: 'R1', rule: 'spacing', at: stake.at, found: 50 * INCH, allowed: 36 * INCH },
    ] as const;
    const marks = drawn({ stakes: [stake], broken });
    expect(symbols(marks)).toEqual(['stake', 'look-here']);
    const look = marks.at(-1)!;
    if (look.kind !== 'symbol') throw new Error('a symbol');
    const away = Math.hypot(look.at.x - stake.at.x, look.at.y - stake.at.y);
    expect(away / (48 * MILLIMETRE)).toBeGreaterThan(2.5);
  });

  test('a stake lies beside its board, not on it, and is drawn at its size where there is room', () => {
    for (const ratio of [5, 12, 48, 120]) {
      const [mark] = drawn({ stakes: [stake] }, ratio);
      if (mark?.kind !== 'symbol') throw new Error('a symbol');
      const half = (mark.size / 2) * ratio * MILLIMETRE;
      expect(-mark.at.y - half).toBeGreaterThanOrEqual(1.5 * INCH - 1);
      expect(mark.size).toBeGreaterThanOrEqual(1.8);
    }
    const [large] = drawn({ stakes: [stake] }, 5);
    expect(large?.kind === 'symbol' && large.size).toBeCloseTo(38.1 / 5, 6);
  });
});
