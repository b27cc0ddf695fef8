import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Command } from '../../src/job/commands.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job, Outline } from '../../src/job/job.ts';
import { METRE } from '../../src/units/grid.ts';
import { walk, walkSeed } from './randomCommands.ts';
import { areaOf, cornersOf, done, jobOf, padOf, sizeOf, written } from './site.ts';

const SEED = { seed: 30, numRuns: 150 };

/** Some outline of some shape, holding on to nothing and held by nothing. */
const loneFeature = walkSeed.map((seed): { job: Job; feature: string } => {
  const { states } = walk(demoJob(), seed, 12);
  const features = (states.at(-1) ?? demoJob()).features;
  const feature = features[seed % Math.max(1, features.length)] ?? demoJob().features[0];
  if (!feature) throw new Error('the sample job is empty');
  const shape =
    feature.shape.form === 'outline'
      ? { ...feature.shape, corners: feature.shape.corners.map(({ on: _, ...free }) => free) }
      : feature.shape;
  const job = { ...demoJob(), features: [{ ...feature, shape } as typeof feature], nextId: 10_000 };
  return { job, feature: feature.id };
});

const place = fc.record({
  x: fc.integer({ min: -METRE, max: METRE }),
  y: fc.integer({ min: -METRE, max: METRE }),
});

function times(count: number, job: Job, command: Command): Job {
  return Array.from({ length: count }).reduce((before: Job) => done(before, command), job);
}

describe('there and back is the same job exactly', { timeout: 60_000 }, () => {
  test('moved away and back', () => {
    fc.assert(
      fc.property(loneFeature, place, ({ job, feature }, by) => {
        const away = done(job, { do: 'move-feature', feature, by });
        const back = { x: 0 - by.x, y: 0 - by.y };
        expect(done(away, { do: 'move-feature', feature, by: back })).toEqual(job);
      }),
      SEED,
    );
  });

  test('four quarter turns, about its middle or any place', () => {
    fc.assert(
      fc.property(
        loneFeature,
        fc.option(place),
        fc.constantFrom(90, -90, 450),
        (lone, about, degrees) => {
          const { job, feature } = lone;
          const turn = {
            do: 'turn-feature',
            feature,
            degrees,
            ...(about ? { about } : {}),
          } as const;
          expect(times(4, job, turn)).toEqual(job);
        },
      ),
      SEED,
    );
  });

  test('two half turns, and a quarter there and back', () => {
    fc.assert(
      fc.property(loneFeature, ({ job, feature }) => {
        expect(times(2, job, { do: 'turn-feature', feature, degrees: 180 })).toEqual(job);
        const quarter = done(job, { do: 'turn-feature', feature, degrees: 90 });
        expect(done(quarter, { do: 'turn-feature', feature, degrees: 270 })).toEqual(job);
      }),
      SEED,
    );
  });

  test('mirrored twice, about its middle or any place', () => {
    fc.assert(
      fc.property(
        loneFeature,
        fc.option(place),
        fc.constantFrom('vertical', 'horizontal'),
        ({ job, feature }, about, across) => {
          const mirror = { do: 'mirror-feature', feature, across, ...(about ? { about } : {}) };
          expect(times(2, job, mirror as Command)).toEqual(job);
        },
      ),
      SEED,
    );
  });
});

describe('the shape stays the shape', { timeout: 60_000 }, () => {
  const shapeOf = (job: Job): Outline | null => {
    const shape = job.features[0]?.shape;
    return shape?.form === 'outline' && shape.closed ? shape : null;
  };

  test('area, with its sign and its arcs, is the same after a quarter turn and after mirroring', () => {
    fc.assert(
      fc.property(loneFeature, fc.constantFrom('vertical', 'horizontal'), (lone, across) => {
        const { job, feature } = lone;
        const before = shapeOf(job);
        if (!before) return;
        const turned = shapeOf(done(job, { do: 'turn-feature', feature, degrees: 90 }));
        const mirrored = shapeOf(done(job, { do: 'mirror-feature', feature, across } as Command));
        if (!turned || !mirrored) throw new Error('no outline any more');
        const area = areaOf(before);
        const slack = 1e-9 * (Math.abs(area) + 1);
        expect(Math.abs(areaOf(turned) - area)).toBeLessThan(slack);
        expect(Math.abs(areaOf(mirrored) - area)).toBeLessThan(slack);
      }),
      SEED,
    );
  });

  test('turned by any other angle, lengths stay to the grid', () => {
    const job = jobOf(padOf('0,0 120,0 120,96 0,96'));
    const turned = done(job, { do: 'turn-feature', feature: 'f1', degrees: 37 });
    const [a, b, c] = cornersOf(turned, 'f1');
    if (!a || !b || !c) throw new Error('corners lost');
    expect(Math.hypot(b.x - a.x, b.y - a.y) / 8128).toBeCloseTo(120, 3);
    expect(Math.hypot(c.x - b.x, c.y - b.y) / 8128).toBeCloseTo(96, 3);
    expect(cornersOf(turned, 'f1').every(({ x, y }) => Number.isInteger(x + y))).toBe(true);
  });
});

//   4-----3             3-----4
//   |     |             |     |
//   |     2--.   →   .--2     |     the arc leaves 1→2's mirror image on the same side
//   |        )       (        |
//   5--------1       1--------5
test('mirroring takes an arc with it', () => {
  const job = jobOf(padOf('100,0 60,40 ^-5 60,90 0,90 0,0'));
  const mirrored = done(job, { do: 'mirror-feature', feature: 'f1', across: 'vertical' });
  expect(written(mirrored, 'f1')).toBe('100,0 100,90 40,90 ^-5 40,40 0,0');
});

test('a turn goes counter-clockwise', () => {
  const job = jobOf(padOf('0,0 30,0 30,10 0,10'));
  const turned = done(job, {
    do: 'turn-feature',
    feature: 'f1',
    degrees: 90,
    about: { x: 0, y: 0 },
  });
  expect(written(turned, 'f1')).toBe('0,0 0,30 -10,30 -10,0');
  expect(sizeOf(turned, 'f1')).toEqual([10, 30]);
});
