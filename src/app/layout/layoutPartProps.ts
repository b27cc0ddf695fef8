import type { Job } from '../../job/job.ts';
import type { Layout } from '../../takeoff/layout/layout.ts';

/** What every part of the section is shown: the job that the figures are of, and its setting out. */
export interface LayoutPartProps {
  readonly job: Job;
  readonly layout: Layout;
}
