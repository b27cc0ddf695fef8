import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { steelLegendRows } from '../../../src/sheet/pages/steelLegend.ts';
import { STROKES } from '../../../src/sheet/paint/strokes.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { FOOT, MILLIMETRE } from '../../../src/units/grid.ts';
import { formatLength } from '../../../src/units/length.ts';
import { slab, steeled } from '../../takeoff/steel/steelJobs.ts';
import { pdfOf, sheetOf, words, writtenOn } from '../made.ts';
import { contentStreams, drawnLines } from '../readPdf.ts';

const { steel: said } = en.layout;

function withSteel(kind: 'mesh' | 'bars' | 'none', dowels = true, job = demoJob()): Job {
  const { steel } = job.practices;
  return steeled(job, {
    kind,
    dowels: { ...steel.dowels, use: dowels },
    supports: { by: 'chairs', spacing: 3 * FOOT, below: FOOT / 6 },
  });
}

function steelPagesOf(job: Job) {
  const called = new RegExp(`: ${said.title}, `);
  return sheetOf(job).filter(({ title }) => called.test(title));
}

describe.each(['mesh', 'bars'] as const)('%s on the sheet', (kind) => {
  const job = withSteel(kind);
  const pages = sheetOf(job);
  const own = steelPagesOf(job);

  test('a plan to a stated scale, then its tables, after the forms', () => {
    expect(own.length).toBeGreaterThan(1);
    expect(writtenOn([own[0]!])).toMatch(/^Scale {2}\S+" = 1'-0"$/m);
    expect(writtenOn([own[0]!])).toContain(en.layout.checkBar);
    const titles = pages.map(({ title }) => title);
    expect(titles.indexOf(own[0]!.title)).toBeGreaterThan(
      titles.findLastIndex((title) => title.includes(en.layout.forms.title)),
    );
  });

  test('its tables and cautions stand on its pages once, and no more on the lists', () => {
    const written = writtenOn(own).split('\n');
    const lists = writtenOn(pages.filter(({ title }) => title.includes(en.layout.lists)));
    const { tables } = ticketOf(job, takeoff(job), 'steel');
    expect(tables.length).toBeGreaterThan(2);
    for (const { key } of tables) {
      // A table and what is ordered may bear the same name.
      expect(written.filter((one) => one === en.tables[key]).length).toBeGreaterThanOrEqual(1);
    }
    expect(lists.split('\n')).not.toContain(en.tables['dowel-holes']);
    const opening = 'Drilling into concrete';
    expect(writtenOn(own)).toContain(opening);
    expect(lists).not.toContain(opening);
    const caution = { mesh: 'Mesh springs back', bars: 'A bar end that stands up' }[kind];
    expect(writtenOn(own)).toContain(caution);
  });

  test('what is bought, chairs and ties are counted there', () => {
    const written = writtenOn(own);
    const { figures } = ticketOf(job, takeoff(job), 'steel');
    const names = figures.filter(({ role }) => role === 'order').map(({ key }) => en.figures[key]);
    for (const name of [...names, en.figures['steel-chairs'], en.figures['steel-ties']]) {
      expect(written).toContain(name);
    }
  });

  test('every sign on the plan has a row with words, none cut off in the narrow column', () => {
    const rows = steelLegendRows(job, takeoff(job), words, 48 * MILLIMETRE);
    const written = rows.flatMap((row) =>
      row(0, 0, 60).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
    );
    expect(written.filter((one) => one.includes('…'))).toEqual([]);
    const whole = written.join(' ');
    expect(whole).toContain(said.dowel);
    expect(whole).toContain(said.chair(formatLength(3 * FOOT, job.units)));
    expect(whole.includes(said.piece)).toBe(kind === 'mesh');
    expect(whole.includes(said.corner)).toBe(kind === 'bars');
  });
});

test('no page where there is neither steel nor joint; dowels alone have one, and joints too', () => {
  expect(steelPagesOf(withSteel('none', false, slab(9, 9)))).toEqual([]);
  const jointed = writtenOn(steelPagesOf(withSteel('none', false, slab(20, 10))));
  expect(jointed).toContain('C1');
  expect(jointed).toContain('10\'-0"');
  const alone = writtenOn(steelPagesOf(withSteel('none')));
  const opening = (said: string) => said.slice(0, 24);
  expect(alone).toContain(opening(said.fromDowels));
  expect(alone).not.toContain(opening(said.fromMesh));
});

test('a line type of its own for what lies under and for every kind of bar, whatever the colour', () => {
  const marks = (['mesh', 'mesh-under', 'bar', 'bar-corner', 'dowel'] as const).map((style) => {
    const { width, dash } = STROKES[style];
    return `${width} ${dash}`;
  });
  expect(new Set(marks).size).toBe(marks.length);
});

test('in the PDF a piece of mesh is as long as it is cut, at the scale of the page', async () => {
  const job = withSteel('mesh', false, slab(9, 4));
  const [piece] = takeoff(job).steel!.mesh!.plan.pieces;
  const plan = steelPagesOf(job)[0]!;
  const { gridPerMm } = plan.parts[0]!;
  const [content] = contentStreams(await pdfOf([plan]));
  const lengths = drawnLines(content!)
    .filter(({ width }) => width === STROKES.mesh.width)
    .map(({ from, to }) => (Math.hypot(to[0] - from[0], to[1] - from[1]) * 25.4) / 72);
  const paper = piece!.length / gridPerMm;
  expect(lengths.some((one) => Math.abs(one - paper) < 0.01)).toBe(true);
});
