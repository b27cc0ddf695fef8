import { demoJob } from '../../../src/job/demo.ts';
import type { Job, Practices } from '../../../src/job/job.ts';
import { INCH } from '../../../src/units/grid.ts';

/** The sample with a control joint drawn across it. */
export function jointedJob(change: Partial<Practices>): Job {
  const job = demoJob();
  const corner = (id: string, x: number, y: number) => ({ id, x: x * INCH, y: y * INCH, rise: 0 });
  return {
    ...job,
    features: [
      ...job.features,
      {
        id: 'j1',
        name: '',
        kind: 'joint',
        joint: 'control',
        shape: {
          form: 'outline',
          closed: false,
          corners: [corner('j2', 60, 0), corner('j3', 60, 84)],
        },
      },
    ],
    practices: { ...job.practices, ...change },
  };
}

/** Jobs that between them have every section, with much and with little in it. */
export function sectionJobs(): Readonly<Record<string, Job>> {
  const { practices } = demoJob();
  const { steel, isolation, joints, thickenedEdge } = practices;
  const full: Partial<Practices> = {
    thickenedEdge: { ...thickenedEdge, use: true },
    base: { depth: 4 * INCH, retarder: true },
    steel: { ...steel, dowels: { ...steel.dowels, use: true } },
    isolation: { ...isolation, recess: INCH / 2, existing: false },
    joints: { ...joints, sealant: { ...joints.sealant, joints: true, strip: true, backer: true } },
  };
  return {
    sample: demoJob(),
    full: jointedJob(full),
    'full in metric': { ...jointedJob(full), units: 'metric' },
    'bars, lifted, sawn': jointedJob({
      steel: { ...steel, kind: 'bars', supports: { ...steel.supports, by: 'lifting' } },
      joints: { ...joints, made: 'sawn' },
      formBoard: '2x6',
      gapUnderForm: 0,
      thickness: 5.5 * INCH,
    }),
    'decimal feet, a square step': {
      ...jointedJob({
        thickenedEdge: { use: true, depth: 14 * INCH, width: 6 * INCH, taper: 0 },
        base: { depth: 2 * INCH, retarder: false },
        isolation: { ...isolation, recess: INCH / 4, thickness: INCH / 4 },
      }),
      units: 'decimal-feet',
    },
  };
}
