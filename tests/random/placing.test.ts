import { expect, test } from 'vitest';
import { doubledArea } from '../../src/geometry/area.ts';
import type { Polygon } from '../../src/geometry/point.ts';
import type { Job } from '../../src/job/job.ts';
import { placingOf } from '../../src/job/placingDefaults.ts';
import { placing } from '../../src/takeoff/placing/placing.ts';
import { pourPolygons } from '../../src/takeoff/pourPolygons.ts';
import type { Takeoff } from '../../src/takeoff/result.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, SIXTEENTH } from '../../src/units/grid.ts';
import { chance } from './chance.ts';
import { slabJob } from './slabJobs.ts';

/** A job as chance makes it, with a crew, a board and a mix as chance has them. */
function pourOf(seed: number): Job {
  const { job } = slabJob(seed);
  const draw = chance(seed + 7_000);
  const { mix } = job.practices;
  const initial = draw.whole(20, 400);
  return {
    ...job,
    ...(draw.likely(0.5) ? { weather: { air: draw.between(-5, 40) } } : {}),
    practices: {
      ...job.practices,
      mix: {
        ...mix,
        mixes: mix.mixes.map((one) => ({
          ...one,
          set: { ...one.set, initial, final: initial + draw.whole(0, 200) },
        })),
      },
      placing: {
        ...placingOf(job.practices),
        crew: draw.whole(1, 5),
        mixers: draw.whole(1, 2),
        cycle: draw.between(2, 12),
        board: draw.whole(4, 20) * FOOT,
        trowel: draw.likely(0.4),
        strips: draw.oneOf(['proposed', 'across', 'along']),
        pulledBy: draw.oneOf(['one', 'two']),
      },
    },
  };
}

interface Placed {
  readonly seed: number;
  readonly job: Job;
  readonly result: Takeoff;
  readonly polygons: readonly Polygon[];
}

/** Pours that can be timed, each figured once. */
const POURS: readonly Placed[] = Array.from({ length: 40 }, (_, seed) => seed).flatMap((seed) => {
  const job = pourOf(seed);
  const result = takeoff(job);
  if (!result.pour || !result.placing) return [];
  const polygons = pourPolygons(result.pour, Math.max(job.practices.closeEnough, SIXTEENTH));
  return [{ seed, job, result, polygons }];
});

test('there are enough of them', () => {
  expect(POURS.length).toBeGreaterThan(25);
});

function timelineWith({ job, result, polygons }: Placed, crew: number) {
  const { practices } = job;
  const hands = { ...practices, placing: { ...placingOf(practices), crew } };
  const before = {
    pour: result.pour!,
    polygons,
    slab: result.volume!,
    bags: result.mix!,
    joints: undefined,
    weather: result.weather,
  };
  return placing({ ...job, practices: hands }, before).figured!.timeline;
}

const NEAR = 1e-6;

test('strips part the pour without a gap: their areas add up to it', () => {
  for (const { seed, result, polygons } of POURS) {
    const { strips, span } = result.placing!;
    const rings = polygons.flatMap(({ outer, holes }) => [outer, ...holes]);
    const whole = rings.reduce((sum, ring) => sum + doubledArea(ring), 0) / 2;
    const sum = strips.reduce((all, { area }) => all + area, 0);
    expect(Math.abs(sum / whole - 1), `seed ${seed}`).toBeLessThan(NEAR);
    for (const { area, profile, width } of strips) {
      expect(Math.abs(profile.at(-1)! - area), `seed ${seed}`).toBeLessThan(NEAR * whole);
      expect(width).toBeLessThanOrEqual(span + 32);
    }
  }
});

test('time never runs backwards, and every batch is placed', () => {
  for (const { result } of POURS) {
    const { batches, strips, placed, done, formsOff } = result.placing!.timeline;
    expect(batches).toHaveLength(result.mix!.batching!.batches);
    batches.forEach(({ from, to, placed: area }, i) => {
      expect(to).toBeGreaterThan(from);
      expect(from).toBe(batches[i - 1]?.to ?? 0);
      expect(area).toBeGreaterThan(batches[i - 1]?.placed ?? 0);
    });
    expect(batches.at(-1)!.to).toBe(placed);
    strips.forEach(({ from, to, water, passes, done: end }, i) => {
      expect(water).toBeLessThanOrEqual(from);
      expect(from).toBeLessThanOrEqual(to);
      expect(to).toBeLessThanOrEqual(placed);
      expect(to).toBeGreaterThanOrEqual(strips[i - 1]?.to ?? 0);
      let now = to;
      for (const pass of passes) {
        expect(pass.from).toBeGreaterThanOrEqual(now - NEAR);
        expect(pass.to).toBeGreaterThanOrEqual(pass.from);
        now = pass.to;
      }
      expect(end).toBe(passes.at(-1)!.to);
    });
    expect(done).toBeLessThan(formsOff);
    expect(JSON.parse(JSON.stringify(result.placing))).toEqual(result.placing);
  }
});

test('one strip is finished at a time', () => {
  for (const { result } of POURS) {
    const passes = result
      .placing!.timeline.strips.flatMap((strip) => strip.passes)
      .toSorted((a, b) => a.from - b.from || a.to - b.to);
    passes.forEach(({ from }, i) => {
      if (i > 0) expect(from).toBeGreaterThanOrEqual(passes[i - 1]!.to - NEAR);
    });
  }
});

test('more hands are never slower, neither placing nor finishing', () => {
  for (const pour of POURS) {
    let before = { placed: Number.POSITIVE_INFINITY, done: Number.POSITIVE_INFINITY };
    for (let crew = 1; crew <= 6; crew++) {
      const { placed, done } = timelineWith(pour, crew);
      expect(placed, `seed ${pour.seed}, ${crew}`).toBeLessThanOrEqual(before.placed + NEAR);
      expect(done, `seed ${pour.seed}, ${crew}`).toBeLessThanOrEqual(before.done + NEAR);
      before = { placed, done };
    }
  }
});
