import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { rectangleJob } from '../../src/job/start.ts';
import type { SheetPage } from '../../src/sheet/page.ts';
import { paintPdf } from '../../src/sheet/paintPdf.ts';
import { FOOT, METRE } from '../../src/units/grid.ts';
import { readGreyPng, writeGreyPng } from './greyPng.ts';
import { fonts, sheetOf, writtenOn } from './made.ts';
import { type Painted, readPdf } from './pdfReader.ts';

async function seen(pages: readonly SheetPage[]) {
  return readPdf(await paintPdf(pages, { fonts, title: 'A test', date: new Date(0) }));
}

function rectangle(length: number, width: number, units: Job['units'] = 'feet-inches'): Job {
  const job = rectangleJob(length, width);
  if (!job.ok) throw new Error('no job');
  return { ...job.value, units };
}

/**
 * Middles of upright strokes that are dark over a run of about so many dots, from left to right.
 * @param sideways Looks for level ones instead, from the top.
 */
function strokes({ width, height, grey }: Painted, run: number, sideways = false) {
  const [columns, rows] = sideways ? [height, width] : [width, height];
  const dark = (column: number, row: number) =>
    grey[sideways ? column * width + row : row * width + column]! < 110;
  const found: number[] = [];
  let last: number[] = [];
  for (let column = 0; column <= columns; column++) {
    let longest = 0;
    let here = 0;
    for (let row = 0; row < rows && column < columns; row++) {
      here = dark(column, row) ? here + 1 : 0;
      longest = Math.max(longest, here);
    }
    // An extension line may begin where an edge ends.
    if (longest > run * 0.98 && longest < run * 1.2) last.push(column);
    else if (last.length > 0) {
      found.push((last[0]! + last.at(-1)! + 1) / 2);
      last = [];
    }
  }
  return found;
}

const DOTS = 200;

describe('the PDF, as another program reads it', () => {
  test.each([
    // 10 × 8 ft at 1/2 in to the foot: 5 × 4 in.
    [rectangle(10 * FOOT, 8 * FOOT), '1/2" = 1\'-0"', 'letter', 5, 4],
    // The same at 3/4 in to the foot on a larger sheet: 7 1/2 × 6 in.
    [rectangle(10 * FOOT, 8 * FOOT), '3/4" = 1\'-0"', 'tabloid', 7.5, 6],
    // 3 × 2 m at 1:20: 150 × 100 mm.
    [rectangle(3 * METRE, 2 * METRE, 'metric'), '1:20', 'a4', 150 / 25.4, 100 / 25.4],
  ] as const)(
    '%#: sides are exactly as long as the scale says',
    async (job, scale, paper, long, short) => {
      const [page] = await seen(sheetOf(job, { scale, paper, pages: ['layout'] }));
      const painted = await page!.paint(DOTS);
      // The outline's thick strokes; thin lines of dimensions are as long as the side at most once each.
      const uprights = strokes(painted, short * DOTS);
      const levels = strokes(painted, long * DOTS, true);
      const apart = (those: readonly number[], size: number) =>
        those.some((a) => those.some((b) => Math.abs(b - a - size * DOTS) <= 1.25));
      expect(uprights.length).toBeGreaterThanOrEqual(2);
      expect(apart(uprights, long), `${uprights}`).toBe(true);
      expect(apart(levels, short), `${levels}`).toBe(true);
    },
  );

  test('every text of every page can be found, and every letter is in the file', async () => {
    const pages = sheetOf(demoJob());
    const read = await seen(pages);
    expect(read).toHaveLength(pages.length);
    const bare = (text: string) => text.replace(/[\s\u00a0]+/g, '');
    read.forEach(({ text, embedded, size }, i) => {
      const page = pages[i]!;
      const all = bare(text);
      const lost = writtenOn([page])
        .split('\n')
        .filter((one) => !all.includes(bare(one)));
      expect(lost, page.title).toEqual([]);
      expect(embedded.length).toBeGreaterThan(10);
      expect(embedded.every((one) => one)).toBe(true);
      expect(size[0]).toBeCloseTo((page.width * 72) / 25.4, 3);
    });
  });
});

/** Share of the dots that may differ by more than a third of black: thin lines fall between dots one way or the other. */
const MAY_DIFFER = 0.002;
const KEPT_DOTS = 70;

describe('pages as pictures', () => {
  /** After a wanted change: UPDATE=1 npm test -- pdfSeen, look at each, commit. */
  async function hold(name: string, pages: readonly SheetPage[], number: number) {
    const [page] = await seen([pages[number]!]);
    const painted = await page!.paint(KEPT_DOTS);
    const path = join(import.meta.dirname, 'pictures', `${name}.png`);
    const changed = path.replace('.png', '-changed.png');
    if (process.env['UPDATE'] === '1') writeFileSync(path, writeGreyPng(painted));
    const differ = existsSync(path) ? difference(readGreyPng(readFileSync(path)), painted) : 1;
    if (differ <= MAY_DIFFER) rmSync(changed, { force: true });
    else writeFileSync(changed, writeGreyPng(painted));
    expect(differ, `look at ${name}-changed.png`).toBeLessThanOrEqual(MAY_DIFFER);
  }

  function difference(kept: Painted, now: Painted): number {
    if (kept.width !== now.width || kept.height !== now.height) return 1;
    let count = 0;
    for (let i = 0; i < now.grey.length; i++) {
      if (Math.abs(kept.grey[i]! - now.grey[i]!) > 85) count++;
    }
    return count / now.grey.length;
  }

  test('the layout of the sample job', () => hold('layout', sheetOf(demoJob()), 0));
  test('its forms and stakes', () => hold('forms', sheetOf(demoJob(), { pages: ['forms'] }), 0));
  test('its tables to set out by', () =>
    hold('set-out', sheetOf(demoJob(), { pages: ['set-out'] }), 0));
  test('its layout over several pages: the second of them', () =>
    hold('part', sheetOf(demoJob(), { pages: ['layout'], scale: '1/2" = 1\'-0"' }), 1));

  test('a small pad on one page', () =>
    hold('one-page', sheetOf(rectangle(6 * FOOT, 4 * FOOT), { onePage: true }), 0));

  test('this check can fail: a line more is seen', async () => {
    const pages = sheetOf(rectangle(10 * FOOT, 8 * FOOT), { pages: ['layout'] });
    const [one] = await seen(pages);
    const other = await seen(sheetOf(rectangle(10 * FOOT, 9 * FOOT), { pages: ['layout'] }));
    const [a, b] = [await one!.paint(KEPT_DOTS), await other[0]!.paint(KEPT_DOTS)];
    expect(difference(a, a)).toBe(0);
    expect(difference(a, b)).toBeGreaterThan(MAY_DIFFER);
  });
});
