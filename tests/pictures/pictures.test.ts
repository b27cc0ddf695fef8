import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { boundsOf } from '../../src/drawing/bounds.ts';
import { drawPlan } from '../../src/drawing/plan.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { layoutSheet } from '../../src/sheet/layoutSheet.ts';
import type { SheetPage } from '../../src/sheet/page.ts';
import { writeSvg } from '../../src/sheet/writeSvg.ts';
import type { Station } from '../../src/takeoff/figure.ts';
import type { Takeoff } from '../../src/takeoff/result.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { randomPadJob } from '../drawing/randomPads.ts';
import { sectionJobs } from '../drawing/sections/sectionJobs.ts';
import { sheetOf, words } from '../sheet/made.ts';

/**
 * Drawings held against pictures that somebody looked at. After a wanted change: UPDATE=1 npm test -- pictures, look at
 * each, commit. Numbers are tested elsewhere; this flag rewrites pictures only.
 */
function hold(name: string, svg: string): void {
  const path = join(import.meta.dirname, `${name}.svg`);
  const changed = join(import.meta.dirname, `${name}-changed.svg`);
  if (process.env['UPDATE'] === '1') writeFileSync(path, svg);
  const known = existsSync(path) ? readFileSync(path, 'utf8') : '';
  if (known === svg) rmSync(changed, { force: true });
  else writeFileSync(changed, svg);
  expect(known === svg, `${name}.svg has changed: look at ${name}-changed.svg beside it`).toBe(true);
}

/** A station's drawing as it stands on a phone: 390 px wide, a px to the grid of its view. */
function onScreen(job: Job, station: Station): SheetPage {
  const scale = { gridPerMm: 26_000 };
  const marks = drawPlan(job, takeoff(job), { station, scale, words: words.drawing, dimensions: true });
  const box = boundsOf(marks, scale)!;
  const [width, height] = [103.2, 90];
  return {
    width,
    height,
    title: station,
    parts: [
      {
        marks,
        gridPerMm: scale.gridPerMm,
        from: { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 },
        at: { x: width / 2, y: height / 2 },
      },
    ],
  };
}

test.each(['ground', 'forms', 'steel', 'joints'] as const)('the sample job on a phone: %s', (station) => {
  hold(`screen-${station}`, writeSvg(onScreen(demoJob(), station), station));
});

test('the crew sheet of the sample job', () => {
  sheetOf(demoJob()).forEach((page, i) => {
    hold(`sheet-${i + 1}`, writeSvg(page, `p${i + 1}`));
  });
});

test('the crew sheet of a pad with notches', () => {
  hold('sheet-notches', writeSvg(sheetOf(randomPadJob(11))[0]!, 'p'));
});

/** The sample with short boards on the truck and none to buy, a gas line by the front and a kicker to every stake of a run. */
function shortBoards(): { readonly job: Job; readonly figured: Takeoff } {
  const sample = demoJob();
  const boards = { id: 't1', size: '2x4', length: 5 * FOOT, count: 12, twisted: false } as const;
  const corner = (id: string, x: number, y: number) => ({ id, x: x * INCH, y: y * INCH, rise: 0 });
  const job: Job = {
    ...sample,
    lumber: { truck: [boards], yard: [] },
    features: [
      ...sample.features,
      {
        id: 'g1',
        name: '',
        kind: 'utility-line',
        service: 'gas',
        shape: {
          form: 'outline',
          closed: false,
          corners: [corner('g2', -60, -30), corner('g3', 80, 40)],
        },
      },
    ],
  };
  const figured = takeoff(job);
  const { stakes } = figured;
  if (!stakes) throw new Error('no stakes');
  const kicked = stakes.stakes.map((one) => (one.run === 'R3' ? { ...one, kicker: true } : one));
  return { job, figured: { ...figured, stakes: { ...stakes, stakes: kicked } } };
}

test('sections: a thickened edge on a base, an old slab with dowels, a sealed joint', () => {
  const job = sectionJobs()['full']!;
  sheetOf(job, { pages: ['sections'] }).forEach((page, i) => {
    hold(`sections-${i + 1}`, writeSvg(page, `s${i + 1}`));
  });
});

test('forms and stakes: splices with their cleats, kickers, ground near a buried line', () => {
  const { job, figured } = shortBoards();
  const page = layoutSheet(job, figured, { paper: 'letter', words, pages: ['forms'] })[0]!;
  hold('forms-plan', writeSvg(page, 'f'));
});
