import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/marks.ts';
import { drawPlan } from '../../src/drawing/plan.ts';
import { textWidth } from '../../src/drawing/textSize.ts';
import { drawTimeline } from '../../src/drawing/timeline.ts';
import { en } from '../../src/drawing/words/en.ts';
import { timelineEs } from '../../src/drawing/words/timelineEs.ts';
import type { Job } from '../../src/job/job.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, MILLIMETRE } from '../../src/units/grid.ts';
import { evenly, PLACING_JOBS, pad, TEN_BY_TWELVE } from '../takeoff/placing/placingJobs.ts';

const THREE = evenly([pad(...TEN_BY_TWELVE)], { board: 6 * FOOT });
const WIDTH = 96;

type Text = Extract<Mark, { kind: 'text' }>;
const textsOf = (marks: readonly Mark[]) =>
  marks.filter((mark): mark is Text => mark.kind === 'text');

function timelineOf(job: Job, words = en.timeline) {
  return drawTimeline(takeoff(job).placing!, { x: 0, y: 0, width: WIDTH, words });
}

describe('the day of the pour', () => {
  test('has a row a strip, the hours, and when the last concrete lies', () => {
    const said = textsOf(timelineOf(THREE).marks).map(({ text }) => text);
    expect(said).toEqual(expect.arrayContaining(['S1', 'S2', 'S3', '0:00', '1:00']));
    expect(said).toContain(en.timeline.lastPlaced('2:30'));
    expect(said.filter((one) => one === 'P')).toHaveLength(3);
  });

  test('a bar is as long as the placing takes, to scale', () => {
    const { timeline } = takeoff(THREE).placing!;
    const [first] = timelineOf(THREE).marks.filter(
      (mark) => mark.kind === 'area' && mark.material === 'fresh-concrete',
    );
    const path = (first as Extract<Mark, { kind: 'area' }>).paths[0]!;
    const long = (path.segments[0]!.to.x - path.start.x) / MILLIMETRE;
    const [strip] = timeline.strips;
    // The marks of the strips take 11 mm of its left, and 2 mm stay free at its right.
    expect(long).toBeCloseTo(((strip!.to - strip!.from) / timeline.done) * (WIDTH - 13), 6);
  });

  test('the set is marked where it falls within the day, as a fault when it comes too soon', () => {
    const soon = timelineOf(PLACING_JOBS['sets too soon']!).marks;
    expect(soon.some((mark) => mark.kind === 'line' && mark.style === 'fault')).toBe(true);
    expect(textsOf(soon).map(({ text }) => text)).toContain(en.timeline.firstSets('1:00'));
    expect(
      timelineOf(THREE).marks.some((mark) => mark.kind === 'line' && mark.style === 'fault'),
    ).toBe(false);
  });

  test.each([
    ['English', en.timeline],
    ['Spanish', timelineEs],
  ])('stays on its paper in %s', (_, words) => {
    for (const job of [THREE, ...Object.values(PLACING_JOBS)]) {
      const { placing } = takeoff(job);
      if (!placing) continue;
      const { marks, height } = drawTimeline(placing, { x: 0, y: 0, width: WIDTH, words });
      for (const { at, text, anchor, height: size } of textsOf(marks)) {
        const wide = textWidth(text, size) * MILLIMETRE;
        const left = anchor === 'middle' ? at.x - wide / 2 : at.x;
        expect(left, text).toBeGreaterThanOrEqual(0);
        expect(left + wide, text).toBeLessThanOrEqual((WIDTH + 2) * MILLIMETRE);
        expect(-at.y / MILLIMETRE).toBeLessThanOrEqual(height);
      }
    }
  });
});

test('the plan at the Mix station shows every strip with its mark and its pull, and rails between', () => {
  const marks = drawPlan(THREE, takeoff(THREE), {
    station: 'mix',
    scale: { gridPerMm: FOOT / 20 },
    words: en,
    dimensions: true,
  });
  const said = textsOf(marks).map(({ text }) => text);
  expect(said).toEqual(expect.arrayContaining(['S1', 'S2', 'S3']));
  const arrows = marks.filter(
    (mark) => mark.kind === 'symbol' && mark.symbol === 'arrow' && mark.layer === 'pour',
  );
  expect(arrows).toHaveLength(3);
  const rails = marks.filter((mark) => mark.kind === 'line' && mark.style === 'hidden');
  expect(rails).toHaveLength(2);
});
