import { describe, expect, test } from 'vitest';
import { planOf } from '../../src/drawing/plan.ts';
import { en } from '../../src/drawing/words/en.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { MILLIMETRE } from '../../src/units/grid.ts';
import { formatLength } from '../../src/units/length.ts';
import { overlaps } from './overlaps.ts';
import { randomPadJob } from './randomPads.ts';

function planAt(job: Job, ratio: number) {
  const figured = takeoff(job);
  const gridPerMm = ratio * MILLIMETRE;
  const plan = planOf(job, figured, {
    station: 'forms-sheet',
    scale: { gridPerMm },
    words: en,
    dimensions: true,
  });
  return { plan, figured, gridPerMm };
}

/** What must be read of the forms: marks of boards and runs, and every stake's distance but on runs that are listed. */
function mustSay(job: Job, { plan, figured }: ReturnType<typeof planAt>): readonly string[] {
  const { forms, boards, stakes } = figured;
  const measured = [...(stakes?.stakes ?? []), ...(stakes?.held ?? [])].filter(
    ({ run }) => !plan.unmeasured.includes(run),
  );
  return [
    ...(forms?.runs ?? []).map(({ mark }) => mark),
    ...(boards?.plan.boards ?? []).flatMap(({ pieces }) => pieces.map(({ mark }) => mark)),
    ...new Set(measured.map(({ run, along }) => `${run} ${along}`)),
  ].map((one) => {
    const along = one.split(' ')[1];
    return along === undefined ? one : formatLength(Number(along), job.units);
  });
}

function missing(wanted: readonly string[], said: readonly string[]): readonly string[] {
  const left = [...said];
  return wanted.filter((text) => {
    const at = left.indexOf(text);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

describe('the plan of forms and stakes', () => {
  test.each(Array.from({ length: 4 }, (_, i) => i * 100))(
    'nothing lies on anything else, and nothing is left out: pads %i and on',
    (first) => {
      for (let seed = first; seed < first + 100; seed++) {
        const job = randomPadJob(seed);
        const drawn = planAt(job, 48);
        const { plan, gridPerMm } = drawn;
        expect(overlaps(plan.marks, gridPerMm), `pad ${seed}`).toEqual([]);
        const said = [
          ...plan.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
          ...plan.keyed.map(({ text }) => text),
        ];
        expect(missing(mustSay(job, drawn), said), `pad ${seed}`).toEqual([]);
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

  test('at a common scale most stakes are measured on the plan itself', () => {
    const runs = { all: 0, listed: 0 };
    for (let seed = 0; seed < 60; seed++) {
      const { plan, figured } = planAt(randomPadJob(seed), 32);
      runs.all += figured.forms?.runs.length ?? 0;
      runs.listed += plan.unmeasured.length;
    }
    expect(runs.listed / runs.all).toBeLessThan(0.4);
  });

  test('no letter on paper is smaller than 2.5 mm', () => {
    const { plan } = planAt(demoJob(), 48);
    for (const mark of plan.marks) {
      if (mark.kind === 'text') expect(mark.height, mark.text).toBeGreaterThanOrEqual(2.5);
    }
  });
});
