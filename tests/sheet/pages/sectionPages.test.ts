import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../../src/drawing/bounds.ts';
import { demoJob } from '../../../src/job/demo.ts';
import { blankJob } from '../../../src/job/start.ts';
import type { SheetPage, SheetPart } from '../../../src/sheet/page.ts';
import { oneSection } from '../../../src/sheet/pages/oneSection.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { INCH, MILLIMETRE } from '../../../src/units/grid.ts';
import { sectionJobs } from '../../drawing/sections/sectionJobs.ts';
import { sheetOf, words, writtenOn } from '../made.ts';

const { sections } = words.drawing;

/** Where a part's marks lie on the page, mm from its upper left corner. */
function placeOf({ marks, gridPerMm, from, at }: SheetPart) {
  const { minX, maxX, minY, maxY } = boundsOf(marks, { gridPerMm })!;
  return {
    left: at.x + (minX - from.x) / gridPerMm,
    right: at.x + (maxX - from.x) / gridPerMm,
    top: at.y - (maxY - from.y) / gridPerMm,
    bottom: at.y - (minY - from.y) / gridPerMm,
  };
}

/** The drawings of sections on a page: what isn't at full size. */
function drawings({ parts }: SheetPage): readonly SheetPart[] {
  return parts.filter(({ gridPerMm }) => gridPerMm !== MILLIMETRE);
}

const PAPERS = ['letter', 'a4', 'tabloid'] as const;

describe.each(Object.entries(sectionJobs()))('%s', (_, job) => {
  test.each(PAPERS)(
    'on %s, either way up: on the page, beside each other, at the scale that is said',
    (paper) => {
      for (const turn of ['upright', 'sideways'] as const) {
        const pages = sheetOf(job, { paper, turn, pages: ['sections'] });
        expect(pages.length).toBeGreaterThan(0);
        for (const page of pages) {
          const places = drawings(page).map(placeOf);
          expect(places.length).toBeGreaterThan(0);
          places.forEach((one, i) => {
            expect(one.left).toBeGreaterThan(12.7);
            expect(one.right).toBeLessThan(page.width - 12.7);
            // Over the title block and the bars.
            expect(one.bottom).toBeLessThan(page.height - 12.7 - 22 - 27);
            for (const other of places.slice(i + 1)) {
              const apart =
                one.right <= other.left ||
                other.right <= one.left ||
                one.bottom <= other.top ||
                other.bottom <= one.top;
              expect(apart).toBe(true);
            }
          });
          const ratio = drawings(page)[0]!.gridPerMm / MILLIMETRE;
          const name = { 4: '3"', 8: '1 1/2"', 12: '1"' }[ratio] ?? '';
          const scale = job.units === 'metric' ? `1:${ratio}` : `${name} = 1'-0"`;
          expect(writtenOn([page])).toContain(`${words.sheet.layout.scale}  ${scale}`);
        }
      }
    },
  );
});

test('every kind of edge of the sample has its section, lettered in order', () => {
  const said = writtenOn(sheetOf(demoJob(), { pages: ['sections'] }));
  for (const title of [
    `A · ${sections.titles.free}`,
    `B · ${sections.titles['existing-slab']}`,
    `C · ${sections.titles.wall}`,
    `D · ${sections.titles['wall-formed']}`,
    `E · ${sections.titles.steps}`,
    `F · ${sections.titles['block-out']}`,
  ])
    expect(said).toContain(title);
  expect(said.replaceAll('\n', ' ')).toContain('Local code decides');
});

test('a 4 in slab at 1 1/2 in to the foot is half an inch on paper', () => {
  const pages = sheetOf(demoJob(), { pages: ['sections'] });
  const { marks, gridPerMm } = drawings(pages[0]!)[0]!;
  expect(gridPerMm).toBe(8 * MILLIMETRE);
  const slab = marks.find((mark) => mark.kind === 'area' && mark.material === 'cut-concrete')!;
  const { minY, maxY } = boundsOf([slab], { gridPerMm })!;
  expect((maxY - minY) / gridPerMm).toBeCloseTo(12.7, 9);
});

test('nothing to pour: no page of sections', () => {
  const pages = sheetOf(blankJob(), { pages: ['sections'] });
  expect(pages.some(({ title }) => title.includes(words.sheet.layout.sections.title))).toBe(false);
});

test('for a screen, one section as wide as is asked for', () => {
  const job = demoJob();
  const page = oneSection('free', job, takeoff(job), 92, words);
  const [part] = page.parts;
  const { left, right, top, bottom } = placeOf(part!);
  expect(page.width).toBe(92);
  expect(left).toBeGreaterThan(0);
  expect(right).toBeLessThanOrEqual(92);
  expect(top).toBeGreaterThan(0);
  expect(bottom).toBeLessThan(page.height);
  expect(part!.gridPerMm).toBeLessThan(13 * MILLIMETRE);
  expect(INCH / part!.gridPerMm).toBeGreaterThan(1.5);
});
