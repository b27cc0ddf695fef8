import { locate } from '../geometry/locate.ts';
import { type Near, nearestOnEdge } from '../geometry/nearest.ts';
import type { Point } from '../geometry/point.ts';
import type { SiteEdge, SiteGround } from './site.ts';

export function nearestOn({ from, to, arc }: SiteEdge, at: Point): Near {
  return nearestOnEdge(from, to, arc, at);
}

/** Whether a point is on what a feature covers. Crossing outlines count by odd and even. */
export function covers(ground: SiteGround, at: Point): boolean {
  if (ground.round) {
    const { center, diameter } = ground.round;
    return Math.hypot(at.x - center.x, at.y - center.y) <= diameter / 2;
  }
  return locate(at, ground.ring) !== 'outside';
}
