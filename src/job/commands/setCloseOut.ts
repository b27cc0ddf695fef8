import { fieldProblems } from '../fields.ts';
import type { Job } from '../job.ts';
import type { CloseOut } from '../pourLog.ts';
import { closeOutSchema } from '../pourLogSchema.ts';
import type { Outcome } from '../refusal.ts';

export interface SetCloseOut {
  readonly do: 'set-close-out';
  /** null: the job is open again. */
  readonly closeOut: CloseOut | null;
}

export function setCloseOut(job: Job, { closeOut }: SetCloseOut): Outcome {
  if (closeOut === null) {
    const { closeOut: _, ...open } = job;
    return { ok: true, value: open };
  }
  const [problem] = fieldProblems(closeOutSchema, closeOut, 'job.closeOut', false);
  return problem ? { ok: false, problems: problem } : { ok: true, value: { ...job, closeOut } };
}
