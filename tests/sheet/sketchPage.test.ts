import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../src/drawing/bounds.ts';
import { en as drawing } from '../../src/drawing/words/en.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { blankJob, rectangleJob } from '../../src/job/start.ts';
import { PAPERS } from '../../src/sheet/papers.ts';
import { sketchPage } from '../../src/sheet/sketchPage.ts';
import { en as sheet } from '../../src/sheet/words/en.ts';
import { writeSvg } from '../../src/sheet/writeSvg.ts';
import type { Station } from '../../src/takeoff/figure.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, METRE } from '../../src/units/grid.ts';

const words = { sheet, drawing };

function sketched(job: Job, station: Station = 'ground') {
  const made = sketchPage(job, takeoff(job), { station, paper: 'letter', words });
  if (!made) throw new Error('larger than any scale');
  return made;
}

function rectangle(length: number, width: number): Job {
  const made = rectangleJob(length, width);
  if (!made.ok) throw new Error('a plain rectangle');
  return made.value;
}

describe('the sketch as a picture', () => {
  test.each(['ground', 'forms', 'steel', 'joints', 'mix', 'order'] as const)(
    '%s: all that is drawn is on the page, and the page fits the paper',
    (station) => {
      const { page } = sketched(demoJob(), station);
      const [short, long] = [PAPERS.letter.width, PAPERS.letter.height];
      expect(Math.max(page.width, page.height)).toBeLessThanOrEqual(long);
      expect(Math.min(page.width, page.height)).toBeLessThanOrEqual(short);
      for (const { marks, gridPerMm, from, at } of page.parts) {
        const box = boundsOf(marks, { gridPerMm })!;
        expect(at.x + (box.minX - from.x) / gridPerMm).toBeGreaterThanOrEqual(0);
        expect(at.x + (box.maxX - from.x) / gridPerMm).toBeLessThanOrEqual(page.width);
        expect(at.y - (box.maxY - from.y) / gridPerMm).toBeGreaterThanOrEqual(0);
        expect(at.y - (box.minY - from.y) / gridPerMm).toBeLessThanOrEqual(page.height);
      }
    },
  );

  test('a side is as long as the stated scale says, and its words are words', () => {
    const { page, scale } = sketched(rectangle(12 * FOOT, 10 * FOOT));
    expect(scale.name).toBe('1/2" = 1\'-0"');
    const svg = writeSvg(page, 'sketch');
    expect(svg).toContain(scale.name.replaceAll('"', '&quot;'));
    expect(svg).toMatch(/<text [^>]*>12&#39;-0&quot;<\/text>|<text [^>]*>12'-0&quot;<\/text>/);
    // Twelve feet at half an inch to the foot are six inches: two corners of the pour lie so far apart in the drawing.
    const places = [...svg.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((found) => Number(found[1]));
    const six = 6 * 25.4;
    expect(places.some((x) => places.some((other) => Math.abs(other - x - six) < 0.002))).toBe(
      true,
    );
  });

  test('the scale follows the size and the units of the job', () => {
    expect(sketched({ ...rectangle(3 * METRE, 2 * METRE), units: 'metric' }).scale.name).toBe(
      '1:20',
    );
    expect(sketched(rectangle(190 * METRE, 100 * METRE)).scale.ratio).toBeGreaterThan(480);
  });

  test('an empty job and one that can’t be poured give a page too', () => {
    expect(writeSvg(sketched(blankJob()).page, 'a')).toContain(sheet.layout.noName);
    const { features, ...job } = demoJob();
    const alone = { ...job, features: features.filter(({ kind }) => kind === 'utility-line') };
    expect(sketched(alone).page.height).toBeGreaterThan(30);
  });

  test('any letters a name may have stay as they are', () => {
    const svg = writeSvg(sketched({ ...demoJob(), name: '<b>& Núñez 漢' }).page, 'a');
    expect(svg).toContain('&lt;b&gt;&amp; Núñez 漢');
  });
});
