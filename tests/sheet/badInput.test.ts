import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { blankJob } from '../../src/job/start.ts';
import { paintPdf } from '../../src/sheet/paintPdf.ts';
import { fonts, sheetOf, words } from './made.ts';
import { readPdf } from './pdfReader.ts';

const { layout, weights } = words.sheet;

/** What an independent reader finds on each page, with every run of white space as one space. */
async function readBack(job: Job): Promise<readonly string[]> {
  const bytes = await paintPdf(sheetOf(job), { fonts, title: job.name, date: new Date(0) });
  const pages = await readPdf(bytes);
  for (const { embedded } of pages) expect(embedded).not.toContain(false);
  return pages.map(({ text }) => text.replace(/\s+/g, ' '));
}

/** The sample with other texts, small enough to be quick. */
function called(name: string, site: string, feature: string): Job {
  const job = demoJob();
  const pad = job.features.filter(({ kind }) => kind === 'pad');
  return {
    ...job,
    name,
    site,
    notes: name,
    features: pad.map((one) => ({ ...one, name: feature })),
  };
}

describe('read back from the PDF', () => {
  test('a title of emoji and of letters that the typeface lacks: a question mark for each, and a word of it', async () => {
    const pages = await readBack(called('Yard 🚧👷‍♀️ 庭', '🏠 Lane', '🧱'));
    expect(pages[0]).toContain('Yard ?? ?');
    expect(pages[0]).toContain('? Lane');
    expect(pages.join(' ')).toContain(layout.lettersMissing);
  });

  test('right-to-left names: as many question marks as letters, none turned about or dropped', async () => {
    const pages = await readBack(called('رصيف Walk', 'דרך 7', 'דרך'));
    expect(pages[0]).toContain('???? Walk');
    expect(pages[0]).toContain('??? 7');
    expect(pages.join(' ')).toContain(layout.lettersMissing);
  });

  test('a very long name is cut in the title of every page, and stands whole in the notes', async () => {
    const name = `${'A name that goes on and on without an end in sight '.repeat(8)}until here`;
    const pages = await readBack(called(name, 'Averylongword'.repeat(20), name));
    for (const page of pages) {
      expect(page).toContain('A name that goes on');
      expect(page).toContain('…');
      expect(page).toMatch(/Page \d+ of \d+/);
    }
    expect(pages.at(-1)).toContain('until here');
  });

  test('a name of white space and signs without a width is no name', async () => {
    const pages = await readBack(called(' \u200b\u202e \t', '', ''));
    expect(pages[0]).toContain(layout.noName);
  });

  test('an empty job says that nothing is drawn, gives no figure, and what stands in the way', async () => {
    const pages = await readBack(blankJob());
    expect(pages[0]).toContain(layout.nothing);
    expect(pages.join(' ')).toContain(weights.stop);
    expect(pages.join(' ')).not.toContain(layout.materialList);
    expect(pages.length).toBeLessThanOrEqual(3);
  });
});
