import type { Point } from '../../geometry/point.ts';
import type { Neighbour } from '../bearings.ts';
import { type Snap, snap } from '../snap.ts';
import { stepAt } from '../view.ts';
import type { Scene } from './tool.ts';

/** How near a thing pulls the point to it, CSS pixels. */
const MOUSE_PULL_PX = 9;
const TOUCH_PULL_PX = 16;

export interface Aim {
  readonly at: Point;
  readonly touch: boolean;
  readonly neighbours: readonly Neighbour[];
  readonly closeAt?: Point | null;
  readonly moving?: { readonly feature: string; readonly corner?: string } | null;
}

/** Where a point goes in this scene, at this zoom, for this pointer. */
export function aim(scene: Scene, { at, touch, neighbours, closeAt, moving }: Aim): Snap {
  return snap({
    at,
    site: scene.site,
    reach: (touch ? TOUCH_PULL_PX : MOUSE_PULL_PX) * scene.view.gridPerPx,
    step: stepAt(scene.view, scene.job.units),
    datum: scene.datum,
    neighbours,
    closeAt: closeAt ?? null,
    moving: moving ?? null,
  });
}
