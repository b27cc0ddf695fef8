import { expect, test } from 'vitest';
import { nearestOnRuns } from '../../../src/takeoff/forms/nearestOnRuns.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { jobOf, PAD } from '../../sketch/jobs.ts';

const runs = takeoff(jobOf(PAD)).forms?.runs ?? [];

function near(x: number, y: number) {
  const place = nearestOnRuns(runs, { x: x * FOOT, y: y * FOOT });
  return place && [place.run.mark, place.along / FOOT, place.away / FOOT];
}

test('the nearest run, how far along it and how far away', () => {
  expect(near(3, -2)).toEqual(['R1', 3, 2]);
  expect(near(21, 4)).toEqual(['R2', 4, 1]);
  expect(near(3, 9)).toEqual(['R3', 17, 1]);
  expect(near(-4, -3)).toEqual(['R1', 0, 5]);
});

test('without runs there is none', () => {
  expect(nearestOnRuns([], { x: 0, y: 0 })).toBeNull();
});
