import { fieldProblems } from '../fields.ts';
import type { Job } from '../job.ts';
import type { PourLog } from '../pourLog.ts';
import { pourLogSchema } from '../pourLogSchema.ts';
import type { Outcome } from '../refusal.ts';

export interface SetPourLog {
  readonly do: 'set-pour-log';
  readonly pourLog: PourLog;
}

/** The whole log at once: a tap is one step of undo. */
export function setPourLog(job: Job, { pourLog }: SetPourLog): Outcome {
  const [problem] = fieldProblems(pourLogSchema, pourLog, 'job.pourLog', false);
  return problem ? { ok: false, problems: problem } : { ok: true, value: { ...job, pourLog } };
}
