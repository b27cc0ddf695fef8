import { describe, expect, test } from 'vitest';
import { hasMadeUpBoards, startedFrom, startsFrom } from '../../../src/app/jobs/startsFrom.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { blankJob, rectangleJob } from '../../../src/job/start.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';

const board = { id: 't1', size: '2x6', length: 12 * FOOT, count: 2, twisted: false } as const;
const mine: Job = {
  ...blankJob(),
  site: 'Old site',
  practices: { ...blankJob().practices, thickness: 5 * INCH },
  lumber: { truck: [board], yard: [] },
  handStakes: [{ id: 's1', at: { x: 0, y: 0 }, is: 'pinned' }],
};

function pad(): Job {
  const made = rectangleJob(12 * FOOT, 10 * FOOT);
  if (!made.ok) throw new Error('A plain rectangle was refused.');
  return made.value;
}

describe('a new job', () => {
  test('takes over practices, boards and mesh of the open one, and nothing of its site', () => {
    const { practices, lumber, meshStock } = mine;
    expect(startsFrom(mine)).toBe('open-job');
    expect(startedFrom(pad(), mine, 'open-job')).toEqual({
      ...pad(),
      practices,
      lumber,
      meshStock,
    });
  });

  test('or starts from the plain defaults', () => {
    expect(startedFrom(pad(), mine, 'defaults')).toEqual(pad());
  });
});

describe('what the sample made up', () => {
  const sample = demoJob();
  const put = (lumber: Partial<Job['lumber']>): Job => ({
    ...sample,
    lumber: { ...sample.lumber, ...lumber },
  });

  test('stays with the sample', () => {
    expect(startsFrom(sample)).toBe('defaults');
    expect(hasMadeUpBoards(sample)).toBe(true);
  });

  test('goes along once the lists are somebody’s own, and is still said to be made up', () => {
    const changed = put({ truck: [board] });
    expect(startsFrom(changed)).toBe('open-job');
    // The prices are still the sample's.
    expect(hasMadeUpBoards(changed)).toBe(true);
  });

  test('is no longer said of lists without any of it', () => {
    expect(hasMadeUpBoards(mine)).toBe(false);
    expect(hasMadeUpBoards(put({ truck: [board], yard: blankJob().lumber.yard }))).toBe(false);
  });
});
