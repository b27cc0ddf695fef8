import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import { blankJob, rectangleJob } from '../../../src/job/start.ts';
import { isSmallPad } from '../../../src/sheet/pages/onePage.ts';
import { PAPER_NAMES } from '../../../src/sheet/papers.ts';
import { sayNote } from '../../../src/sheet/words/say.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { sheetOf, words, writtenOn } from '../made.ts';

function rectangle(length: number, width: number) {
  const job = rectangleJob(length * FOOT, width * FOOT);
  if (!job.ok) throw new Error('no job');
  return job.value;
}

const { layout } = words.sheet;

describe('one page', () => {
  test.each(PAPER_NAMES)(
    'of a small pad is one page, with plan, figures and every caution: %s',
    (paper) => {
      const job = rectangle(6, 4);
      const pages = sheetOf(job, { onePage: true, paper });
      expect(pages).toHaveLength(1);
      const flat = writtenOn(pages).replace(/\s+/g, ' ');
      for (const said of [
        '6\'-0"',
        '4\'-0"',
        layout.keyFigures,
        layout.checkBar,
        layout.figuresRule,
      ]) {
        expect(flat).toContain(said);
      }
      const figured = takeoff(job);
      const cautions = figured.notes.filter(({ weight }) => weight === 'caution');
      expect(cautions.length).toBeGreaterThan(2);
      for (const note of cautions) {
        const said = sayNote(words.sheet, note, job.units);
        expect(flat).toContain(said.split(' ').slice(0, 4).join(' '));
      }
    },
  );

  test('of a larger job what runs over goes to more pages, none of it dropped', () => {
    const job = demoJob();
    const pages = sheetOf(job, { onePage: true });
    const flat = writtenOn(pages).replace(/\s+/g, ' ');
    for (const note of takeoff(job).notes.filter(({ weight }) => weight === 'caution')) {
      const said = sayNote(words.sheet, note, job.units);
      expect(flat).toContain(said.split(' ').slice(0, 4).join(' '));
    }
  });

  test('of an empty job says what is in the way', () => {
    const flat = writtenOn(sheetOf(blankJob(), { onePage: true }));
    expect(flat).toContain(layout.nothing);
    expect(flat).toContain(words.sheet.weights.stop);
  });

  test('is proposed for small pads alone', () => {
    expect(isSmallPad(takeoff(rectangle(10, 12)))).toBe(true);
    expect(isSmallPad(takeoff(rectangle(10, 12.5)))).toBe(false);
    expect(isSmallPad(takeoff(blankJob()))).toBe(false);
  });
});
