import type { Job } from './job.ts';

/**
 * A job that starts with what stays the same from job to job: the user's practices, and the boards and the mesh on hand
 * and at the yard. What belongs to one site stays with its own job.
 */
export function takingOver(fresh: Job, from: Job): Job {
  const { practices, lumber, meshStock } = from;
  return { ...fresh, practices, lumber, meshStock };
}
