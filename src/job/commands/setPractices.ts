import { fieldProblems } from '../fields.ts';
import type { Job, Practices } from '../job.ts';
import { practiceProblems } from '../practiceProblems.ts';
import type { Outcome } from '../refusal.ts';
import { practicesSchema } from '../schema.ts';

export interface SetPractices {
  readonly do: 'set-practices';
  readonly practices: Practices;
}

/** All of them at once: they bear on each other. A refusal's `where` is the practice (`mesh.lap`). */
export function setPractices(job: Job, { practices }: SetPractices): Outcome {
  const fields = fieldProblems(practicesSchema, practices, '');
  const [problem] = fields.length > 0 ? fields : practiceProblems(practices, '');
  return problem ? { ok: false, problems: problem } : { ok: true, value: { ...job, practices } };
}
