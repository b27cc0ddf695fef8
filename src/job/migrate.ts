/** A job as it stands in a file of some version: JSON, not checked yet. */
export type FileJob = unknown;

/** Brings a job from the version before `to` to it. A field that isn't as that version had it is left for the check. */
export interface Migration {
  readonly to: number;
  readonly change: (job: FileJob) => FileJob;
}

/** One step a version, from 2 on. Version 1 is the first, so there is none yet. */
export const MIGRATIONS: readonly Migration[] = [];

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
