import type { Ring } from './point.ts';

/** Cross products are split here so that sums of them stay exact. */
const SPLIT = 2 ** 26;

/**
 * Twice the area inside a ring, square grid units: positive when it runs counter-clockwise.
 *
 * Exact: corners are whole numbers no farther apart than the extent limit (200 m), so each cross product about the
 * first corner is exact, and the sum is kept in two parts, each of them exact. Source: geometry (the coordinates,
 * or shoelace, method).
 */
export function doubledArea(ring: Ring): number {
  const origin = ring[0];
  if (!origin || ring.length < 3) return 0;
  let high = 0;
  let low = 0;
  let ax = ring[1]!.x - origin.x;
  let ay = ring[1]!.y - origin.y;
  for (let i = 2; i < ring.length; i++) {
    const bx = ring[i]!.x - origin.x;
    const by = ring[i]!.y - origin.y;
    const cross = ax * by - ay * bx;
    const carried = Math.floor(cross / SPLIT);
    high += carried;
    low += cross - carried * SPLIT;
    ax = bx;
    ay = by;
  }
  return high * SPLIT + low;
}

/** The ring with its corners the other way round. */
export function reversed(ring: Ring): Ring {
  return ring.toReversed();
}
