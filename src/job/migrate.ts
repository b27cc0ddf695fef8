import { defaultLumber, defaultPractices, defaultSpacings } from './defaults.ts';
import { steelOfMesh, stockOfMesh } from './migrateMesh.ts';
import { mixWithSet, wasteByShare } from './migrateMix.ts';

/** A job as it stands in a file of some version: JSON, not checked yet. */
export type FileJob = unknown;

/** Brings a job from the version before `to` to it. A field that isn't as that version had it is left for the check. */
export interface Migration {
  readonly to: number;
  readonly change: (job: FileJob) => FileJob;
}

/** One step a version, from 2 on. */
export const MIGRATIONS: readonly Migration[] = [
  { to: 2, change: toVersion2 },
  { to: 3, change: toVersion3 },
];

/**
 * A job brought forward from a version to the newest that the steps lead to.
 * Throws when the steps skip a version: that is our own mistake, and would leave a file half brought forward.
 */
export function migrated(
  job: FileJob,
  version: number,
  steps: readonly Migration[] = MIGRATIONS,
): FileJob {
  steps.forEach(({ to }, index) => {
    if (to !== index + 2) {
      throw new Error(`migrate: step ${index + 1} leads to version ${to}, not ${index + 2}`);
    }
  });
  return steps.slice(version - 1).reduce((before, { change }) => change(before), job);
}

/**
 * Version 2 knows boards, utility lines, stakes set by hand, what a form board bears, and steel of every kind. What the old
 * file said stays as it was: its one spacing is that of the board it was set for, its sheet is the one that the yard sells. What it didn't know starts as in a new job.
 */
function toVersion2(job: FileJob): FileJob {
  if (!isObject(job)) return job;
  const { practices, ...rest } = job;
  const added = { lumber: defaultLumber(), handStakes: [] };
  if (!isObject(practices)) return { ...rest, practices, ...added };
  const { stakeSpacing, nailsPerStake, nailsPerCorner, nailsPerPound, mesh, ...kept } = practices;
  const { currency, curve, bending, kickersAbove, utilityTolerance, boards, fastening } =
    defaultPractices();
  const own = typeof kept['formBoard'] === 'string' ? { [kept['formBoard']]: stakeSpacing } : {};
  return {
    ...rest,
    ...added,
    ...(isObject(mesh) ? { meshStock: stockOfMesh(mesh) } : {}),
    practices: {
      ...kept,
      currency,
      stakeSpacings: { ...defaultSpacings(), ...own },
      curve,
      bending,
      kickersAbove,
      utilityTolerance,
      boards,
      ...(isObject(mesh) ? { steel: steelOfMesh(mesh) } : {}),
      fastening: {
        ...fastening,
        perStake: nailsPerStake,
        perCorner: nailsPerCorner,
        nailsPerPound,
      },
    },
  };
}

/**
 * Version 3 knows joints: those drawn by hand, and the rules by which others are laid out; thickened edges, and what lies
 * under a slab. What the old file said of strip stays; all that it didn't know starts as in a new job.
 */
function toVersion3(job: FileJob): FileJob {
  if (!isObject(job) || !isObject(job['practices'])) return job;
  const { practices } = job;
  const { joints, isolation, thickenedEdge, base, edgeRadius, steel } = defaultPractices();
  const { bondAtPatch, thickness, recess } = isolation;
  const strip = practices['isolation'];
  return {
    ...job,
    ground: { readings: [], depthBy: 'thickness' },
    practices: {
      ...practices,
      thickenedEdge,
      base,
      edgeRadius,
      joints,
      ...(isObject(practices['waste']) ? { waste: wasteByShare(practices['waste']) } : {}),
      ...(isObject(practices['mix']) ? { mix: mixWithSet(practices['mix']) } : {}),
      ...withSteelHeight(practices['steel'], steel.supports.below),
      ...(isObject(strip) ? { isolation: { ...strip, bondAtPatch, thickness, recess } } : {}),
    },
  };
}

/** Steel of before, and how far below the finish it lies. */
function withSteelHeight(steel: unknown, below: number): object {
  if (!isObject(steel) || !isObject(steel['supports'])) return {};
  return { steel: { ...steel, supports: { ...steel['supports'], below } } };
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
