import type { GroundReading, Job, Practices } from '../../../src/job/job.ts';
import { CUBIC_FOOT, FOOT, INCH, QUART } from '../../../src/units/grid.ts';
import { slab } from '../../published/slabs.ts';

type Mix = Practices['mix'];

/** A slab of so many feet, 4 in thick, with its mix changed. */
export function mixedSlab(
  change: Partial<Mix>,
  waste: Partial<Practices['waste']> = {},
  size: readonly [number, number] = [12, 10],
): Job {
  const job = slab(...size, 4);
  const { practices } = job;
  return {
    ...job,
    practices: {
      ...practices,
      mix: { ...practices.mix, ...change },
      waste: { ...practices.waste, ...waste },
    },
  };
}

/** The mixes as a new job has them, with the water of their bags: 3 to 4 qt, and 2 to 2 1/2. */
export function wateredMixes(): Mix['mixes'] {
  const [regular, fast] = slab(1, 1, 4).practices.mix.mixes;
  return [
    { ...regular!, water: { least: 3 * QUART, most: 4 * QUART } },
    { ...fast!, water: { least: 2 * QUART, most: 2.5 * QUART } },
  ];
}

/** Parts of the regular to parts of the fast one. */
export function parts(mainParts: number, otherParts: number): Mix['blend'] {
  return { main: 'regular', mainParts, other: 'fast', otherParts };
}

/** A slab of 10 × 10 ft with taped depths in inches, each at a place in feet from its first corner, or at none. */
export function tapedSlab(
  readings: readonly (readonly [depth: number, x?: number, y?: number])[],
  depthBy: Job['ground']['depthBy'] = 'readings',
): Job {
  const job = slab(10, 10, 4);
  const taped = readings.map(
    ([depth, x, y], i): GroundReading => ({
      id: `g${100 + i}`,
      depth: depth * INCH,
      ...(x === undefined || y === undefined ? {} : { at: { x: x * FOOT, y: y * FOOT } }),
    }),
  );
  return { ...job, ground: { readings: taped, depthBy }, nextId: 1_000 };
}

/** One job a thing that can go wrong with bags, mixer and depths, by the note's code. */
export const MIX_TROUBLES: Readonly<Record<string, Job>> = {
  'readings-too-few': tapedSlab([[4], [4.25]]),
  'batch-too-small': mixedSlab({ batchVolume: 0.5 * CUBIC_FOOT }),
  'batch-below-half-bag': mixedSlab({ batchVolume: 0.25 * CUBIC_FOOT, halfBags: true }),
  'batch-below-set': mixedSlab({ blend: parts(2, 1.5) }),
  'batch-below-half-set': mixedSlab({ blend: parts(2, 1.5), halfBags: true }),
  'readings-few': tapedSlab([[4], [4.25], [4]]),
  'readings-need-middle': tapedSlab([
    [3, 0, 0],
    [3, 10, 0],
    [5, 10, 10],
    [3, 0, 10],
  ]),
  'readings-deeper': tapedSlab([[4.25], [4.5], [4], [4.5], [4.25]], 'thickness'),
  'readings-shallower': tapedSlab([[3.5], [3.75], [3.5], [3.5], [3.75]], 'thickness'),
  'water-unknown': mixedSlab({}),
  'batches-not-listed': mixedSlab({
    mixes: wateredMixes().map((bag) => ({ ...bag, yield: 0.05 * CUBIC_FOOT })),
    batchVolume: 0.05 * CUBIC_FOOT,
  }),
  'depth-from-readings': tapedSlab([[4.25], [4.5], [4], [4.5], [4.25]]),
  'allowance-by-parts': mixedSlab(
    {},
    { extras: [{ id: 'x1', name: 'A soft corner', volume: CUBIC_FOOT }] },
  ),
  'blend-half-bags': mixedSlab({
    blend: parts(2, 1.5),
    halfBags: true,
    batchVolume: 1.8 * CUBIC_FOOT,
  }),
  'last-batch-filled': mixedSlab({ blend: parts(3, 1), batchVolume: 2.2 * CUBIC_FOOT }, {}, [2, 3]),
  'half-bag-left': mixedSlab({ halfBags: true }, { minimumBags: 0, by: 'share', share: 0 }, [3, 2]),
  'water-by-bag': mixedSlab({ mixes: wateredMixes() }),
};
