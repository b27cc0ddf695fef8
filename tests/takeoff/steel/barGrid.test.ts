import { describe, expect, test } from 'vitest';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { FOOT, INCH, POUND_KG } from '../../../src/units/grid.ts';
import { jobOf, post, shape } from '../outline/site.ts';
import { slab, steeled } from './steelJobs.ts';

const bars = (job: ReturnType<typeof slab>, change = {}) => {
  const barred = steeled(job, {
    kind: 'bars',
    bars: { ...job.practices.steel.bars, ...change },
  });
  return { job: barred, result: takeoff(barred).steel!.bars! };
};

describe('a grid, worked by hand', () => {
  // 20 × 12 ft, 3 in of cover: 19'-6" × 11'-6". #3 at 18 in.
  // Along: 11'-6" ÷ 18" = 7.67, 8 gaps, 9 bars of 19'-6". Across: 19'-6" ÷ 18" = 13, 14 bars of 11'-6".
  const { job, result } = bars(slab(20, 12));

  test('9 bars one way, 14 the other, 336 1/2 ft', () => {
    expect(result.lines.filter(({ way }) => way === 'along')).toHaveLength(9);
    expect(result.lines.filter(({ way }) => way === 'across')).toHaveLength(14);
    expect(result.laid / FOOT).toBeCloseTo(9 * 19.5 + 14 * 11.5, 3);
    expect(result.corners).toBe(0);
    expect(result.crossings).toBe(9 * 14);
  });

  test('bars of 20 ft: one each for 19\'-6" and for 11\'-6" makes 23, where the length alone asks for 17', () => {
    expect(result.cuts.plan.boards).toHaveLength(23);
    expect(result.cuts.least).toBe(17);
    expect(result.weight / POUND_KG).toBeCloseTo(23 * 20 * 0.376, 6);
    // #3 at 18 in: 0.11 × 12 ÷ 18.
    expect(result.area / (25.4 ** 2 / 0.3048)).toBeCloseTo(0.11 * (12 / 18), 9);
  });

  test('stands on the ticket, cut alike in one row', () => {
    const { figures, tables } = ticketOf(job, takeoff(job), 'steel');
    const of = (key: string) => figures.find((one) => one.key === key)?.value;
    expect(of('bars-to-buy')).toMatchObject({ count: 23 });
    // 126 crossings, every other one.
    expect(of('bar-ties')).toMatchObject({ count: 63 });
    expect(tables.map(({ key, rows }) => [key, rows.length])).toEqual([
      ['bar-lengths', 2],
      ['bar-buy', 1],
      ['bar-cuts', 2],
    ]);
  });

  test('a line longer than a bar is lapped 40 diameters: 15 in', () => {
    const long = bars(slab(31, 4)).result;
    expect(long.lap).toBe(15 * INCH);
    const along = long.lines.filter(({ way }) => way === 'along');
    expect(long.cuts.laps).toBe(along.length);
  });
});

describe('the real shape', () => {
  const notched = jobOf([
    shape('pad', 'pad', [
      [0, 0],
      [20, 0],
      [20, 6],
      [10, 6],
      [10, 12],
      [0, 12],
    ]),
    post('post', 5, 4, 1.5),
  ]);
  const { result } = bars(notched);

  test('a bar lies across the inside corner, a foot and more into the concrete, none round a post', () => {
    expect(result.corners).toBe(1);
    const [corner] = result.lines.filter(({ way }) => way === 'corner');
    const { from, to } = corner!;
    expect(corner!.length).toBe(4 * FOOT);
    // Its middle is 3 in from either edge of the corner at (10, 6), and 1/16 in more, towards (0, 0).
    const middle = { x: (from.x + to.x) / 2 / FOOT, y: (from.y + to.y) / 2 / FOOT };
    expect(middle.x).toBeCloseTo(10 - 0.25 - Math.SQRT1_2 / 192, 3);
    expect(middle.y).toBeCloseTo(6 - 0.25 - Math.SQRT1_2 / 192, 3);
    expect((to.x - from.x) * (to.y - from.y)).toBeLessThan(0);
  });

  test('bars stop at the notch and at the post, 3 in short of each', () => {
    for (const { from, to, way } of result.lines) {
      if (way === 'corner') continue;
      for (const { x, y } of [from, to]) {
        const inPad = x >= 0 && y >= 0 && x <= 20 * FOOT && y <= 12 * FOOT;
        const inNotch = x > 9.76 * FOOT && y > 5.76 * FOOT;
        expect(inPad && !inNotch, `${x / FOOT}, ${y / FOOT}`).toBe(true);
        expect(Math.hypot(x - 5 * FOOT, y - 4 * FOOT)).toBeGreaterThan(0.99 * FOOT);
      }
    }
    const broken = result.lines.filter(
      ({ from, to, way }) =>
        way === 'along' && from.y === to.y && Math.abs(from.y - 4 * FOOT) < FOOT,
    );
    expect(broken.length).toBeGreaterThanOrEqual(2);
  });
});

test.each([
  ['a lap past half a bar', { stockLength: 29 * INCH }],
  ['a corner bar longer than a bar', { cornerLength: 21 * FOOT }],
])('%s: withheld, and said how to mend it', (_, change) => {
  const job = slab(20, 12);
  const { steel, notes } = takeoff(
    steeled(job, { kind: 'bars', bars: { ...job.practices.steel.bars, ...change } }),
  );
  expect(steel?.bars).toBeUndefined();
  expect(notes.map(({ code, weight }) => `${weight} ${code}`)).toContain('stop bars-stock-short');
});
