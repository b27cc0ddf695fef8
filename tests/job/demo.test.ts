import { expect, test } from 'vitest';
import { selfCrossings } from '../../src/geometry/crossings.ts';
import { demoJob } from '../../src/job/demo.ts';
import { parseJob } from '../../src/job/parse.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import { blankJob } from '../../src/job/start.ts';
import { FOOT, SIXTEENTH } from '../../src/units/grid.ts';
import { areaOf, cornersOf } from './site.ts';

test('the sample job is sound, and every kind of trouble is on it', () => {
  const job = demoJob();
  expect(parseJob(serializeJob(job))).toEqual({ ok: true, value: job });
  expect(new Set(job.features.map(({ kind }) => kind))).toEqual(
    new Set([
      'pad',
      'existing-slab',
      'building-line',
      'steps',
      'block-out',
      'patch',
      'no-stake-zone',
      'utility-line',
    ]),
  );
  const walls = job.features.flatMap((one) =>
    one.kind === 'building-line' ? [one.pourAgainst] : [],
  );
  expect(new Set(walls)).toEqual(new Set([true, false]));
});

test('it has boards and prices of its own', () => {
  const { truck, yard } = demoJob().lumber;
  expect(truck.map(({ length, count, twisted }) => [length / FOOT, count, twisted])).toEqual([
    [12, 2, false],
    [10, 1, false],
    [8, 2, false],
    [14, 1, true],
  ]);
  const priced = yard.filter(({ price }) => price !== undefined);
  expect(priced.map(({ size, length }) => [size, length / FOOT])).toEqual(
    [8, 10, 12, 16].map((feet) => ['2x4', feet]),
  );
  // The lists of everybody else have neither.
  expect(blankJob().lumber.truck).toEqual([]);
  expect(blankJob().lumber.yard.some(({ price }) => price !== undefined)).toBe(false);
});

test('its outlines run counter-clockwise and none crosses itself', () => {
  for (const { id, shape } of demoJob().features) {
    if (shape.form !== 'outline' || !shape.closed) continue;
    expect([id, areaOf(shape) > 0, selfCrossings(shape.corners)]).toEqual([id, true, []]);
  }
});

test('its loose corners are tape readings in sixteenths', () => {
  for (const { shape } of demoJob().features) {
    if (shape.form !== 'outline') continue;
    for (const { x, y, on } of shape.corners) {
      if (!on) expect([x % SIXTEENTH, y % SIXTEENTH].map(Math.abs)).toEqual([0, 0]);
    }
  }
});

test('the pad holds on to patio, stoop and wall, and its corners are where theirs are', () => {
  const corners = cornersOf(demoJob(), 'f20');
  expect(corners).toHaveLength(14);
  const held = corners.flatMap(({ on }) => (on ? [on.feature] : []));
  expect(held).toEqual(['f1', 'f1', 'f1', 'f12', 'f12', 'f12', 'f12', 'f6']);
  const patio = cornersOf(demoJob(), 'f1')[0];
  expect(corners[6]).toMatchObject({ x: patio?.x, y: patio?.y });
  // Attached to the skirting at a tape reading, to the grid.
  expect(corners[12]).toMatchObject({ x: -12.375 * 8128, y: 121.25 * 8128 });
});
