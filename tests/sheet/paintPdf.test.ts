import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { rectangleJob } from '../../src/job/start.ts';
import { paintPdf } from '../../src/sheet/paintPdf.ts';
import { FOOT } from '../../src/units/grid.ts';
import { fonts, pdfOf, sheetOf } from './made.ts';
import { contentStreams, drawnLines, pageSizes } from './readPdf.ts';

const INCH_POINTS = 72;

function rectangle(length: number, width: number): Job {
  const job = rectangleJob(length * FOOT, width * FOOT);
  if (!job.ok) throw new Error('no job');
  return { ...job.value, name: 'Landing' };
}

describe('the PDF', () => {
  test('a side of 10 ft is 5 in at 1/2 in to the foot', async () => {
    const pages = sheetOf(rectangle(10, 8), { scale: '1/2" = 1\'-0"' });
    const [content] = contentStreams(await pdfOf(pages));
    const edges = drawnLines(content!).filter(({ width }) => width === 0.7);
    const lengths = edges.map(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1]));
    expect(lengths.filter((length) => Math.abs(length - 5 * INCH_POINTS) < 0.01)).toHaveLength(2);
    expect(lengths.filter((length) => Math.abs(length - 4 * INCH_POINTS) < 0.01)).toHaveLength(2);
  });

  test('at 1:50 a side of 3 m is 60 mm', async () => {
    const job = rectangle(10, 8);
    const metric: Job = { ...job, units: 'metric' };
    const pages = sheetOf(metric, { paper: 'a4', scale: '1:50' });
    const [content] = contentStreams(await pdfOf(pages));
    const edges = drawnLines(content!).filter(({ width }) => width === 0.7);
    const lengths = edges.map(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1]));
    // 10 ft = 3048 mm: 60.96 mm on paper.
    const expected = (60.96 / 25.4) * INCH_POINTS;
    expect(lengths.filter((length) => Math.abs(length - expected) < 0.01)).toHaveLength(2);
  });

  test('the check bar is 2 in long', async () => {
    const [content] = contentStreams(await pdfOf(sheetOf(demoJob())));
    const lengths = drawnLines(content!).map(({ from, to }) =>
      Math.hypot(to[0] - from[0], to[1] - from[1]),
    );
    expect(lengths.some((length) => Math.abs(length - 2 * INCH_POINTS) < 0.01)).toBe(true);
  });

  test.each([
    ['letter', 'upright', 612, 792],
    ['letter', 'sideways', 792, 612],
    // 210 × 297 mm in points.
    ['a4', 'upright', 595.2756, 841.8898],
    ['a4', 'sideways', 841.8898, 595.2756],
    ['tabloid', 'upright', 792, 1224],
    ['tabloid', 'sideways', 1224, 792],
    ['a3', 'upright', 841.8898, 1190.5512],
    ['a3', 'sideways', 1190.5512, 841.8898],
  ] as const)('%s %s is exactly that size', async (paper, turn, width, height) => {
    const sizes = pageSizes(await pdfOf(sheetOf(demoJob(), { paper, turn })));
    expect(sizes.length).toBeGreaterThan(1);
    for (const size of sizes) {
      expect(size[0]).toBeCloseTo(width, 2);
      expect(size[1]).toBeCloseTo(height, 2);
    }
  });

  test('the file of the sample job is small, and a file', async () => {
    const bytes = await paintPdf(sheetOf(demoJob()), { fonts, title: 'Sample', date: new Date(0) });
    expect(Buffer.from(bytes.slice(0, 5)).toString()).toBe('%PDF-');
    expect(bytes.length).toBeLessThan(300_000);
    expect(bytes.length).toBeGreaterThan(5_000);
  });

  test('texts can be selected: letters are mapped back to what they are', async () => {
    const pdf = await pdfOf(sheetOf(demoJob()));
    expect(pdf).toContain('/ToUnicode');
    expect(pdf).toContain('/FontFile');
  });
});
