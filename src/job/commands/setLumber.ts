import type { Job, Lumber } from '../job.ts';
import { lumberProblems } from '../lumberProblems.ts';
import type { Outcome } from '../refusal.ts';

export interface SetLumber {
  readonly do: 'set-lumber';
  readonly lumber: Lumber;
}

/** Both lists at once: boards go from one to the other. A refusal's `where` is the row's field (`truck[0].length`). */
export function setLumber(job: Job, { lumber }: SetLumber): Outcome {
  const [problem] = lumberProblems(lumber);
  return problem ? { ok: false, problems: problem } : { ok: true, value: { ...job, lumber } };
}
