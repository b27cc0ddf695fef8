import { fieldProblems } from '../fields.ts';
import type { Job, Title } from '../job.ts';
import type { Outcome } from '../refusal.ts';
import { titleSchema } from '../schema.ts';

/** All of the title block at once. */
export interface SetTitle {
  readonly do: 'set-title';
  readonly title: Title;
}

export function setTitle(job: Job, { title }: SetTitle): Outcome {
  const [problem] = fieldProblems(titleSchema, title, 'title');
  return problem ? { ok: false, problems: problem } : { ok: true, value: { ...job, title } };
}
