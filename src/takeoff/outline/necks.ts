import { boxesMeet } from '../../geometry/box.ts';
import type { Chain } from '../../geometry/chain.ts';
import { distanceToEdge, turn } from '../../geometry/locate.ts';
import { edgeEnd, edgeStart, visitEdgesNear } from '../../geometry/nearby.ts';
import type { Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';

/** Bits that are joined by less boundary than this many tolerances are a corner, not a neck. */
const APART = 16;

/**
 * Places where the pour is narrower than `tolerance`: a corner of its boundary that comes that near to another side with
 * concrete between, down to touching it.
 *
 * @param rings The pour's rings made straight; a chain's tag is the number of the side that a chord belongs to.
 */
export function neckPlaces(rings: readonly Chain[], tolerance: Grid): Point[] {
  const places: Point[] = [];
  for (const ring of rings) {
    for (let corner = 0; corner < ring.points.length; corner++) {
      const at = ring.points[corner]!;
      const spot = { minX: at.x, minY: at.y, maxX: at.x, maxY: at.y };
      let narrow = false;
      for (const other of rings) {
        if (narrow || !boxesMeet(other.box, spot, tolerance)) continue;
        visitEdgesNear(other, spot, tolerance, (bit) => {
          if (narrow) return;
          if (other === ring && isNeighbour(ring, corner, bit)) return;
          const a = edgeStart(other, bit);
          const b = edgeEnd(other, bit);
          // Only with concrete, which lies to the left of every edge, between.
          if (turn(a, b, at) < 0 || distanceToEdge(at, a, b) >= tolerance) return;
          narrow = other !== ring || isFarAlong(ring, corner, bit, APART * tolerance);
        });
      }
      if (narrow) places.push(at);
    }
  }
  return places;
}

/** Whether a bit belongs to one of the two sides that meet at a corner. */
function isNeighbour({ points, tags }: Chain, corner: number, bit: number): boolean {
  const side = tags[bit];
  return side === tags[corner] || side === tags[corner === 0 ? points.length - 1 : corner - 1];
}

/** Whether a corner and a bit of one ring have at least `least` of boundary between them, both ways round. */
function isFarAlong({ points }: Chain, corner: number, bit: number, least: Grid): boolean {
  const next = bit + 1 === points.length ? 0 : bit + 1;
  return walks(points, corner, bit, least) && walks(points, next, corner, least);
}

function walks(points: readonly Point[], from: number, to: number, least: Grid): boolean {
  let sum = 0;
  for (let i = from; i !== to; ) {
    const next = i + 1 === points.length ? 0 : i + 1;
    sum += Math.hypot(points[next]!.x - points[i]!.x, points[next]!.y - points[i]!.y);
    if (sum >= least) return true;
    i = next;
  }
  return false;
}
