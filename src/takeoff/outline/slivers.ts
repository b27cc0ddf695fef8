import { doubledArea } from '../../geometry/area.ts';
import type { Ring } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { CarvedPiece, CarvedRing } from './carve.ts';
import type { Sliver } from './pour.ts';

/**
 * Drops rings thinner than the tolerance on average, holes as well: two long edges with nothing between them that
 * anybody could form or fill. Each is reported. A block-out that stands alone is never one, however small.
 */
export function withoutSlivers(
  pieces: readonly CarvedPiece[],
  tolerance: Grid,
): { pieces: readonly CarvedPiece[]; slivers: readonly Sliver[] } {
  const slivers: Sliver[] = [];
  const keeps = ({ points, lone }: CarvedRing): boolean => {
    if (lone !== undefined) return true;
    const round = girth(points);
    const doubled = Math.abs(doubledArea(points));
    if (doubled >= tolerance * round) return true;
    slivers.push({ at: points[0]!, area: doubled / 2, length: Math.round(round / 2) });
    return false;
  };
  const kept = pieces.flatMap(({ outer, holes }) =>
    keeps(outer) ? [{ outer, holes: holes.filter(keeps) }] : [],
  );
  return { pieces: kept, slivers };
}

/** The length round a ring, grid units, a float. */
function girth(ring: Ring): number {
  let sum = 0;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    sum += Math.sqrt(dx * dx + dy * dy);
    a = b;
  }
  return sum;
}
