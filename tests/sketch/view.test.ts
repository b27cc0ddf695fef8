import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blankJob } from '../../src/job/start.ts';
import {
  areInSight,
  CLOSEST,
  FARTHEST,
  fitView,
  panBy,
  pinch,
  stepAt,
  toJob,
  toScreen,
  type View,
  withInSight,
  zoomAt,
} from '../../src/sketch/view.ts';
import { FOOT, INCH, METRE } from '../../src/units/grid.ts';
import { jobOf, PAD, POST, post } from './jobs.ts';

const SIZE = { width: 800, height: 600 };
const SEEDED = { seed: 20, numRuns: 300 };

const views: fc.Arbitrary<View> = fc.record({
  center: fc.record({
    x: fc.integer({ min: -100 * METRE, max: 100 * METRE }),
    y: fc.integer({ min: -100 * METRE, max: 100 * METRE }),
  }),
  gridPerPx: fc.double({ min: CLOSEST, max: FARTHEST / 100, noNaN: true }),
});
const spots = fc.record({
  x: fc.double({ min: 0, max: 800, noNaN: true }),
  y: fc.double({ min: 0, max: 600, noNaN: true }),
});

describe('screen and site', () => {
  test('up on the page is up on the screen', () => {
    const view = { center: { x: 0, y: 0 }, gridPerPx: 100 };
    expect(toScreen(view, SIZE, { x: 1000, y: 2000 })).toEqual({ x: 410, y: 280 });
    expect(toJob(view, SIZE, { x: 410, y: 280 })).toEqual({ x: 1000, y: 2000 });
  });

  test('there and back is the same place, to half a grid unit', () => {
    fc.assert(
      fc.property(views, spots, (view, spot) => {
        const at = toJob(view, SIZE, spot);
        expect(Number.isInteger(at.x) && Number.isInteger(at.y)).toBe(true);
        const back = toScreen(view, SIZE, at);
        const slack = 0.51 / view.gridPerPx + 1e-6;
        expect(Math.abs(back.x - spot.x)).toBeLessThan(slack);
        expect(Math.abs(back.y - spot.y)).toBeLessThan(slack);
      }),
      SEEDED,
    );
  });
});

describe('looking', () => {
  test('closer or farther keeps what is under the pointer there', () => {
    fc.assert(
      fc.property(
        views,
        spots,
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        (view, spot, factor) => {
          const under = toJob(view, SIZE, spot);
          const after = toScreen(zoomAt(view, SIZE, spot, factor), SIZE, under);
          const slack = 1 / CLOSEST + 1e-3;
          expect(Math.abs(after.x - spot.x)).toBeLessThan(slack);
          expect(Math.abs(after.y - spot.y)).toBeLessThan(slack);
        },
      ),
      SEEDED,
    );
  });

  test('stops at the closest and the farthest look', () => {
    const view = { center: { x: 0, y: 0 }, gridPerPx: 100 };
    expect(zoomAt(view, SIZE, { x: 1, y: 1 }, 1e9).gridPerPx).toBe(CLOSEST);
    expect(zoomAt(view, SIZE, { x: 1, y: 1 }, 1e-9).gridPerPx).toBe(FARTHEST);
  });

  test('aside moves the site with the finger, and never loses it for good', () => {
    const view = { center: { x: 0, y: 0 }, gridPerPx: 100 };
    const moved = panBy(view, 30, 20);
    expect(toScreen(moved, SIZE, { x: 0, y: 0 })).toEqual({ x: 430, y: 320 });
    const far = panBy(view, 1e12, 1e12);
    expect(Number.isFinite(far.center.x) && Math.abs(far.center.x)).toBeLessThanOrEqual(
      400 * METRE,
    );
  });

  test('a pinch keeps the site under both fingers', () => {
    const view = { center: { x: 0, y: 0 }, gridPerPx: 1000 };
    const before = [
      { x: 300, y: 300 },
      { x: 400, y: 300 },
    ] as const;
    const after = [
      { x: 250, y: 340 },
      { x: 450, y: 340 },
    ] as const;
    const looked = pinch(view, SIZE, before, after);
    before.forEach((spot, index) => {
      const now = toScreen(looked, SIZE, toJob(view, SIZE, spot));
      expect(now.x).toBeCloseTo(after[index]?.x ?? 0, 1);
      expect(now.y).toBeCloseTo(after[index]?.y ?? 0, 1);
    });
  });
});

test('a typed corner off the screen brings the whole outline above the bar; one in sight moves nothing', () => {
  const view = { center: { x: 0, y: 0 }, gridPerPx: 100 };
  const start = { x: 0, y: 0 };
  expect(withInSight(view, SIZE, [start, { x: 30_000, y: -5_000 }], 160)).toBe(view);
  for (const last of [
    { x: 90_000, y: 4_000 },
    { x: 30_000, y: -20_000 },
  ]) {
    const next = withInSight(view, SIZE, [start, last], 160);
    expect(next.gridPerPx).toBeGreaterThanOrEqual(view.gridPerPx);
    for (const place of [start, last]) {
      const { x, y } = toScreen(next, SIZE, place);
      expect(x).toBeGreaterThan(40);
      expect(x).toBeLessThan(SIZE.width - 40);
      expect(y).toBeGreaterThan(40);
      expect(y).toBeLessThan(SIZE.height - 160 - 40);
    }
  }
});

test('places are in sight as long as none is at the edge of the screen or off it', () => {
  const view = { center: { x: 0, y: 0 }, gridPerPx: 100 };
  const corner = { x: 37_000, y: 27_000 };
  expect(areInSight(view, SIZE, [{ x: 0, y: 0 }, corner])).toBe(true);
  expect(
    areInSight(view, SIZE, [
      { x: 0, y: 0 },
      { ...corner, y: 28_000 },
    ]),
  ).toBe(false);
  expect(
    areInSight(view, SIZE, [
      { ...corner, x: -38_000 },
      { x: 0, y: 0 },
    ]),
  ).toBe(false);
});

describe('fitting', () => {
  test('shows every corner and the whole of a round, on a phone and on a laptop', () => {
    for (const size of [
      { width: 390, height: 500 },
      { width: 1280, height: 640 },
    ]) {
      const job = jobOf(PAD, post('far', 40, -8, 3));
      const view = fitView(job, size);
      const places = [
        { x: 0, y: 10 * FOOT },
        { x: 41.5 * FOOT, y: -9.5 * FOOT },
      ];
      for (const place of places) {
        const spot = toScreen(view, size, place);
        expect(spot.x).toBeGreaterThan(40);
        expect(spot.x).toBeLessThan(size.width - 40);
        expect(spot.y).toBeGreaterThan(40);
        expect(spot.y).toBeLessThan(size.height - 40);
      }
    }
  });

  test('an empty site and a lone post give a look that can be worked in', () => {
    expect(fitView(blankJob(), SIZE).gridPerPx * SIZE.width).toBeGreaterThan(5 * METRE);
    expect(fitView(jobOf(POST), SIZE).gridPerPx * SIZE.height).toBeGreaterThan(METRE);
    expect(Number.isFinite(fitView(jobOf(PAD), { width: 0, height: 0 }).gridPerPx)).toBe(true);
  });
});

test('steps are readings on a tape, coarser from farther off', () => {
  const at = (gridPerPx: number) => stepAt({ center: { x: 0, y: 0 }, gridPerPx }, 'feet-inches');
  expect(at((20 * FOOT) / 1000)).toBe(INCH);
  expect(at((20 * FOOT) / 300)).toBe(6 * INCH);
  expect(at(CLOSEST)).toBe(INCH / 16);
  const metric = stepAt({ center: { x: 0, y: 0 }, gridPerPx: (6 * METRE) / 1000 }, 'metric');
  expect(metric).toBe(METRE / 20);
});
