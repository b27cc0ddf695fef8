import { onGrid } from '../edge.ts';
import { findEdge, withCorners } from '../find.ts';
import type { Job } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';
import { placedAt } from '../settle.ts';
import { cosSin } from './turnFeature.ts';

/** Swings an edge about its other end, keeping its length. Counter-clockwise from east, start to end. */
export interface SetEdgeDirection {
  readonly do: 'set-edge-direction';
  readonly feature: string;
  /** The corner at which the edge starts. */
  readonly corner: string;
  readonly degrees: number;
  readonly moves: 'start' | 'end';
}

export function setEdgeDirection(job: Job, command: SetEdgeDirection): Outcome {
  const found = findEdge(job, command.feature, command.corner);
  if (!found.ok) return found;
  if (!Number.isFinite(command.degrees)) return refuse('not-on-grid', command.feature);
  const { outline, corner: start, end, index, endIndex } = found.value;
  const [cos, sin] = cosSin(command.degrees);
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  const along = onGrid(length * cos, length * sin);
  const corners =
    command.moves === 'end'
      ? outline.corners.with(
          endIndex,
          placedAt(job, end, { x: start.x + along.x, y: start.y + along.y }),
        )
      : outline.corners.with(
          index,
          placedAt(job, start, { x: end.x - along.x, y: end.y - along.y }),
        );
  return { ok: true, value: withCorners(job, found.value, corners) };
}
