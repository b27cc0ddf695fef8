import { describe, expect, test } from 'vitest';
import { planOf } from '../../src/drawing/plan.ts';
import { en } from '../../src/drawing/words/en.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, MILLIMETRE } from '../../src/units/grid.ts';
import { formatLength } from '../../src/units/length.ts';
import { steeled } from '../takeoff/steel/steelJobs.ts';
import { overlaps } from './overlaps.ts';
import { randomPadJob } from './randomPads.ts';

type Kind = 'mesh' | 'bars';

function planAt(given: Job, kind: Kind, ratio: number) {
  const { dowels } = given.practices.steel;
  const job = steeled(given, {
    kind,
    supports: { by: 'chairs', spacing: 3 * FOOT, below: FOOT / 6 },
    dowels: { ...dowels, use: true },
  });
  const figured = takeoff(job);
  const gridPerMm = ratio * MILLIMETRE;
  const options = { station: 'steel-sheet', scale: { gridPerMm }, words: en } as const;
  const plan = planOf(job, figured, { ...options, dimensions: true });
  return { job, plan, figured, gridPerMm };
}

/** What must be read: every piece and bar range, every dowel's distance but on seams that are listed. */
function mustSay({ job, plan, figured }: ReturnType<typeof planAt>): readonly RegExp[] {
  const { mesh, bars, dowels } = figured.steel ?? {};
  const plain = (said: string) => said.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return [
    ...(mesh?.plan.pieces ?? []).map(
      ({ mark, used }) => new RegExp(`^${mark} · [SR]${used + 1}(:|$)`),
    ),
    ...(bars?.ranges ?? [])
      .filter(({ rows }) => rows > 1)
      .map(
        ({ rows, apart }) =>
          new RegExp(`^${plain(en.bars(rows, bars!.size, formatLength(apart, job.units)))}$`),
      ),
    ...(dowels?.seams ?? []).map(({ mark }) => new RegExp(`^${mark}: `)),
    ...(dowels?.seams ?? [])
      .filter(({ mark }) => !plan.unmeasured.includes(mark))
      .flatMap(({ holes }) =>
        holes.map(({ along }) => new RegExp(`^${plain(formatLength(along, job.units))}$`)),
      ),
  ];
}

describe.each(['mesh', 'bars'] as const)('the plan of the steel: %s', (kind) => {
  test.each([0, 200])(
    'nothing lies on anything else, and nothing is left out: pads %i and on',
    (first) => {
      for (let seed = first; seed < first + 30; seed++) {
        const drawn = planAt(randomPadJob(seed), kind, 48);
        const { plan, gridPerMm } = drawn;
        expect(overlaps(plan.marks, gridPerMm), `pad ${seed}`).toEqual([]);
        const said = [
          ...plan.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
          ...plan.keyed.map(({ text }) => text),
        ];
        for (const one of mustSay(drawn)) {
          const at = said.findIndex((text) => one.test(text));
          expect(at, `pad ${seed}: ${one}`).toBeGreaterThanOrEqual(0);
          said.splice(at, 1);
        }
      }
    },
    60_000,
  );

  test('the sample job, at every scale from large to small, in letters of 2.5 mm and more', () => {
    for (const ratio of [12, 24, 48, 64, 96, 120]) {
      const { plan, gridPerMm } = planAt(demoJob(), kind, ratio);
      expect(overlaps(plan.marks, gridPerMm), `1:${ratio}`).toEqual([]);
      for (const mark of plan.marks) {
        if (mark.kind === 'text') expect(mark.height, mark.text).toBeGreaterThanOrEqual(2.5);
      }
    }
  });

  test('a dot for every chair, unless they would stand too near to each other', () => {
    const dots = ({ plan }: ReturnType<typeof planAt>) =>
      plan.marks.filter((mark) => mark.kind === 'symbol' && mark.layer === 'steel').length;
    const near = planAt(demoJob(), kind, 48);
    expect(dots(near)).toBe(near.figured.steel!.chairs!.length);
    expect(dots(planAt(demoJob(), kind, 480))).toBe(0);
  });
});
