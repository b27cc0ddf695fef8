import type { Job, Lumber } from '../../job/job.ts';

export interface BoardsPartProps {
  readonly job: Job;
  /** Answers whether it was taken. */
  readonly onLumber: (lumber: Lumber) => boolean;
}
