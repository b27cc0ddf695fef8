import type { Point } from '../geometry/point.ts';
import type { Problem, Result } from '../units/result.ts';
import type { Job } from './job.ts';
import type { JobProblemCode } from './problems.ts';

/** Why a command can't be done, and where on the site. The codes stand in problems.ts. */
export type Refusal = Problem & { readonly at?: readonly Point[] };

export type Outcome = Result<Job, Refusal>;

export function refuse(
  code: JobProblemCode,
  where: string,
  more: Pick<Refusal, 'facts' | 'at'> = {},
): { readonly ok: false; readonly problems: Refusal } {
  return { ok: false, problems: { code, where, ...more } };
}
