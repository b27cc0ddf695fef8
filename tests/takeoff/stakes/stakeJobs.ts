import { demoJob } from '../../../src/job/demo.ts';
import type { Feature, HandStake, Job, Practices } from '../../../src/job/job.ts';
import { splicesOf } from '../../../src/takeoff/boards/splicesOf.ts';
import { placeAlong } from '../../../src/takeoff/forms/along.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { type Places, shape, jobOf as siteOf, utilityLine } from '../outline/site.ts';

/** Boards longer than any run, so that nothing is spliced. */
export function jobOf(features: readonly Feature[]): Job {
  const job = siteOf(features);
  const yard = job.lumber.yard.map((board) => ({ ...board, length: 60 * FOOT }));
  return { ...job, lumber: { truck: [], yard } };
}

const box = (x: number, y: number, wide: number, deep: number): Places => [
  [x, y],
  [x + wide, y],
  [x + wide, y + deep],
  [x, y + deep],
];

const pad = shape('pad', 'pad', box(0, 0, 12, 10));

function withPractices(change: Partial<Practices>, job: Job = jobOf([pad])): Job {
  return { ...job, practices: { ...job.practices, ...change } };
}

function withHand(is: HandStake['is'], x: number, y: number, job: Job = jobOf([pad])): Job {
  const at = { x: Math.round(x * FOOT), y: Math.round(y * FOOT) };
  return { ...job, handStakes: [{ id: 's1', is, at }] };
}

/** A run of several boards, with the stake on one side of a splice left out. */
function splicePulled(): Job {
  const job = siteOf([shape('pad', 'pad', box(0, 0, 40, 8))]);
  const { boards, stakes, forms } = takeoff(job);
  const [run, [splice]] = [...splicesOf(boards!)][0]! as [string, number[]];
  const { edges } = forms!.runs.find(({ mark }) => mark === run)!;
  const near = stakes!.stakes.find((one) => one.run === run && one.along > splice!)!;
  const { x, y } = placeAlong(edges, near.along);
  return withHand('removed', x / FOOT, y / FOOT, job);
}

const { practices } = jobOf([pad]);
const { bending, curve, fastening } = practices;
const roots = (deep: number, high = 0) =>
  jobOf([pad, shape('no-stake-zone', 'roots', box(-1, -deep, 14, deep + high - 0.01))]);

/** Jobs that between them have every figure and every note of the stakes. */
export const STAKE_JOBS = {
  plain: jobOf([pad]),
  sample: demoJob(),
  'curve without spacing': withPractices({ curve: { ...curve, spacing: 0 } }),
  'board bears nothing': withPractices({ bending: { ...bending, stress: 0 } }),
  'board bends': withPractices({ bending: { ...bending, elasticity: 1e7 } }),
  'tolerance below nothing': withPractices({ utilityTolerance: -1 }),
  screws: withPractices({ fastening: { ...fastening, by: 'screws' } }),
  'box without screws': withPractices({
    fastening: { ...fastening, by: 'screws', screwsPerBox: 0 },
  }),
  'high form': withPractices({ formBoard: '2x8' }),
  'buried line': jobOf([
    pad,
    utilityLine('gas', [
      [-5, -1],
      [15, -1],
    ]),
  ]),
  'roots to go round': roots(2),
  'roots far out': roots(9),
  'roots on both sides': roots(9, 3),
  'left out': withHand('removed', 6, 0),
  'left out at an end': withHand('removed', 11, 0),
  'left out at a splice': splicePulled(),
  'set in roots': withHand('pinned', 6, 0, roots(2)),
  'set on nothing': withHand('pinned', 6, 5),
} satisfies Readonly<Record<string, Job>>;
