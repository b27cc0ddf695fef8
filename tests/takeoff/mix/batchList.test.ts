import fc from 'fast-check';
import { expect, test } from 'vitest';
import { batchList, MOST_LISTED } from '../../../src/takeoff/mix/batchList.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { CUBIC_FOOT, QUART } from '../../../src/units/grid.ts';
import { MIX_TROUBLES, mixedSlab, parts, wateredMixes } from './mixJobs.ts';

const part = fc.integer({ min: 1, max: 16 }).map((quarters) => quarters / 4);

const randomJob = fc
  .record({
    main: part,
    other: fc.option(part, { nil: 0 }),
    halfBags: fc.boolean(),
    room: fc.double({ min: 0.3, max: 9, noNaN: true }),
    feet: fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 12 })),
    by: fc.constantFrom<'share' | 'parts'>('share', 'parts'),
    share: fc.double({ min: 0, max: 0.3, noNaN: true }),
    minimumBags: fc.integer({ min: 0, max: 4 }),
    extra: fc.double({ min: 0.01, max: 3, noNaN: true }),
  })
  .map(({ main, other, room, halfBags, feet, by, share, minimumBags, extra }) =>
    mixedSlab(
      {
        blend: parts(main, other),
        batchVolume: room * CUBIC_FOOT,
        halfBags,
        mixes: wateredMixes(),
      },
      {
        by,
        share,
        spillage: share,
        minimumBags,
        extras: [{ id: 'x', name: 'A soft corner', volume: extra * CUBIC_FOOT }],
      },
      feet,
    ),
  );

test('whatever the job: batches add up to what is mixed, what is mixed to the order, lines to the whole', () => {
  fc.assert(
    fc.property(randomJob, (job) => {
      const mix = takeoff(job).mix!;
      // Lines.
      const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);
      expect(sum(mix.allowanceParts.map(({ volume }) => volume))).toBe(mix.allowance);
      expect(mix.net + mix.allowance).toBe(mix.needed);
      expect(mix.blendRounding + mix.batchRounding + mix.openRounding).toBe(mix.rounding);
      expect(mix.needed + mix.rounding).toBe(mix.made);
      for (const rounding of [mix.blendRounding, mix.batchRounding, mix.openRounding]) {
        expect(rounding).toBeGreaterThanOrEqual(0);
      }
      // What is opened is what is mixed, in whole bags, and nothing but half a bag is left of each.
      mix.bags.forEach(({ bags }, i) => {
        expect(bags).toBe(Math.ceil(mix.mixed[i]!.bags));
      });
      expect(mix.totalBags).toBe(sum(mix.bags.map(({ bags }) => bags)));
      if (!mix.batching) return;
      const list = batchList(job.practices, mix);
      if (mix.batching.batches > MOST_LISTED) return;
      expect(list).toHaveLength(mix.batching.batches);
      mix.mixed.forEach(({ bags }, i) => {
        expect(sum(list.map((batch) => batch.bags[i]!))).toBe(bags);
      });
      expect(sum(list.map(({ made }) => made))).toBe(mix.made - mix.openRounding);
      expect(list.at(-1)!.madeSoFar).toBe(mix.made - mix.openRounding);
      expect(sum(list.map(({ water }) => water!.most)) / QUART).toBeCloseTo(
        mix.water.most / QUART,
        9,
      );
    }),
    { seed: 66, numRuns: 150 },
  );
});

test('2 to 1 1/2 by half bags: seven half bags a batch, water from both bags', () => {
  const job = mixedSlab(
    {
      blend: parts(2, 1.5),
      halfBags: true,
      batchVolume: 1.8 * CUBIC_FOOT,
      mixes: wateredMixes(),
    },
    { by: 'share', share: 0, minimumBags: 0 },
  );
  const { mix } = takeoff(job);
  // 40 ft³ by 3 1/2 bags of 1.7625: 22 batches make 38.775; 1.225 are left: 1 1/2 and 1 make 1.275.
  const list = batchList(job.practices, mix!);
  expect(list).toHaveLength(23);
  expect(list[0]!.bags).toEqual([2, 1.5]);
  expect(list[0]!.water!.least / QUART).toBeCloseTo(9, 9);
  expect(list[0]!.water!.most / QUART).toBeCloseTo(11.75, 9);
  expect(list[22]!.bags).toEqual([1.5, 1]);
  expect(mix!.bags.map(({ bags }) => bags)).toEqual([46, 34]);
  expect(mix!.openRounding / CUBIC_FOOT).toBeCloseTo(0.3, 6);
});

test('no water in the list where a bag doesn’t say', () => {
  const job = mixedSlab({ mixes: wateredMixes().map(({ water: _, ...bag }) => bag) });
  const [first] = batchList(job.practices, takeoff(job).mix!);
  expect(first).not.toHaveProperty('water');
});

test.each(Object.entries(MIX_TROUBLES))('%s is said', (code, job) => {
  const { notes, mix } = takeoff(job);
  const note = notes.find((one) => one.code === code);
  expect(note).toBeDefined();
  if (code === 'readings-too-few') expect(mix).toBeUndefined();
  if (code.startsWith('batch-')) {
    expect(note!.weight).toBe('stop');
    // The order stands, batches don't.
    expect(mix!.totalBags).toBeGreaterThan(0);
    expect(mix).not.toHaveProperty('batching');
  }
});
