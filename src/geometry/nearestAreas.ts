import type { Point, Polygon } from './point.ts';

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * Of each place, how much of the polygons lies nearer to it than to any other, square grid units, in the places' order
 * (areas of a Voronoi diagram, each cell cut out by half planes). Floats. Two places on one spot share what is nearest.
 */
export function nearestAreas(
  polygons: readonly Polygon[],
  places: readonly Point[],
): readonly number[] {
  const rings = polygons.flatMap(({ outer, holes }) => [outer, ...holes]);
  return places.map((place) => {
    const others = places.filter(({ x, y }) => x !== place.x || y !== place.y);
    const alike = places.length - others.length;
    return rings.reduce((sum, ring) => sum + area(cell(ring, place, others)), 0) / alike;
  });
}

/** A ring's part nearer to a place than to the others: bridges along a cut have no area. */
function cell(ring: readonly Place[], place: Point, others: readonly Point[]): readonly Place[] {
  return others.reduce((left: readonly Place[], other) => {
    const dx = other.x - place.x;
    const dy = other.y - place.y;
    const middle = (dx * (place.x + other.x) + dy * (place.y + other.y)) / 2;
    return cut(left, ({ x, y }) => dx * x + dy * y - middle);
  }, ring);
}

/** What lies where `beyond` isn't positive. */
function cut(ring: readonly Place[], beyond: (place: Place) => number): readonly Place[] {
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    const [a, b] = [beyond(from), beyond(to)];
    const kept = a <= 0 ? [from] : [];
    if (a < 0 === b < 0 || a === 0 || b === 0) return kept;
    const t = a / (a - b);
    return [...kept, { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }];
  });
}

/** Signed, about the ring's first place, so that far from the origin no digits are lost. */
function area(ring: readonly Place[]): number {
  const [first] = ring;
  if (!first) return 0;
  return (
    ring.reduce((sum, from, i) => {
      const to = ring[(i + 1) % ring.length]!;
      return sum + (from.x - first.x) * (to.y - first.y) - (to.x - first.x) * (from.y - first.y);
    }, 0) / 2
  );
}
