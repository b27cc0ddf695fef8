import { expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { CUBIC_FOOT } from '../../../src/units/grid.ts';
import { MIX_TROUBLES, mixedSlab, parts, wateredMixes } from './mixJobs.ts';

function ticketFor(job: Job) {
  return ticketOf(job, takeoff(job), 'mix');
}

const LINES = [
  'allowance-share',
  'allowance-spread',
  'allowance-spillage',
  'allowance-extra',
  'allowance-floor',
];

function volumes(job: Job): ReadonlyMap<string, number> {
  return new Map(
    ticketFor(job).figures.flatMap(({ key, value }) =>
      value.of === 'volume' ? [[key, value.grid3]] : [],
    ),
  );
}

test.each([
  ['a share', mixedSlab({}, { by: 'share', share: 0.1 }), ['allowance-share']],
  [
    'a share of a small job',
    mixedSlab({}, { by: 'share', share: 0.05 }, [3, 3]),
    ['allowance-share', 'allowance-floor'],
  ],
  ['parts', mixedSlab({}), ['allowance-spread', 'allowance-spillage']],
  [
    'parts and an extra',
    MIX_TROUBLES['allowance-by-parts']!,
    ['allowance-spread', 'allowance-spillage', 'allowance-extra'],
  ],
])('%s: the lines of the allowance are there and add up', (_, job, lines) => {
  const of = volumes(job);
  expect(LINES.filter((key) => of.has(key))).toEqual(lines);
  expect(lines.reduce((sum, key) => sum + of.get(key)!, 0)).toBe(of.get('allowance'));
});

test('half bags left open have a line of their own', () => {
  const of = volumes(
    mixedSlab({ blend: parts(2, 1.5), halfBags: true, batchVolume: 1.8 * CUBIC_FOOT }),
  );
  const rounding = ['bag-rounding', 'batch-rounding', 'open-rounding'];
  expect(of.get('needed')! + rounding.reduce((sum, key) => sum + of.get(key)!, 0)).toBe(
    of.get('made'),
  );
});

test('the batch list: a row a batch, water where the bags say it, the other mix where there is one', () => {
  const table = (job: Job) => ticketFor(job).tables.find(({ key }) => key === 'batch-list')!;
  const plain = table(mixedSlab({}));
  expect(plain.columns).toEqual([
    'batch',
    'bags-main',
    'batch-concrete',
    'bags-so-far',
    'concrete-so-far',
  ]);
  const blended = table(
    mixedSlab({
      mixes: wateredMixes(),
      blend: parts(2, 1.5),
      halfBags: true,
      batchVolume: 1.8 * CUBIC_FOOT,
    }),
  );
  expect(blended.columns).toContain('bags-other');
  expect(blended.columns).toContain('batch-water-most');
  expect(blended.rows[0]![2]).toEqual({ of: 'half-bags', bags: 1.5 });
});
