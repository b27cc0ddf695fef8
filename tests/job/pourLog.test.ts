import { describe, expect, test } from 'vitest';
import { apply } from '../../src/job/commands.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { parseJob } from '../../src/job/parse.ts';
import { USUAL_POUR_DAY, withoutPour } from '../../src/job/pourDay.ts';
import {
  type CloseOut,
  emptyPourLog,
  type PourEntry,
  type PourLog,
  withChecked,
  withEntry,
  withoutLast,
} from '../../src/job/pourLog.ts';
import { serializeJob } from '../../src/job/serialize.ts';
import { takingOver } from '../../src/job/takeOver.ts';

const BATCH: PourEntry = {
  is: 'batch',
  at: 1_700_000_000_000,
  bags: [{ mix: 'regular', bags: 2 }],
};
const FRONT: PourEntry = { is: 'front', at: 1_700_000_300_000, toward: 90, along: 12_345 };
const LOG: PourLog = { checked: ['water'], toward: 90, entries: [BATCH, FRONT] };
const CLOSED: CloseOut = {
  at: 1_700_000_900_000,
  net: 1e15,
  area: 1e11,
  bags: [{ mix: 'regular', name: 'Regular', yield: 5e12, used: 60.5, left: 4, returned: 4 }],
  hours: [{ task: 'mixing', hours: 2.5 }],
  wrong: ['rain'],
  says: 'Late start.',
  depth: 28_000,
};

function done(job: Job, ...commands: readonly Parameters<typeof apply>[1][]): Job {
  return commands.reduce((before, command) => {
    const outcome = apply(before, command);
    if (!outcome.ok) throw new Error(outcome.problems.code);
    return outcome.value;
  }, job);
}

describe('the log', () => {
  test('takes taps in order, and takes the last one back', () => {
    const log = withEntry(withEntry(emptyPourLog(), BATCH), FRONT);
    expect(log.entries).toEqual([BATCH, FRONT]);
    expect(withoutLast(log).entries).toEqual([BATCH]);
    expect(withoutLast(emptyPourLog())).toEqual(emptyPourLog());
  });
  test('holds each tick once', () => {
    const ticked = withChecked(withChecked(emptyPourLog(), 'water', true), 'water', true);
    expect(ticked.checked).toEqual(['water']);
    expect(withChecked(ticked, 'water', false).checked).toEqual([]);
  });
});

describe('a job with its pour', () => {
  const job = done(
    demoJob(),
    { do: 'set-pour-log', pourLog: LOG },
    { do: 'set-close-out', closeOut: CLOSED },
  );
  test('comes back from its file as it was', () => {
    expect(parseJob(serializeJob(job))).toEqual({ ok: true, value: job });
  });
  test('is opened again without a trace', () => {
    const open = done(job, { do: 'set-close-out', closeOut: null });
    expect('closeOut' in open).toBe(false);
    expect(open.pourLog).toBe(LOG);
    expect(withoutPour(job)).toEqual(demoJob());
  });
  test('leaves it behind when a new job takes over', () => {
    const next = takingOver(demoJob(), job);
    expect('pourLog' in next || 'closeOut' in next).toBe(false);
  });
});

describe('what can’t be', () => {
  const bad: readonly (readonly [string, unknown])[] = [
    [
      'bags under nothing',
      { ...LOG, entries: [{ ...BATCH, bags: [{ mix: 'regular', bags: -1 }] }] },
    ],
    [
      'no number of bags',
      { ...LOG, entries: [{ ...BATCH, bags: [{ mix: 'a', bags: Number.NaN }] }] },
    ],
    ['a time before time', { ...LOG, entries: [{ ...BATCH, at: -5 }] }],
    ['a way past a whole turn', { ...LOG, toward: 360 }],
    ['half a grid unit', { ...LOG, entries: [{ ...FRONT, along: 0.5 }] }],
    ['an entry of no kind', { ...LOG, entries: [{ is: 'tea', at: 1 }] }],
  ];
  test.each(bad)('%s is refused, and the job stays', (_, pourLog) => {
    const outcome = apply(demoJob(), { do: 'set-pour-log', pourLog: pourLog as PourLog });
    expect(outcome.ok).toBe(false);
  });
  test.each<[string, Partial<CloseOut>]>([
    ['no net', { net: 0 }],
    ['hours under nothing', { hours: [{ task: 'mixing', hours: -1 }] }],
    ['a depth of nothing', { depth: 0 }],
    ['a text longer than any', { says: 'x'.repeat(20_001) }],
  ])('a close-out with %s is refused', (_, part) => {
    const closeOut = { ...CLOSED, ...part };
    expect(apply(demoJob(), { do: 'set-close-out', closeOut }).ok).toBe(false);
  });
  test('two checks of one id are told of a file', () => {
    const job = demoJob();
    const checks = [
      { id: 'a', text: 'one' },
      { id: 'a', text: 'two' },
    ];
    const practices = { ...job.practices, pourDay: { ...USUAL_POUR_DAY, checks } };
    const read = parseJob(serializeJob({ ...job, practices }));
    expect(read).toMatchObject({
      ok: false,
      problems: [{ code: 'field-id-twice', where: 'job.practices.pourDay.checks[1].id' }],
    });
  });
});
