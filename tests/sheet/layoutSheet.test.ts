import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import type { Corner, Feature, Job } from '../../src/job/job.ts';
import { SERVICES } from '../../src/job/services.ts';
import { blankJob, rectangleJob } from '../../src/job/start.ts';
import type { SheetPage } from '../../src/sheet/page.ts';
import { scaleOf, scalesFor } from '../../src/sheet/scales.ts';
import { sayNote, sayQuantity } from '../../src/sheet/words/say.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { tickets } from '../../src/takeoff/tickets.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { randomPadJob } from '../drawing/randomPads.ts';
import { sheetOf, words, writtenOn } from './made.ts';
import { onEachOther, outside } from './pageFaults.ts';

const { layout } = words.sheet;

function rectangle(length: number, width: number): Job {
  const job = rectangleJob(length * FOOT, width * FOOT);
  if (!job.ok) throw new Error('no job');
  return job.value;
}

function pad(...places: readonly (readonly [number, number])[]): Job {
  const corners = places.map(
    ([x, y], i): Corner => ({ id: `c${i}`, x: x * INCH, y: y * INCH, rise: 0 }),
  );
  return {
    ...blankJob(),
    features: [
      { id: 'p', name: '', kind: 'pad', shape: { form: 'outline', closed: true, corners } },
    ],
    nextId: 50,
  };
}

/** So the legend is as long as it can be. */
function withEveryService(job: Job): Job {
  const lines = SERVICES.map((service, i): Feature => {
    const y = -(6 + 2 * i) * FOOT;
    const corners = [0, 18].map((x) => ({ id: `${service}${x}`, x: x * FOOT, y, rise: 0 }));
    return {
      id: service,
      name: '',
      kind: 'utility-line',
      service,
      shape: { form: 'outline', closed: false, corners },
    };
  });
  return { ...job, features: [...job.features, ...lines] };
}

/** All that is written, lines joined. */
function flatOf(pages: readonly SheetPage[]): string {
  return writtenOn(pages).replace(/\s+/g, ' ');
}

const ODD: readonly (readonly [string, Job])[] = [
  ['the sample job', demoJob()],
  ['a square yard', rectangle(3, 3)],
  ['a long walk', rectangle(90, 4)],
  ['a yard of 600 ft', rectangle(600, 400)],
  ['six inches', rectangle(0.5, 0.5)],
  ['nothing', blankJob()],
  ['a bow tie', pad([0, 0], [100, 100], [100, 0], [0, 100])],
  ['one corner', pad([0, 0])],
  [
    'long names',
    {
      ...demoJob(),
      name: 'The very long name of a job that somebody typed without ever stopping to breathe, twice over '.repeat(
        3,
      ),
      site: 'Averylongwordwithoutanyspaceinit'.repeat(12),
      notes: 'Line one.\n\nLine two is longer than the page is wide. '.repeat(60),
    },
  ],
  ['the sample job with every kind of buried line', withEveryService(demoJob())],
  [
    'emoji and right-to-left names',
    {
      ...demoJob(),
      name: '🚧👷‍♀️ رصيف الحديقة 庭',
      features: demoJob().features.map((feature, i) => ({
        ...feature,
        name: i % 2 === 0 ? '🏠🏠🏠' : 'דרך',
      })),
    },
  ],
  [
    'a hundred short edges',
    pad(
      ...Array.from({ length: 100 }, (_, i): readonly [number, number] => [
        Math.round(60 * Math.cos((i * Math.PI) / 50)) + (i % 2),
        Math.round(60 * Math.sin((i * Math.PI) / 50)),
      ]),
    ),
  ],
  ...Array.from({ length: 12 }, (_, i) => [`pad ${i}`, randomPadJob(i)] as const),
];

describe('every page', () => {
  test.each(ODD)(
    '%s: nothing is written outside the margins or the plan’s frame',
    (_, job) => {
      for (const paper of ['letter', 'a4'] as const) {
        for (const turn of ['upright', 'sideways'] as const) {
          const pages = sheetOf(job, { paper, turn });
          expect(pages.flatMap(outside)).toEqual([]);
          expect(new Set(pages.map(({ title }) => title)).size).toBe(pages.length);
        }
      }
    },
    30_000,
  );

  test.each(ODD)('%s: texts beside the plan and on the lists don’t lie on each other', (_, job) => {
    expect(sheetOf(job).flatMap(onEachOther)).toEqual([]);
  });
});

describe('what the sheet says', () => {
  const job = demoJob();
  const figured = takeoff(job);
  const flat = flatOf(sheetOf(job));

  test('every figure of every ticket, with its name', () => {
    for (const { figures } of tickets(job, figured)) {
      for (const { key, value } of figures) {
        expect(flat).toContain(words.sheet.figures[key].split(' ')[0]);
        expect(flat).toContain(sayQuantity(words.sheet, value, job.units));
      }
    }
  });

  test('every note: cautions and what was taken as so', () => {
    expect(figured.notes.length).toBeGreaterThan(5);
    for (const note of figured.notes) {
      // What a bid lacks is no business of the crew's.
      if (note.code.startsWith('bid-')) continue;
      const said = sayNote(words.sheet, note, job.units);
      for (const sentence of said.split('. ').slice(0, 2)) {
        expect(flat).toContain(sentence.split(' ').slice(0, 4).join(' '));
      }
    }
  });

  test('job, site, scale, the rule about figures, and the page', () => {
    for (const said of [
      job.name,
      job.site,
      layout.figuresRule,
      layout.sizes,
      layout.checkBar,
      '1/4" = 1\'-0"',
    ]) {
      expect(flat).toContain(said);
    }
    const title = { drawnBy: 'R. Foreman', revision: 'B', replaces: 'A', north: 90 };
    const pages = sheetOf({ ...job, title }, { date: '3 May' });
    expect(writtenOn(pages)).toContain('Revision B, replaces A');
    expect(writtenOn(pages)).toContain('Drawn by: R. Foreman');
    expect(writtenOn(sheetOf(job))).not.toContain('Revision');
    expect(writtenOn(pages)).toContain('Date 3 May');
    pages.forEach((page, i) => {
      expect(writtenOn([page])).toContain(layout.page(i + 1, pages.length));
    });
  });

  test('sizes that found no room go on to the lists, none dropped', () => {
    const crowded = pad(
      ...Array.from({ length: 100 }, (_, i): readonly [number, number] => [
        Math.round(600 * Math.cos((i * Math.PI) / 50)),
        Math.round(600 * Math.sin((i * Math.PI) / 50)) + (i % 2) * 40,
      ]),
    );
    const pages = sheetOf(crowded, { scale: '1" = 40\'' });
    const said = writtenOn(pages);
    const { pour } = takeoff(crowded);
    const edges = pour!.pieces[0]!.rings[0]!.edges;
    const lengths = edges.map(({ length }) =>
      sayQuantity(words.sheet, { of: 'length', grid: length }, 'feet-inches'),
    );
    for (const length of lengths) expect(said.replaceAll('\n', ' ')).toContain(length);
  });

  test('without a pour it says so, gives no figures, and still draws the outline', () => {
    const broken = pad([0, 0], [100, 100], [100, 0], [0, 100]);
    const pages = sheetOf(broken);
    const said = writtenOn(pages);
    expect(said).toContain(layout.withheld);
    expect(said).toContain(words.sheet.weights.stop);
    expect(said).not.toContain(layout.materialList);
    const lines = pages[0]!.parts[0]!.marks.filter(
      (mark) => mark.kind === 'line' && mark.style === 'outline',
    );
    expect(lines).toHaveLength(1);
  });

  test('letters that the typeface lacks are shown as a question mark, and that is said', () => {
    const said = flatOf(sheetOf({ ...rectangle(10, 8), name: 'Yard 庭 🚧' }));
    expect(said).toContain('Yard ? ?');
    expect(said).toContain(layout.lettersMissing);
    expect(flat).not.toContain(layout.lettersMissing);
  });
});

describe('chosen pages', () => {
  const called = (pages: readonly SheetPage[]) => [
    ...new Set(pages.map(({ title }) => /: (.+), /.exec(title)![1])),
  ];

  test('only what was chosen is printed, in the sheet’s order, numbered anew', () => {
    const pages = sheetOf(demoJob(), { pages: ['set-out', 'layout'] });
    expect(called(pages)).toEqual([layout.layout, layout.setOut]);
    expect(writtenOn([pages.at(-1)!])).toContain(layout.page(pages.length, pages.length));
  });

  test('cautions alone carry those of pages that aren’t printed', () => {
    const pages = sheetOf(demoJob(), { pages: ['cautions'] });
    expect(called(pages)).toEqual([layout.lists]);
    const flat = flatOf(pages);
    expect(flat).not.toContain(layout.materialList);
    for (const note of takeoff(demoJob()).notes) {
      // What was taken as so of the order stands with the order.
      if (note.station === 'order') continue;
      const said = sayNote(words.sheet, note, 'feet-inches');
      expect(flat).toContain(said.split(' ').slice(0, 4).join(' '));
    }
  });

  test('what stands in the way is printed whatever was chosen', () => {
    const pages = sheetOf(blankJob(), { pages: ['layout'] });
    expect(flatOf(pages)).toContain(words.sheet.weights.stop);
  });
});

describe('the scale', () => {
  test.each([
    [rectangle(10, 8), '1/2" = 1\'-0"'],
    [rectangle(4, 3), '1" = 1\'-0"'],
    [rectangle(24, 18), '1/4" = 1\'-0"'],
    [rectangle(200, 100), '1" = 40\''],
  ])('%#: the largest that fits', (job, scale) => {
    expect(writtenOn(sheetOf(job))).toContain(scale);
  });

  test('the paper is turned when that gives a larger scale', () => {
    expect(sheetOf(rectangle(18, 6))[0]!.width).toBeCloseTo(279.4, 9);
    expect(sheetOf(rectangle(6, 18))[0]!.width).toBeCloseTo(215.9, 9);
  });

  test('one that was asked for and doesn’t fit gives way, and that is said', () => {
    const said = flatOf(sheetOf(rectangle(40, 30), { scale: '1" = 1\'-0"' }));
    expect(said).toContain(layout.noScale('1" = 1\'-0"'));
  });

  test('scales are stated from large to small', () => {
    for (const units of ['feet-inches', 'metric'] as const) {
      const ratios = scalesFor(units).map(({ ratio }) => ratio);
      expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
    }
  });
});

test.each([
  ['feet-inches', '1/2', '1/2" = 1\'-0"'],
  ['feet-inches', '1/2 in', '1/2" = 1\'-0"'],
  ['feet-inches', '1 1/2"', '1 1/2" = 1\'-0"'],
  ['feet-inches', '1/4" = 1\'-0"', '1/4" = 1\'-0"'],
  ['feet-inches', '1:24', '1/2" = 1\'-0"'],
  ['metric', ' 1:50 ', '1:50'],
  ['metric', '1/2', undefined],
  ['feet-inches', 'large', undefined],
  ['feet-inches', '', undefined],
] as const)('%s: the scale “%s”', (units, typed, name) => {
  expect(scaleOf(units, typed)?.name).toBe(name);
});
