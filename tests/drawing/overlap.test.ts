import { describe, expect, test } from 'vitest';
import { planOf } from '../../src/drawing/plan.ts';
import { en } from '../../src/drawing/words/en.ts';
import type { Point } from '../../src/geometry/point.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { MILLIMETRE } from '../../src/units/grid.ts';
import { formatLength } from '../../src/units/length.ts';
import { brokenChains, unsaidEdges } from './edgesSaid.ts';
import { overlaps, type Text } from './overlaps.ts';
import { randomPadJob } from './randomPads.ts';

function planAt(job: Job, ratio: number) {
  const figured = takeoff(job);
  const gridPerMm = ratio * MILLIMETRE;
  const plan = planOf(job, figured, {
    station: 'sheet',
    scale: { gridPerMm },
    words: en,
    dimensions: true,
  });
  return { plan, figured, gridPerMm };
}

describe('dimensions', () => {
  // At the scale of 1/4 in to the foot; on every paper and at every scale in tests/sheet/papers.test.ts.
  test.each([0, 100])(
    'nothing lies on anything else, and every edge is said: pads %i and on',
    (first) => {
      for (let seed = first; seed < first + 100; seed++) {
        const job = randomPadJob(seed);
        const drawn = planAt(job, 48);
        const { plan, gridPerMm } = drawn;
        expect(drawn.figured.pour, `pad ${seed}`).toBeDefined();
        expect(overlaps(plan.marks, gridPerMm), `pad ${seed}`).toEqual([]);
        const said = [
          ...plan.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
          ...plan.keyed.map(({ text }) => text),
        ];
        expect(unsaidEdges(job, drawn.figured, said), `pad ${seed}`).toEqual([]);
        expect(brokenChains(plan.chains, said), `pad ${seed}`).toEqual([]);
      }
    },
    60_000,
  );

  test('the sample job, at every scale from large to small', () => {
    for (const ratio of [12, 16, 24, 32, 48, 64, 96, 120]) {
      const drawn = planAt(demoJob(), ratio);
      expect(overlaps(drawn.plan.marks, drawn.gridPerMm), `1:${ratio}`).toEqual([]);
    }
  });

  test('this check can fail: two texts on one place are found', () => {
    const { plan, gridPerMm } = planAt(demoJob(), 48);
    const text = plan.marks.find((mark) => mark.kind === 'text')!;
    expect(overlaps([...plan.marks, text], gridPerMm).length).toBeGreaterThan(0);
  });

  test('letters in the list are each on the plan once', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { plan } = planAt(randomPadJob(seed), 96);
      for (const { key, marked } of plan.keyed) {
        const letters = plan.marks.filter((mark) => mark.kind === 'text' && mark.text === key);
        expect(letters.length, `${key} of pad ${seed}`).toBe(marked ? 1 : 0);
      }
    }
  });

  test('on a screen nothing is kept in a list that is not shown', () => {
    const job = demoJob();
    const plan = planOf(job, takeoff(job), {
      station: 'ground',
      scale: { gridPerMm: 9000 },
      words: en,
      dimensions: true,
    });
    expect(plan.keyed).toEqual([]);
  });

  test('what a dimension measures is that edge, corner to corner', () => {
    const job = randomPadJob(3);
    const plan = planOf(job, takeoff(job), {
      station: 'ground',
      scale: { gridPerMm: 6000 },
      words: en,
      dimensions: true,
      selected: 'p',
    });
    const measured = plan.marks.filter(
      (mark): mark is Text => mark.kind === 'text' && mark.measures !== undefined,
    );
    expect(measured.length).toBeGreaterThan(3);
    const pad = job.features[0]!;
    const corners = pad.shape.form === 'outline' ? pad.shape.corners : [];
    for (const { text, measures } of measured) {
      expect(measures!.feature).toBe('p');
      const at = corners.findIndex(({ id }) => id === measures!.corner);
      const from: Point = corners[at]!;
      const to: Point = corners[(at + 1) % corners.length]!;
      const length = formatLength(Math.hypot(to.x - from.x, to.y - from.y), job.units);
      expect([length, en.chord(length)]).toContain(text);
    }
  });
});
