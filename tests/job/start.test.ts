import { describe, expect, test } from 'vitest';
import { doubledArea } from '../../src/geometry/area.ts';
import { parseJob } from '../../src/job/parse.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import { blankJob, lShapeJob, rectangleJob } from '../../src/job/start.ts';
import { EXTENT_LIMIT, FOOT } from '../../src/units/grid.ts';
import type { Result } from '../../src/units/result.ts';
import { cornersOf, written } from './site.ts';

function codes(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map(({ code, where }) => `${code} ${where}`);
}

test('each of them is a job that its own file reader takes', () => {
  for (const job of [
    { ok: true, value: blankJob() } as const,
    rectangleJob(12 * FOOT, 10 * FOOT),
    lShapeJob(12 * FOOT, 10 * FOOT, 4 * FOOT, 3 * FOOT),
    rectangleJob(EXTENT_LIMIT, 1),
  ]) {
    if (!job.ok) return expect.fail('refused');
    expect(parseJob(serializeJob(job.value))).toEqual(job);
  }
});

test('an L of 12 by 10 with 4 by 3 out of it is 108 square feet, counter-clockwise', () => {
  const job = lShapeJob(12 * FOOT, 10 * FOOT, 4 * FOOT, 3 * FOOT);
  if (!job.ok) return expect.fail('refused');
  expect(written(job.value, 'f1')).toBe('0,0 144,0 144,84 96,84 96,120 0,120');
  expect(doubledArea(cornersOf(job.value, 'f1'))).toBe(2 * 108 * FOOT * FOOT);
});

describe('sizes that can’t be', () => {
  test.each([
    [rectangleJob(0, 5), ['size-not-positive length']],
    [rectangleJob(5, -5), ['size-not-positive width']],
    [rectangleJob(0, 0), ['size-not-positive length', 'size-not-positive width']],
    [rectangleJob(Number.NaN, 5), ['not-on-grid length']],
    [rectangleJob(5, Number.POSITIVE_INFINITY), ['not-on-grid width']],
    [rectangleJob(2.5, 5), ['not-on-grid length']],
    [rectangleJob(EXTENT_LIMIT + 1, 5), ['too-large length']],
    [lShapeJob(10, 10, 10, 5), ['notch-too-large notchLength']],
    [lShapeJob(10, 10, 5, 11), ['notch-too-large notchWidth']],
    [lShapeJob(10, 10, 0, 5), ['size-not-positive notchLength']],
  ])('%#', (result, problems) => {
    expect(codes(result)).toEqual(problems);
  });
});
