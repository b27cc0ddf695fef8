import { expect, test } from 'vitest';
import { withReading } from '../../src/job/commands/setGround.ts';
import { apply, type Command } from '../../src/job/commands.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { GroundSaid, Job } from '../../src/job/job.ts';
import { parseJob } from '../../src/job/parse.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import { INCH, METRE } from '../../src/units/grid.ts';

function set(job: Job, ground: GroundSaid) {
  return apply(job, { do: 'set-ground', ground } satisfies Command);
}

test('a reading more has an id of its own, and comes back out of a file', () => {
  let job = demoJob();
  for (const depth of [4, 4.5, 3.75]) {
    const ground = withReading(job, depth * INCH);
    const readings = ground.readings.map((one) => ({ ...one, at: { x: 0, y: 5 } }));
    const done = set(job, { ...ground, readings, depthBy: 'readings' });
    if (!done.ok) throw new Error('refused');
    job = done.value;
  }
  expect(new Set(job.ground.readings.map(({ id }) => id)).size).toBe(3);
  expect(parseJob(serializeJob(job))).toEqual({ ok: true, value: job });
});

test('refused, and nothing done: no depth, too deep, an id of something else, a place far off', () => {
  const job = demoJob();
  const with1 = (reading: Partial<GroundSaid['readings'][number]>) =>
    set(job, {
      depthBy: 'thickness',
      readings: [{ id: 'g900', depth: 4 * INCH, ...reading }],
    });
  expect(with1({}).ok).toBe(true);
  expect(with1({ depth: 0 })).toMatchObject({ problems: { code: 'field-range' } });
  expect(with1({ depth: -INCH })).toMatchObject({ problems: { code: 'field-range' } });
  expect(with1({ depth: 3 * METRE })).toMatchObject({ problems: { code: 'field-range' } });
  expect(with1({ depth: 1.5 })).toMatchObject({ ok: false });
  expect(with1({ id: job.features[0]!.id })).toMatchObject({ problems: { code: 'id-taken' } });
  expect(with1({ at: { x: 700_000_000, y: 0 } })).toMatchObject({ problems: { code: 'too-far' } });
});
