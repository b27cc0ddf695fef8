import { doubledArea } from './area.ts';
import { turn } from './locate.ts';
import type { Ring } from './point.ts';

/** Whether a counter-clockwise ring turns left or goes straight on at every corner, once round. */
export function isConvex(ring: Ring): boolean {
  let turns = 0;
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i]!;
    const b = ring[(i + 1) % ring.length]!;
    const c = ring[(i + 2) % ring.length]!;
    if (turn(a, b, c) < 0) return false;
    // Once round means that x starts to grow again once.
    if (b.x - a.x <= 0 && c.x - b.x > 0) turns++;
  }
  return turns <= 1 && doubledArea(ring) > 0;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * Twice the area that a simple counter-clockwise ring has inside a convex one, square grid units, to the nearest whole
 * number. Cuts the ring along each side of the window in turn: what runs along the window's sides is left doubled there,
 * which adds no area.
 */
export function doubledAreaWithin(ring: Ring, window: Ring): number {
  const origin = window[0]!;
  let inside: Spot[] = ring.map(({ x, y }) => ({ x: x - origin.x, y: y - origin.y }));
  for (let i = 0; i < window.length && inside.length > 0; i++) {
    const from = window[i]!;
    const to = window[(i + 1) % window.length]!;
    inside = leftOf(inside, from.x - origin.x, from.y - origin.y, to.x - from.x, to.y - from.y);
  }
  let sum = 0;
  for (let i = 1; i + 1 < inside.length; i++) {
    const o = inside[0]!;
    const a = inside[i]!;
    const b = inside[i + 1]!;
    sum += (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
  }
  return Math.round(sum);
}

/** The part of a ring to the left of the line through (x, y) along (dx, dy). */
function leftOf(ring: readonly Spot[], x: number, y: number, dx: number, dy: number): Spot[] {
  const kept: Spot[] = [];
  let before = ring[ring.length - 1]!;
  let beforeSide = dx * (before.y - y) - dy * (before.x - x);
  for (const spot of ring) {
    const side = dx * (spot.y - y) - dy * (spot.x - x);
    if ((side > 0 && beforeSide < 0) || (side < 0 && beforeSide > 0)) {
      const share = beforeSide / (beforeSide - side);
      kept.push({
        x: before.x + share * (spot.x - before.x),
        y: before.y + share * (spot.y - before.y),
      });
    }
    if (side >= 0) kept.push(spot);
    before = spot;
    beforeSide = side;
  }
  return kept;
}
