import type { Job, MeshStock, Practices } from '../../../src/job/job.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, type Places, shape } from '../outline/site.ts';

type Steel = Practices['steel'];

/** A job with its steel changed: mesh by its rule, anything else whole. */
export function steeled(
  job: Job,
  {
    mesh,
    stock,
    ...change
  }: Partial<Omit<Steel, 'mesh'>> & {
    readonly mesh?: Partial<Steel['mesh']>;
    readonly stock?: Partial<MeshStock>;
  },
): Job {
  const { steel } = job.practices;
  return {
    ...job,
    meshStock: { ...job.meshStock, ...stock },
    practices: {
      ...job.practices,
      steel: { ...steel, ...change, mesh: { ...steel.mesh, ...mesh } },
    },
  };
}

/** A pad of so many feet. */
export function slab(long: number, wide: number): Job {
  const places: Places = [
    [0, 0],
    [long, 0],
    [long, wide],
    [0, wide],
  ];
  return jobOf([shape('pad', 'pad', places)]);
}

function barred(change: Partial<Steel['bars']>): Job {
  const job = slab(20, 12);
  return steeled(job, { kind: 'bars', bars: { ...job.practices.steel.bars, ...change } });
}

/** A pad against an old slab, with dowels. */
function doweled(change: Partial<Steel['dowels']>): Job {
  const job = jobOf([
    ...slab(20, 12).features,
    shape('existing-slab', 'old', [
      [20, 0],
      [30, 0],
      [30, 12],
      [20, 12],
    ]),
  ]);
  const { dowels } = job.practices.steel;
  return steeled(job, { dowels: { ...dowels, use: true, ...change } });
}

/** The corner of an old slab reaches into the pad: dowels from both sides of it meet inside it. */
function dowelsAtCorner(): Job {
  const job = jobOf([
    ...slab(20, 12).features,
    shape('existing-slab', 'old', [
      [16, -2],
      [24, -2],
      [24, 4],
      [16, 4],
    ]),
  ]);
  return steeled(job, { dowels: { ...job.practices.steel.dowels, use: true } });
}

const SCRAP = { id: 'scrap', form: 'sheet' as const, length: 4 * FOOT, width: 3 * FOOT, count: 1 };
const NARROW = { id: 'narrow', form: 'roll' as const, length: 50 * FOOT, width: 7 * INCH };

/** Jobs that something about the steel must be said of, by the note that says it. */
export const STEEL_TROUBLES = {
  'mesh-size': steeled(slab(20, 12), { mesh: { lapEnds: -1 } }),
  'mesh-none-listed': steeled(slab(20, 12), { stock: { yard: [] } }),
  'mesh-lap-too-wide': steeled(slab(20, 12), { stock: { yard: [NARROW] } }),
  'mesh-no-room': steeled(slab(20, 12), { mesh: { cover: 6 * FOOT } }),
  'mesh-too-many': steeled(slab(20, 12), { mesh: { lapSides: 5 * FOOT - 1 } }),
  'mesh-not-enough': steeled(slab(20, 12), { stock: { truck: [SCRAP], yard: [] } }),
  'chairs-too-many': steeled(slab(20, 12), {
    supports: { by: 'chairs', spacing: INCH, below: 2 * INCH },
  }),
  'mesh-stock-narrow': steeled(slab(20, 12), { stock: { truck: [{ ...NARROW, count: 1 }] } }),
  'mesh-lap-short': steeled(slab(20, 12), { mesh: { lapSides: 4 * INCH } }),
  'drag-short': steeled(slab(20, 12), {
    drag: { friction: 3, jointLength: 60 * FOOT, stress: 1e8 },
  }),
  'steel-none': steeled(slab(20, 12), { kind: 'none' }),
  'steel-lifted': steeled(slab(20, 12), {
    supports: { by: 'lifting', spacing: 2 * FOOT, below: 2 * INCH },
  }),
  'bars-size': barred({ spacing: 0 }),
  'bars-stock-short': barred({ lapDiameters: 200, stockLength: 4 * FOOT }),
  'bars-no-room': barred({ cover: 7 * FOOT }),
  'bars-too-many': barred({ spacing: 10 }),
  'bar-caps': barred({}),
  'bars-laid': barred({ size: '#5' }),
  'dowels-size': doweled({ by: 'own', own: { diameter: 1, length: 1, spacing: 0 } }),
  'dowels-off': doweled({ use: false }),
  'dowels-drill': doweled({}),
  'dowels-meet': dowelsAtCorner(),
  'dowels-epoxy': doweled({}),
  'dowels-sleeve': doweled({ set: 'sleeve' }),
  'mesh-price-missing': slab(20, 12),
} as const satisfies Readonly<Record<string, Job>>;
