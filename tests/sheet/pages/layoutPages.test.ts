import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import { blankJob } from '../../../src/job/start.ts';
import { padJob, TEN_BY_TWELVE } from '../../takeoff/layout/forms.ts';
import { jobOf, shape } from '../../takeoff/outline/site.ts';
import { sheetOf, words, writtenOn } from '../made.ts';

const { layout, tables } = words.sheet;

describe('squaring and layout on the sheet', () => {
  test('a page of its own after the plans: ties, 3-4-5, offsets, with room to write what was measured', () => {
    const pages = sheetOf(padJob(TEN_BY_TWELVE));
    const at = pages.findIndex(({ title }) => title.includes(layout.setOut));
    const { sections, steel, forms } = layout;
    const plans = [layout.layout, forms.title, steel.title, sections.title];
    const isPlan = (title: string) => plans.some((one) => title.includes(one));
    expect(pages.slice(1, at).every(({ title }) => isPlan(title))).toBe(true);
    expect(at).toBeGreaterThan(1);
    const said = writtenOn([pages[at]!]).split('\n');
    for (const one of [
      'A–B',
      'A–C',
      'B–D',
      `15'-7 7/16"`,
      tables['layout-squares'],
      layout.measured,
    ]) {
      expect(said.map((text) => text.replaceAll('\u00a0', ' '))).toContain(one);
    }
    // What is on the plan under the same letters.
    const plan = writtenOn([pages[0]!]).split('\n');
    for (const letter of ['A', 'B', 'C', 'D', '0', 'M1', 'M2']) expect(plan).toContain(letter);
  });

  test('goes by what was chosen; what the tape said stays off it', () => {
    const job = demoJob();
    const said = writtenOn(
      sheetOf(job, {
        setOut: {
          baseline: { feature: 'f1', corner: 'c5' },
          marks: [
            { feature: 'f1', corner: 'c5' },
            { feature: 'f12', corner: 'c13' },
          ],
        },
      }),
    ).replaceAll('\n', ' ');
    expect(said).toContain('Baseline: Older patio.');
    expect(said).toContain('M1: Older patio, its corner D.');
    expect(said).toContain('M2: Stoop, its corner A.');
    expect(said).not.toContain(tables['layout-moves']);
  });

  test('a choice that is gone is said so on paper, and its table left out', () => {
    const pages = sheetOf(padJob(TEN_BY_TWELVE), {
      setOut: { baseline: { feature: 'gone', corner: 'x' } },
    });
    const said = writtenOn(pages).replaceAll('\n', ' ');
    expect(said).toContain('The chosen baseline isn’t there any more');
    expect(said).not.toContain(tables['layout-offsets']);
  });

  test('every pad is set out; a choice for one leaves the other to the rule', () => {
    const job = jobOf([
      shape('pad', 'one', TEN_BY_TWELVE),
      shape('pad', 'two', [
        [20, 0],
        [29, 0],
        [29, 7],
        [20, 7],
      ]),
    ]);
    const said = writtenOn(
      sheetOf(job, { setOut: { pad: 'two', baseline: { feature: 'two', corner: 'two-1' } } }),
    ).replaceAll('\n', ' ');
    expect(said).toContain(`${layout.setOut}: one`);
    expect(said).toContain(`${layout.setOut}: two`);
    expect(said).toContain('Baseline: one.');
    expect(said).toContain('Baseline: two.');
  });

  test('no page without a form to set out', () => {
    const titles = sheetOf(blankJob()).map(({ title }) => title);
    expect(titles.some((title) => title.includes(layout.setOut))).toBe(false);
  });
});
