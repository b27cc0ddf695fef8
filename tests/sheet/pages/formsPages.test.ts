import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../src/drawing/marks.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { blankJob, rectangleJob } from '../../../src/job/start.ts';
import { formsLegendRows } from '../../../src/sheet/pages/formsLegend.ts';
import { STROKES } from '../../../src/sheet/paint/strokes.ts';
import { en } from '../../../src/sheet/words/en.ts';
import type { Takeoff } from '../../../src/takeoff/result.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { pdfOf, sheetOf, words, writtenOn } from '../made.ts';
import { contentStreams, drawnLines } from '../readPdf.ts';

const { forms: said, page: pageOf } = en.layout;

function formsPagesOf(job: Job) {
  return sheetOf(job).filter(({ title }) => title.includes(said.title));
}

describe('forms and stakes on the sheet', () => {
  test('a plan to a stated scale right after the layout, then its tables', () => {
    const pages = sheetOf(demoJob());
    const at = pages.findIndex(({ title }) => title.includes(said.title));
    expect(pages[at - 1]!.title).toContain(en.layout.layout);
    expect(pages[at]!.title).toContain(pageOf(at + 1, pages.length));
    const written = writtenOn([pages[at]!]);
    expect(written).toMatch(/^Scale {2}\S+" = 1'-0"$/m);
    expect(written).toContain(en.layout.checkBar);
    expect(pages[at + 1]!.title).toContain(said.title);
  });

  test('every run, board and stake is on its plan, or the list beside it says where', () => {
    const job = demoJob();
    const { forms, boards } = takeoff(job);
    const written = writtenOn([formsPagesOf(job)[0]!]);
    const marks = [
      ...forms!.runs.map(({ mark }) => mark),
      ...boards!.plan.boards.flatMap(({ pieces }) => pieces.map(({ mark }) => mark)),
    ];
    for (const mark of marks) expect(written).toMatch(new RegExp(`(^| )${mark}(,|$)`, 'm'));
  });

  test('the tables of the forms stand on its pages once, and no more on the lists', () => {
    const job = demoJob();
    const pages = sheetOf(job);
    const own = writtenOn(pages.filter(({ title }) => title.includes(said.title)));
    const rest = writtenOn(pages.filter(({ title }) => !title.includes(said.title)));
    const { tables } = ticketOf(job, takeoff(job), 'forms');
    expect(tables.length).toBeGreaterThan(1);
    for (const { key } of tables) {
      expect(own.split('\n').filter((one) => one === en.tables[key])).toHaveLength(1);
      expect(rest.split('\n')).not.toContain(en.tables[key]);
    }
  });

  test('cautions of the forms stand with them, and no more on the lists', () => {
    const pages = sheetOf(demoJob());
    const lists = writtenOn(pages.filter(({ title }) => title.includes(en.layout.lists)));
    const opening = 'Have buried lines marked';
    expect(writtenOn(formsPagesOf(demoJob()))).toContain(opening);
    expect(lists).not.toContain(opening);
  });

  test('no page where nothing is formed', () => {
    expect(formsPagesOf(blankJob())).toEqual([]);
  });

  test('in the PDF a board is as long as it is cut, at the scale of the page', async () => {
    const made = rectangleJob(10 * FOOT, 8 * FOOT);
    if (!made.ok) throw new Error('no job');
    const truck = [{ id: 't', size: '2x4', length: 12 * FOOT, count: 4, twisted: false } as const];
    const job = { ...made.value, lumber: { truck, yard: [] } };
    const longest = Math.max(
      ...takeoff(job).boards!.plan.boards.flatMap(({ pieces }) => pieces.map((one) => one.length)),
    );
    const plan = formsPagesOf(job)[0]!;
    const { gridPerMm } = plan.parts[0]!;
    const [content] = contentStreams(await pdfOf([plan]));
    const boards = drawnLines(content!).filter(({ width }) => width === STROKES.board.width);
    // Closed outlines: the two long sides, or half a side where the other half lies under another board.
    const lengths = boards.map(
      ({ from, to }) => (Math.hypot(to[0] - from[0], to[1] - from[1]) * 25.4) / 72,
    );
    const paper = longest / gridPerMm;
    expect(lengths.some((one) => [1, 2].some((n) => Math.abs(n * one - paper) < 0.01))).toBe(true);
  });
});

/** A takeoff that has every sign the plan can show. */
function withEverySign(): Takeoff {
  const figured = takeoff(demoJob());
  const { stakes, boards } = figured;
  if (!stakes || !boards) throw new Error('stakes and boards');
  const [stake] = stakes.stakes;
  const place = { ...stake!, why: 'pour' as const };
  return {
    ...figured,
    boards: { ...boards, plan: { ...boards.plan, cost: { ...boards.plan.cost, splices: 1 } } },
    stakes: {
      ...stakes,
      stakes: [{ ...stake!, hand: 'h1', kicker: true }, ...stakes.stakes],
      held: (['inside-stake', 'kicker', 'spreader', 'weight'] as const).map((how) => ({
        ...place,
        how,
      })),
      broken: [{ run: 'R1', rule: 'spacing', at: stake!.at, found: 9 * INCH, allowed: 8 * INCH }],
    },
  };
}

describe('its legend', () => {
  const texts = (marks: readonly Mark[]) =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

  test('has a row with words for every sign, none cut off in the narrow column', () => {
    const rows = formsLegendRows(demoJob(), withEverySign(), words);
    const written = rows.flatMap((row) => texts(row(0, 0, 60)));
    const whole = written.join(' ');
    for (const { title: _, from: __, unmeasured: ___, ...signs } of [said]) {
      for (const [key, one] of Object.entries(signs)) {
        if (key === 'bareBoard' || key === 'manyUnmeasured') continue;
        expect(whole).toContain(one);
      }
    }
    expect(written.filter((one) => one.includes('…'))).toEqual([]);
  });

  test('has no row for what is not on the plan', () => {
    const rows = formsLegendRows(demoJob(), takeoff(demoJob()), words);
    const written = rows.flatMap((row) => texts(row(0, 0, 64)));
    expect(written).not.toContain(said.lookHere);
    expect(written).not.toContain(said.hand);
  });
});
