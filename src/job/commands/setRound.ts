import type { Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import { findFeature, withFeature } from '../find.ts';
import type { Feature, Job } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';

export interface SetRound {
  readonly do: 'set-round';
  readonly feature: string;
  readonly center?: Point;
  readonly diameter?: Grid;
}

export function setRound(job: Job, { feature, center, diameter }: SetRound): Outcome {
  const found = findFeature(job, feature);
  if (!found.ok) return found;
  const { shape } = found.value;
  if (shape.form !== 'round') return refuse('not-round', feature);
  const next = {
    ...shape,
    center: center ? { x: center.x, y: center.y } : shape.center,
    diameter: diameter ?? shape.diameter,
  };
  return { ok: true, value: withFeature(job, { ...found.value, shape: next } as Feature) };
}
