import { describe, expect, test } from 'vitest';
import { textCorners } from '../../src/drawing/bounds.ts';
import type { Mark } from '../../src/drawing/marks.ts';
import type { Feature, Job } from '../../src/job/job.ts';
import type { SheetPart } from '../../src/sheet/page.ts';
import { bestPlan } from '../../src/sheet/pages/bestPlan.ts';
import { legendRows } from '../../src/sheet/pages/legend.ts';
import { planPages } from '../../src/sheet/pages/planPage.ts';
import { toPage } from '../../src/sheet/paint/steps.ts';
import { PAPER_NAMES, TURNS } from '../../src/sheet/papers.ts';
import { joints } from '../../src/takeoff/joints/joints.ts';
import { jointMark } from '../../src/takeoff/joints/marks.ts';
import { LEAST_TOLERANCE } from '../../src/takeoff/outline/layout.ts';
import { netPour } from '../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../src/takeoff/pourPolygons.ts';
import type { Takeoff } from '../../src/takeoff/result.ts';
import { MILLIMETRE } from '../../src/units/grid.ts';
import { brokenChains, unsaidEdges } from '../drawing/edgesSaid.ts';
import { overlaps } from '../drawing/overlaps.ts';
import { randomPadJob } from '../drawing/randomPads.ts';
import { words } from './made.ts';

/** A thousand pads over every paper, turn and scale: NOTCHPAD_PADS=20000 looks at more. */
const PADS = Number(process.env['NOTCHPAD_PADS'] ?? 1000);
const RUNS = 10;

/** The scales that a crew asks for; null is the largest that fits. */
const SCALES = {
  'feet-inches': [null, '1/4"', '3/8"', '1/2"', '3/4"', '1"'].map((one) =>
    one === null ? null : `${one} = 1'-0"`,
  ),
  metric: [null, '1:50', '1:25', '1:20', '1:10'],
};

/** Of so many pads one has its joints laid out, and one has them laid out round a joint drawn by hand. */
const JOINTED = 8;

/** The job with a joint across it, as somebody draws it: from the middle of one side to the one opposite. */
function withJoint(job: Job): Job {
  const pad = job.features.find(({ kind }) => kind === 'pad');
  if (pad?.shape.form !== 'outline') return job;
  const { corners } = pad.shape;
  const middle = (i: number) => {
    const [a, b] = [corners[i % corners.length]!, corners[(i + 1) % corners.length]!];
    return { x: Math.round((a.x + b.x) / 2), y: Math.round((a.y + b.y) / 2), rise: 0 };
  };
  const ends = [middle(0), middle(Math.floor(corners.length / 2))];
  const shape = {
    form: 'outline' as const,
    closed: false,
    corners: ends.map((end, i) => ({ ...end, id: `j${i}` })),
  };
  const joint: Feature = { id: 'j', name: '', kind: 'joint', joint: 'control', shape };
  return { ...job, features: [...job.features, joint] };
}

/** The pour, for some of the pads with joints and strip. */
function figured(job: Job, seed: number): Takeoff {
  const { pour } = netPour(job);
  if (!pour) return { notes: [] } as unknown as Takeoff;
  const closeness = Math.max(job.practices.closeEnough, LEAST_TOLERANCE);
  const laid =
    seed % JOINTED <= 1
      ? joints(job, pour, pourPolygons(pour, closeness), closeness, {}).figured
      : undefined;
  return { notes: [], pour, ...(laid ? { joints: laid } : {}) } as unknown as Takeoff;
}

type Text = Extract<Mark, { kind: 'text' }>;

/** A pad with its paper, turn and scale: every combination comes again after 240 pads in inches, after 200 in mm. */
function caseOf(seed: number) {
  const units = seed % 5 === 4 ? ('metric' as const) : ('feet-inches' as const);
  const round = Math.floor(seed / 5);
  const paper = PAPER_NAMES[round % 4]!;
  const turn = TURNS[Math.floor(round / 4) % 2]!;
  const scales = SCALES[units];
  const scale = scales[Math.floor(round / 8) % scales.length]!;
  const pad = { ...randomPadJob(seed), units };
  const job = seed % JOINTED === 1 ? withJoint(pad) : pad;
  return { job, options: { paper, turn, words, ...(scale ? { scale } : {}) } };
}

function textsOf(part: SheetPart): readonly Text[] {
  return part.marks.filter((mark): mark is Text => mark.kind === 'text');
}

/** Texts that are cut off by the frame they are seen in. */
function cutOff(part: SheetPart): readonly string[] {
  const { x, y, width, height } = part.clip!;
  return textsOf(part)
    .filter((text) =>
      textCorners(text, part.gridPerMm)
        .map(toPage(part))
        .some((spot) => spot.x < x || spot.x > x + width || spot.y < y || spot.y > y + height),
    )
    .map(({ text }) => text);
}

/** Read upright, or from the right: lines within 8° of upright may lean either way. */
function isReadable({ angle }: Text): boolean {
  const degrees = (angle * 180) / Math.PI;
  return degrees > -82.1 && degrees < 98.1;
}

describe('on every paper, at every scale', () => {
  test.each(Array.from({ length: RUNS }, (_, run) => run))(
    'nothing lies on anything else or is cut off, and every edge is said: run %i',
    (run) => {
      for (let seed = run; seed < PADS; seed += RUNS) {
        const { job, options } = caseOf(seed);
        const name = `pad ${seed}, ${options.paper} ${options.turn} ${options.scale ?? ''}`;
        const takeoff = figured(job, seed);
        const scaled = bestPlan(job, takeoff, options, []);
        const legend = legendRows(job, takeoff, words);
        const { pages } = planPages(job, takeoff, scaled, legend, options);
        const plans = pages.map(([plan]) => plan!);
        for (const [i, plan] of plans.entries()) {
          expect(overlaps(plan.marks, plan.gridPerMm), `${name}, part ${i + 1}`).toEqual([]);
          expect(cutOff(plan), `${name}, part ${i + 1}`).toEqual([]);
        }
        const texts = plans.flatMap(textsOf);
        expect(
          texts.filter(({ height }) => height < 2.5).map(({ text }) => text),
          name,
        ).toEqual([]);
        expect(
          texts.filter((text) => !isReadable(text)).map(({ text }) => text),
          name,
        ).toEqual([]);
        const said = [
          ...texts.map(({ text }) => text),
          ...scaled.plan.keyed.map(({ text }) => text),
        ];
        // Nothing is said twice, nor left out, where a plan goes over several pages.
        const written = scaled.plan.marks.filter(({ kind }) => kind === 'text');
        expect(texts.length, name).toBe(written.length);
        const laid = takeoff.joints?.layout?.joints ?? [];
        for (const [i] of laid.entries()) expect(said, name).toContain(jointMark(laid, i));
        expect(unsaidEdges(job, takeoff, said), name).toEqual([]);
        expect(brokenChains(scaled.plan.chains, said), name).toEqual([]);
        expect(plans[0]!.gridPerMm % MILLIMETRE).toBe(0);
      }
    },
    120_000,
  );
});
