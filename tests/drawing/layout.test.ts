import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/marks.ts';
import { type PlanOptions, planOf } from '../../src/drawing/plan.ts';
import { en } from '../../src/drawing/words/en.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { cornerLetter } from '../../src/job/letters.ts';
import { layoutOf } from '../../src/takeoff/layout/layout.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { MILLIMETRE } from '../../src/units/grid.ts';
import { padJob, TEN_BY_TWELVE } from '../takeoff/layout/forms.ts';
import { randomPadJob } from './randomPads.ts';

const SHEET: PlanOptions = {
  station: 'sheet',
  scale: { gridPerMm: 48 * MILLIMETRE },
  words: en,
  dimensions: true,
};

function marksOf(job: Job, more: Partial<PlanOptions> = {}): readonly Mark[] {
  return planOf(job, takeoff(job), { ...SHEET, ...more }).marks;
}

/** Letters of corners and marks: bold, which the letters of edge kinds aren't. */
function letterMarks(marks: readonly Mark[]) {
  return marks.flatMap((mark) =>
    mark.kind === 'text' && mark.style === 'label' && /^(0|M\d|[A-Z]{1,2})$/.test(mark.text)
      ? [mark]
      : [],
  );
}

describe('letters of corners', () => {
  test('one for each corner of the pad, at it, as in the tables', () => {
    const job = padJob(TEN_BY_TWELVE);
    const letters = letterMarks(marksOf(job));
    expect(letters.map(({ text }) => text)).toEqual(['A', 'B', 'C', 'D']);
    const { corners } = layoutOf(job, takeoff(job).pour, {}).laid!;
    for (const { letter, at } of corners) {
      const mark = letters.find(({ text }) => text === letter)!;
      expect(Math.hypot(mark.at.x - at.x, mark.at.y - at.y)).toBeLessThan(12 * 48 * MILLIMETRE);
    }
  });

  test('of the sample job all find room on the sheet', () => {
    expect(letterMarks(marksOf(demoJob())).map(({ text }) => text)).toEqual([...'ABCDEFGHIJKLMN']);
  });

  test('of random pads each stands on the plan or in the list, once', () => {
    let onPlan = 0;
    let inList = 0;
    for (let seed = 0; seed < 60; seed++) {
      const job = randomPadJob(seed);
      const { marks, keyed } = planOf(job, takeoff(job), SHEET);
      const letters = letterMarks(marks).map(({ text }) => text);
      const listed = keyed.filter(({ what }) => what === 'corner').map(({ text }) => text);
      const pads = job.features.filter(({ kind }) => kind === 'pad');
      const wanted = pads.flatMap(({ shape }) =>
        shape.form === 'outline' ? shape.corners.map((_, i) => cornerLetter(i)) : [],
      );
      expect([...letters, ...listed].sort(), `pad ${seed}`).toEqual([...wanted].sort());
      onPlan += letters.length;
      inList += listed.length;
    }
    expect(onPlan).toBeGreaterThan(10 * inList);
  }, 30_000);

  test('stand at the forms on the screen, but not twice on the selected pad, nor at other stations', () => {
    const job = padJob(TEN_BY_TWELVE);
    expect(letterMarks(marksOf(job, { station: 'forms' }))).toHaveLength(4);
    expect(letterMarks(marksOf(job, { station: 'forms', selected: 'pad' }))).toHaveLength(0);
    expect(letterMarks(marksOf(job, { station: 'mix' }))).toHaveLength(0);
  });
});

test('the line that is measured from, its zero, and both marks are drawn', () => {
  const job = demoJob();
  const layout = layoutOf(job, takeoff(job).pour, {});
  const marks = marksOf(job, { layouts: [layout] });
  const texts = letterMarks(marks).map(({ text }) => text);
  for (const text of ['0', 'M1', 'M2']) expect(texts.filter((one) => one === text)).toHaveLength(1);
  const line = marks.find((mark) => mark.kind === 'line' && mark.style === 'guide');
  expect(line?.kind === 'line' && line.path.start).toEqual(layout.offsets!.zero);
  const crosses = marks.filter((mark) => mark.kind === 'symbol' && mark.symbol === 'cross');
  for (const { at } of layout.tapeTies!.marks) {
    expect(crosses).toContainEqual(expect.objectContaining({ at }));
  }
});
