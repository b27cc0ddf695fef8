import { alongOf, floatArea, ringBehind } from './halfPlane.ts';
import type { Point, Polygon, Ring } from './point.ts';

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
    // Holes run clockwise: their areas are less than nothing.
    return rings.reduce((sum, ring) => sum + floatArea(cell(ring, place, others)), 0) / alike;
  });
}

/** A ring's part nearer to a place than to the others. */
function cell(ring: Ring, place: Point, others: readonly Point[]): Ring {
  return others.reduce((left, other) => {
    const apart = Math.hypot(other.x - place.x, other.y - place.y);
    const heading = { x: (other.x - place.x) / apart, y: (other.y - place.y) / apart };
    return ringBehind(left, heading, (alongOf(place, heading) + alongOf(other, heading)) / 2);
  }, ring);
}
