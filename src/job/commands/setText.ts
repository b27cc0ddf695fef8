import * as v from 'valibot';
import { fieldProblems } from '../fields.ts';
import type { Job, UnitStyle } from '../job.ts';
import type { Outcome } from '../refusal.ts';
import { textSchema, unitsSchema } from '../schema.ts';

/** What is left out stays as it is. */
export interface SetText {
  readonly do: 'set-text';
  readonly name?: string;
  readonly site?: string;
  readonly notes?: string;
}

/** How lengths are shown and bare numbers read. The geometry stays as it is. */
export interface SetUnits {
  readonly do: 'set-units';
  readonly units: UnitStyle;
}

export function setText(job: Job, command: SetText): Outcome {
  const { name = job.name, site = job.site, notes = job.notes } = command;
  const [problem] = fieldProblems(v.strictObject(textSchema), { name, site, notes }, '');
  if (problem) return { ok: false, problems: problem };
  if (name === job.name && site === job.site && notes === job.notes)
    return { ok: true, value: job };
  return { ok: true, value: { ...job, name, site, notes } };
}

export function setUnits(job: Job, { units }: SetUnits): Outcome {
  const [problem] = fieldProblems(unitsSchema, units, 'units');
  if (problem) return { ok: false, problems: problem };
  return { ok: true, value: units === job.units ? job : { ...job, units } };
}
