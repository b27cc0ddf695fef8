import type { Point } from '../../geometry/point.ts';
import { onGrid } from '../edge.ts';
import { findFeature } from '../find.ts';
import type { Job } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';
import { middleOf, withPlaces } from '../wholeShape.ts';

/** Counter-clockwise. About its middle unless said. Quarter turns are exact; others are put on the grid once. */
export interface TurnFeature {
  readonly do: 'turn-feature';
  readonly feature: string;
  readonly degrees: number;
  readonly about?: Point;
}

export function turnFeature(job: Job, { feature: id, degrees, about }: TurnFeature): Outcome {
  const found = findFeature(job, id);
  if (!found.ok) return found;
  if (!Number.isFinite(degrees)) return refuse('not-on-grid', id);
  const [cos, sin] = cosSin(degrees);
  if (cos === 1) return { ok: true, value: job };
  const center = about ?? middleOf(found.value.shape);
  return {
    ok: true,
    value: withPlaces(job, found.value, ({ x, y }) => {
      const dx = x - center.x;
      const dy = y - center.y;
      const turned = onGrid(cos * dx - sin * dy, sin * dx + cos * dy);
      return { x: center.x + turned.x, y: center.y + turned.y };
    }),
  };
}

/** Cosine and sine, exactly whole at quarter turns. */
export function cosSin(degrees: number): readonly [number, number] {
  switch (((degrees % 360) + 360) % 360) {
    case 0:
      return [1, 0];
    case 90:
      return [0, 1];
    case 180:
      return [-1, 0];
    case 270:
      return [0, -1];
    default:
      return [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  }
}
