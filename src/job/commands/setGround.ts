import type { Grid } from '../../units/grid.ts';
import { fieldProblems } from '../fields.ts';
import { raisedNextId, usedIds } from '../ids.ts';
import type { GroundSaid, Job } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';
import { groundSchema } from '../schema.ts';
import { placeUnsound } from '../soundness.ts';

export interface SetGround {
  readonly do: 'set-ground';
  readonly ground: GroundSaid;
}

/** All ground readings at once, and whether the volume is figured with them. A refusal's `where` is the row's field. */
export function setGround(job: Job, { ground }: SetGround): Outcome {
  const [problem] = fieldProblems(groundSchema, ground, '');
  if (problem) return { ok: false, problems: problem };
  const taken = new Set(usedIds({ ...job, ground: { ...ground, readings: [] } }));
  for (const [index, { id, at }] of ground.readings.entries()) {
    if (taken.has(id)) return refuse('id-taken', `readings[${index}].id`);
    taken.add(id);
    const unsound = at && placeUnsound(at);
    if (unsound) return refuse(unsound, `readings[${index}].at`);
  }
  const nextId = raisedNextId(
    job.nextId,
    ground.readings.map(({ id }) => id),
  );
  return { ok: true, value: { ...job, ground, nextId } };
}

/** The readings with one more. */
export function withReading({ ground, nextId }: Job, depth: Grid): GroundSaid {
  return { ...ground, readings: [...ground.readings, { id: `g${nextId}`, depth }] };
}
