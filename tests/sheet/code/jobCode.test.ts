import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../src/drawing/marks.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { codeBlocks, MODULE, QUIET } from '../../../src/sheet/code/codeBlocks.ts';
import { codeOf, type JobCode } from '../../../src/sheet/code/jobCode.ts';
import { outlinesOf } from '../../../src/sheet/code/outlines.ts';
import type { SheetPage } from '../../../src/sheet/page.ts';
import { paintPage } from '../../../src/sheet/paint/paintPage.ts';
import type { Step } from '../../../src/sheet/paint/pen.ts';
import { jobFromLink, linkOf } from '../../../src/storage/link/jobLink.ts';
import { chance } from '../../random/chance.ts';
import { reference } from '../../references/references.ts';
import { sheetOf, words, writtenOn } from '../made.ts';

const ADDRESS = 'https://pads.example/yard/';

function urlOf(job: Job): string {
  const link = linkOf(job, ADDRESS, 'digits');
  if (link.is !== 'link') throw new Error('too long');
  return link.url;
}

function codeFor(job: Job): JobCode {
  const code = codeOf(urlOf(job));
  if (code.is !== 'code') throw new Error(`no code: ${code.is}`);
  return code;
}

/** A job whose notes nobody could have foreseen, of so many letters. */
function noted(letters: number): Job {
  const { whole } = chance(letters);
  const notes = Array.from({ length: letters }, () => String.fromCodePoint(whole(0x4e00, 0x9fff)));
  return { ...demoJob(), notes: notes.join('') };
}

const DOTS = 12;
/** Paper round the code that is looked at as well, mm. */
const ROUND = 5;

type Edge = readonly [number, number, number, number];

function edgesOf(steps: readonly Step[]): readonly Edge[] {
  const edges: Edge[] = [];
  let start = { x: 0, y: 0 };
  let at = start;
  for (const step of steps) {
    const to = step.go === 'close' ? start : step.to;
    if (step.go === 'move') start = to;
    else edges.push([at.x, at.y, to.x, to.y]);
    at = to;
  }
  return edges;
}

/** Pixels of the code on a page and what is round it: filled even-odd, line by line, by a painter of the test's own. */
function pixelsOf({ parts, ...page }: SheetPage) {
  const edges: Edge[] = [];
  const nothing = () => {};
  paintPage(
    {
      fill: (steps) => edges.push(...edgesOf(steps)),
      stroke: nothing,
      letters: nothing,
      within: (_, draw) => draw(),
    },
    {
      ...page,
      parts: parts.map((part) => ({ ...part, marks: part.marks.filter(isInk) })),
    },
  );
  const reach = (places: readonly number[]) => ({
    least: places.reduce((a, b) => Math.min(a, b)) - ROUND,
    most: places.reduce((a, b) => Math.max(a, b)) + ROUND,
  });
  const across = reach(edges.map(([x]) => x));
  const down = reach(edges.map(([, y]) => y));
  const width = Math.round((across.most - across.least) * DOTS);
  const height = Math.round((down.most - down.least) * DOTS);
  const pixels = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let row = 0; row < height; row++) {
    const y = down.least + (row + 0.5) / DOTS;
    const cuts = edges
      .filter(([, ay, , by]) => ay <= y !== by <= y)
      .map(([ax]) => (ax - across.least) * DOTS)
      .sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      for (let x = Math.ceil(cuts[i]! - 0.5); x < cuts[i + 1]! - 0.5; x++) {
        pixels.fill(0, (row * width + x) * 4, (row * width + x) * 4 + 3);
      }
    }
  }
  return { pixels, width, height, size: across.most - across.least - 2 * ROUND };
}

function isInk(mark: Mark): boolean {
  return mark.kind === 'area' && mark.material === 'ink';
}

/** What a reader that knows nothing of how it was made reads on a page. */
function readOn(page: SheetPage): string | undefined {
  const { pixels, width, height } = pixelsOf(page);
  return jsQR(pixels, width, height)?.data;
}

function hasCode({ parts }: SheetPage): boolean {
  return parts.some(({ marks }) => marks.some(isInk));
}

describe('the code on the sheet', () => {
  test.each([
    ['the sample job', demoJob(), 'M'],
    ['one that needs the weaker correction', noted(650), 'L'],
  ] as const)(
    '%s: an independent reader reads it from the page, and it opens the job',
    (_, job, correction) => {
      const code = codeFor(job);
      expect(code.correction).toBe(correction);
      const [page, ...more] = sheetOf(job, { pages: ['code'], code });
      expect(more).toEqual([]);
      const read = readOn(page!);
      expect(read).toBe(urlOf(job));
      expect(jobFromLink(new URL(read!).hash)).toEqual({ ok: true, value: job });
      expect(writtenOn([page!])).toContain(`error correction ${correction}`);
    },
  );

  test('its modules are as large on paper as published, with the clear paper round it', () => {
    expect(reference('qr-module-size').says).toContain('0.396 to 0.990');
    for (const job of [demoJob(), noted(650)]) {
      const code = codeFor(job);
      const page = sheetOf(job, { pages: ['code'], code }).find(hasCode)!;
      const module = pixelsOf(page).size / code.modules.length;
      expect(module).toBeGreaterThanOrEqual(MODULE.least);
      expect(module).toBeLessThanOrEqual(MODULE.most);
      // What is clear round it goes into its own height and into the width of the column.
      const [, picture] = codeBlocks(code, 84, words.sheet.layout);
      const across = code.modules.length + 2 * QUIET;
      expect(picture!.height / across).toBeCloseTo(Math.min(MODULE.most, 84 / across), 9);
    }
    // The published example: 29 modules at the least size.
    expect((29 + 2 * QUIET) * MODULE.least).toBeCloseTo(14.652, 3);
  });

  test('a job too large for a code gets a word instead, and the sheet is whole', () => {
    const job = noted(1_500);
    expect(codeOf(urlOf(job))).toEqual({ is: 'too-large' });
    const pages = sheetOf(job, { code: { is: 'too-large' } });
    expect(pages.some(hasCode)).toBe(false);
    expect(writtenOn(pages).replaceAll('\n', ' ')).toContain('too large for a code');
  });

  test('none where no other device could follow it; said only where nothing else is printed', () => {
    const code = { is: 'no-address' } as const;
    expect(writtenOn(sheetOf(demoJob(), { code }))).not.toContain('No code');
    expect(writtenOn(sheetOf(demoJob(), { code, pages: ['code'] }))).toContain('No code');
  });

  test('and none when it isn’t chosen', () => {
    const code = codeFor(demoJob());
    expect(sheetOf(demoJob(), { code, pages: ['order'] }).some(hasCode)).toBe(false);
    expect(sheetOf(demoJob(), { code }).filter(hasCode)).toHaveLength(1);
  });
});

test('outlines: modules side by side are one shape, its corners only where it turns', () => {
  const rows = ['##.', '##.', '..#'].map((row) => [...row].map((sign) => sign === '#'));
  const loops = outlinesOf(rows);
  // The two shapes touch at a corner: as one outline or as two, it is filled alike.
  expect(loops.flat()).toHaveLength(8);
  const ring = ['###', '#.#', '###'].map((row) => [...row].map((sign) => sign === '#'));
  expect(outlinesOf(ring).map((loop) => loop.length)).toEqual([4, 4]);
  expect(outlinesOf([[false]])).toEqual([]);
});
