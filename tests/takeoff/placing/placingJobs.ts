import type { Feature, Job } from '../../../src/job/job.ts';
import type { PlacingPractices } from '../../../src/job/placing.ts';
import { placingOf } from '../../../src/job/placingDefaults.ts';
import { CUBIC_FOOT, INCH } from '../../../src/units/grid.ts';
import { wasteByShare } from '../../published/slabs.ts';
import { joint } from '../joints/jointJobs.ts';
import { jobOf, type Places, shape, wall } from '../outline/site.ts';

export const pad = (...places: Places): Feature => shape('pad', 'pad', places);

/** 12 ft along x, 10 ft along y. */
export const TEN_BY_TWELVE: Places = [
  [0, 0],
  [12, 0],
  [12, 10],
  [0, 10],
];

/** The wall along the far long side of the pad of 12 by 10. */
export const FAR_WALL = wall(
  'wall',
  [
    [-2, 10],
    [14, 10],
  ],
  { closed: false },
);

/**
 * 3 1/2 in thick, bags that come out even: two make 14/12 ft³, a batch every 5 min, so 14 ft³ an hour, and 35 ft³ for 10 by
 * 12 ft are 60 bags in 30 batches. Nothing is added for waste.
 */
export function evenly(
  features: readonly Feature[],
  rules: Partial<PlacingPractices> = {},
  set = { initial: 240, final: 360 },
): Job {
  const job = jobOf(features);
  const { practices } = job;
  const bag = {
    ...practices.mix.mixes[0]!,
    yield: (7 / 12) * CUBIC_FOOT,
    set: { ...set, from: 'bag' as const },
  };
  return {
    ...job,
    practices: {
      ...practices,
      thickness: 3.5 * INCH,
      waste: wasteByShare(0),
      mix: { ...practices.mix, mixes: [bag], batchVolume: (14 / 12) * CUBIC_FOOT },
      joints: { ...practices.joints, layout: 'by-hand' },
      placing: { ...placingOf(practices), crew: 6, cycle: 5, ...rules },
    },
  };
}

const thirds = [
  joint('one', [
    [4, 0],
    [4, 10],
  ]),
  joint('two', [
    [8, 0],
    [8, 10],
  ]),
];

/** Jobs with every trouble of placing between them. */
export const PLACING_JOBS: Readonly<Record<string, Job>> = {
  even: evenly([pad(...TEN_BY_TWELVE)]),
  'sets too soon': evenly([pad(...TEN_BY_TWELVE), ...thirds], {}, { initial: 60, final: 300 }),
  'a hopeless mix': evenly([pad(...TEN_BY_TWELVE)], {}, { initial: 1, final: 2 }),
  alone: evenly(
    [pad(...TEN_BY_TWELVE)],
    { crew: 1, board: 5 * 97_536 },
    { initial: 30, final: 60 },
  ),
  'shut in': evenly([
    pad(...TEN_BY_TWELVE),
    wall(
      'house',
      [
        [-1, -1],
        [-1, 11],
        [13, 11],
        [13, -1],
        [-1, -1],
      ],
      { closed: false },
    ),
    wall(
      'all round',
      [
        [0, 0],
        [12, 0],
        [12, 10],
        [0, 10],
        [0, 0],
      ],
      { closed: false },
    ),
  ]),
  'a short pole': evenly([pad(...TEN_BY_TWELVE), FAR_WALL], { poleReach: 4 * 97_536 }),
  'a short board': evenly([pad(...TEN_BY_TWELVE)], { board: 97_536 }),
  'no rate': evenly([pad(...TEN_BY_TWELVE)], { floatRate: 0 }),
  'an eye of a mixer': (() => {
    const job = evenly([pad(...TEN_BY_TWELVE)]);
    const mix = { ...job.practices.mix, batchVolume: 1 };
    return { ...job, practices: { ...job.practices, mix } };
  })(),
  'a lot of batches': (() => {
    const job = evenly([pad([0, 0], [40, 0], [40, 30], [0, 30])]);
    const { mix } = job.practices;
    const mixes = mix.mixes.map((bag) => ({ ...bag, yield: 0.1 * CUBIC_FOOT }));
    const small = { ...mix, mixes, batchVolume: 0.1 * CUBIC_FOOT };
    return { ...job, practices: { ...job.practices, mix: small } };
  })(),
};
