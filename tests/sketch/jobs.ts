import type { Corner, Feature, FeatureKind, Job } from '../../src/job/job.ts';
import { blankJob } from '../../src/job/start.ts';
import { FOOT } from '../../src/units/grid.ts';

/** Corners in feet, ids `${id}-0`, `${id}-1`… */
export function outline(
  id: string,
  kind: FeatureKind,
  feet: readonly (readonly [number, number])[],
  closed = true,
): Feature {
  const corners = feet.map(
    ([x, y], index): Corner => ({
      id: `${id}-${index}`,
      x: Math.round(x * FOOT),
      y: Math.round(y * FOOT),
      rise: 0,
    }),
  );
  const base = { id, name: '', shape: { form: 'outline', closed, corners } as const };
  if (kind === 'building-line') return { ...base, kind, pourAgainst: true };
  if (kind === 'steps') return { ...base, kind, treads: 2 };
  if (kind === 'utility-line') return { ...base, kind, service: 'electric' };
  if (kind === 'joint') return { ...base, kind, joint: 'control' };
  return { ...base, kind };
}

export function post(id: string, x: number, y: number, diameter: number): Feature {
  const center = { x: x * FOOT, y: y * FOOT };
  return {
    id,
    name: '',
    kind: 'block-out',
    shape: { form: 'round', center, diameter: diameter * FOOT },
  };
}

export function jobOf(...features: readonly Feature[]): Job {
  return { ...blankJob(), features, nextId: 100 };
}

/**
 *  (0,10) +-------------+ (20,10)
 *         |   o post    |
 *         |   (5,5)     |
 *   (0,0) +-------------+ (20,0)
 */
export const PAD = outline('pad', 'pad', [
  [0, 0],
  [20, 0],
  [20, 10],
  [0, 10],
]);
export const POST = post('post', 5, 5, 1);
