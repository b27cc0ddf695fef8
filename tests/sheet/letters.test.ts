import { describe, expect, test } from 'vitest';
import { USUAL_TERMS } from '../../src/drawing/words/terms.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { rectangleJob } from '../../src/job/start.ts';
import { layoutSheet } from '../../src/sheet/layoutSheet.ts';
import { PAPER_NAMES, type PaperName } from '../../src/sheet/papers.ts';
import { pageWords, type SheetLanguage } from '../../src/sheet/words/pageWords.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT } from '../../src/units/grid.ts';
import { randomPadJob } from '../drawing/randomPads.ts';
import { cutShort, onEachOther, outside, tooSmall } from './pageFaults.ts';

function landing(): Job {
  const job = rectangleJob(6 * FOOT, 4 * FOOT);
  if (!job.ok) throw new Error('no job');
  return job.value;
}

const metric = (job: Job): Job => ({ ...job, units: 'metric' });

const SMALL: readonly PaperName[] = ['letter', 'a4'];

const JOBS: readonly (readonly [string, Job, SheetLanguage, readonly PaperName[]])[] = [
  ['the sample job', demoJob(), 'en', PAPER_NAMES],
  ['the sample job in Spanish', demoJob(), 'es', SMALL],
  ['the sample job in both languages', demoJob(), 'both', PAPER_NAMES],
  ['the sample job in mm', metric(demoJob()), 'en', SMALL],
  ['the sample job in mm, in Spanish', metric(demoJob()), 'es', PAPER_NAMES],
  ['the sample job in decimal feet', { ...demoJob(), units: 'decimal-feet' }, 'en', ['tabloid']],
  ['a landing', landing(), 'en', PAPER_NAMES],
  ['a turned pad with steps', randomPadJob(7), 'both', SMALL],
  ['a pad with notches, in mm', metric(randomPadJob(11)), 'es', SMALL],
];

describe.each(JOBS)('%s', (_, job, language, papers) => {
  const figured = takeoff(job);
  const words = pageWords(language, USUAL_TERMS);

  test.each(papers)(
    'on %s: letters 2.5 mm or higher, clear of each other, none cut off',
    (paper) => {
      for (const onePage of SMALL.includes(paper) ? [false, true] : [false]) {
        const pages = layoutSheet(job, figured, { paper, words, onePage });
        expect(pages.flatMap(tooSmall)).toEqual([]);
        expect(pages.flatMap(onEachOther)).toEqual([]);
        expect(pages.flatMap(outside)).toEqual([]);
        expect(pages.flatMap((page) => cutShort(page, /Feed to/))).toEqual([]);
      }
    },
  );
});
