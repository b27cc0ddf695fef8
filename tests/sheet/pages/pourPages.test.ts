import { expect, test } from 'vitest';
import { blankJob } from '../../../src/job/start.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { batchList } from '../../../src/takeoff/mix/batchList.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { CUBIC_FOOT } from '../../../src/units/grid.ts';
import { MIX_TROUBLES, mixedSlab, parts, wateredMixes } from '../../takeoff/mix/mixJobs.ts';
import { sheetOf, writtenOn } from '../made.ts';

const says = en.layout.pour;

const BLENDED = mixedSlab({
  mixes: wateredMixes(),
  blend: parts(2, 1.5),
  halfBags: true,
  batchVolume: 1.8 * CUBIC_FOOT,
});

test('every batch has a row and a box of its own, in half bags, with water from both bags', () => {
  const pages = sheetOf(BLENDED, { pages: ['pour'] });
  const said = writtenOn(pages).split('\n');
  const list = batchList(BLENDED.practices, takeoff(BLENDED).mix!);
  expect(list.length).toBeGreaterThan(20);
  for (const { number } of list) expect(said).toContain(`${number}`);
  expect(said.filter((one) => one === '1 1/2').length).toBeGreaterThanOrEqual(list.length - 1);
  // 2 × 3 + 1 1/2 × 2 = 9 qt and 2 × 4 + 1 1/2 × 2 1/2 = 11.75 qt.
  expect(said).toContain('9 qt');
  expect(said).toContain('11.75 qt');
  expect(said.join(' ')).not.toContain('Water for each batch');
  // Four lines to a box; checkpoints have boxes too.
  const lines = pages.flatMap(({ parts: all }) =>
    all.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'line')),
  );
  expect(lines.length).toBeGreaterThan(4 * (list.length + 4));
});

test('the last batch and the order are the ticket’s', () => {
  const { mix } = takeoff(BLENDED);
  const said = writtenOn(sheetOf(BLENDED, { pages: ['pour'] }));
  expect(said).toContain(`${mix!.totalBags} bags`);
  expect(said).toContain(says.checkpoints);
});

test('without the water of the bags it says to read them; without batches why there are none', () => {
  expect(writtenOn(sheetOf(mixedSlab({}), { pages: ['pour'] })).replaceAll('\n', ' ')).toContain(
    says.waterByBag.slice(0, 40),
  );
  const none = writtenOn(sheetOf(MIX_TROUBLES['batch-too-small']!, { pages: ['pour'] }));
  const flat = none.replaceAll('\n', ' ');
  expect(flat).toContain(says.noBatches.slice(0, 30));
  // What stands in the way is printed whichever page is chosen.
  expect(none).toContain(en.weights.stop);
});

test('the list of batches isn’t printed twice', () => {
  const order = (pages: readonly ('pour' | 'order')[]) =>
    writtenOn(sheetOf(BLENDED, { pages }))
      .split('\n')
      .filter((one) => one.startsWith('11.75')).length;
  expect(order(['pour', 'order'])).toBe(order(['pour']));
  expect(order(['order'])).toBe(order(['pour']));
});

test('nothing to pour: no page of it', () => {
  const titles = sheetOf(blankJob(), { pages: ['pour'] }).map(({ title }) => title);
  expect(titles.some((title) => title.includes(says.title))).toBe(false);
});

test('how it goes stands on it: the day drawn, the strips, and what to look out for', () => {
  const said = writtenOn(sheetOf(BLENDED, { pages: ['pour'] }));
  expect(said).toContain(en.layout.howItGoes);
  expect(said).toContain(en.tables['placing-strips']);
  expect(said).toContain('S1');
  expect(said).toContain('0:00');
});
