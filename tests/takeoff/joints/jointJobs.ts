import type { Feature, Job, JointUse, Practices } from '../../../src/job/job.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, outline, type Places, post, shape } from '../outline/site.ts';

/** A joint drawn by hand, in feet. */
export function joint(id: string, places: Places, use: JointUse = 'control'): Feature {
  return { kind: 'joint', id, name: '', joint: use, shape: outline(id, places, FOOT, false) };
}

export function jointed(
  job: Job,
  change: Partial<Practices['joints']>,
  strip: Partial<Practices['isolation']> = {},
): Job {
  const { practices } = job;
  return {
    ...job,
    practices: {
      ...practices,
      joints: { ...practices.joints, ...change },
      isolation: { ...practices.isolation, ...strip },
    },
  };
}

const pad = (...places: Places) => shape('pad', 'pad', places);

/** 20 x 10 ft. */
export const LONG = jobOf([pad([0, 0], [20, 0], [20, 10], [0, 10])]);

//   +-----+
//   |     |        an L of 16 and 8 ft, inside corner at 8, 8
//   |     +-----+
//   +-----------+
export const ELL = jobOf([pad([0, 0], [16, 0], [16, 8], [8, 8], [8, 16], [0, 16])]);

/** The long pad with an older slab at its end, whose joint comes to the pad at 20, 5. */
export const BESIDE_OLDER = jobOf([
  ...LONG.features,
  shape('existing-slab', 'older', [
    [20, 0],
    [30, 0],
    [30, 10],
    [20, 10],
  ]),
  joint(
    'old',
    [
      [30, 5],
      [20, 5],
    ],
    'existing',
  ),
]);

/** Jobs that between them say everything there is to say of joints. */
export const JOINT_TROUBLES: Readonly<Record<string, Job>> = {
  tooMany: jointed(jobOf([pad([0, 0], [40, 0], [40, 20], [0, 20])]), { cap: FOOT, least: 0 }),
  rules: jointed(LONG, { least: 11 * FOOT }),
  deep: jointed(LONG, { leastDepth: 4 * INCH }),
  sealant: jointed(LONG, { sealant: { ...LONG.practices.joints.sealant, joints: true, width: 0 } }),
  shallow: jointed(LONG, {
    sealant: { ...LONG.practices.joints.sealant, joints: true, backer: true, depth: INCH },
  }),
  flushStrip: jointed(BESIDE_OLDER, {
    sealant: { ...LONG.practices.joints.sealant, strip: true },
  }),
  stripTooLow: jointed(BESIDE_OLDER, {}, { recess: 4 * INCH }),
  none: jobOf([pad([0, 0], [8, 0], [8, 8], [0, 8])]),
  sawn: jointed(LONG, { made: 'sawn' }),
  // Nothing is drawn: the corner and the older joint have no joint, and the post none either.
  byHand: jointed(jobOf([...BESIDE_OLDER.features, ...ELL.features, post('post', 4, 4, 0.5)]), {
    layout: 'by-hand',
  }),
  // From edge to edge at a slant, along an edge's end, and one that ends in the middle.
  badlyDrawn: jointed(
    jobOf([
      ...LONG.features,
      joint('slant', [
        [0, 1],
        [4, 10],
      ]),
      joint('sliver', [
        [0, 9],
        [20, 9],
      ]),
      joint('inside', [
        [10, 0],
        [10, 0.5],
      ]),
      joint('onto', [
        [5, 10],
        [5, 9],
      ]),
      joint('away', [
        [40, 0],
        [40, 10],
      ]),
      joint(
        'apart',
        [
          [40, 4],
          [30, 5],
        ],
        'existing',
      ),
    ]),
    { layout: 'by-hand' },
  ),
  stops: jobOf([
    ...LONG.features,
    joint(
      'stop',
      [
        [10, 0],
        [10, 10],
      ],
      'construction',
    ),
  ]),
  bonded: jointed(
    jobOf([
      ...BESIDE_OLDER.features,
      shape('patch', 'patch', [
        [20, 6],
        [22, 6],
        [22, 8],
        [20, 8],
      ]),
    ]),
    {},
    { bondAtPatch: true },
  ),
};
