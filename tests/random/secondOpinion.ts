import 'jsts/org/locationtech/jts/monkey.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import type { Ring } from '../../src/geometry/point.ts';
import type { Layout } from '../../src/takeoff/outline/layout.ts';

/** The little of the other library that is used here; its own types don't reach its inner files. */
interface Shape {
  union(other: Shape): Shape;
  difference(other: Shape): Shape;
  isValid(): boolean;
  getArea(): number;
  getLength(): number;
}

const factory = new GeometryFactory();

function shapeOf(ring: Ring): Shape {
  const corners = [...ring, ring[0]!].map(({ x, y }) => new Coordinate(x, y));
  return factory.createPolygon(factory.createLinearRing(corners), []) as Shape;
}

/**
 * Area and boundary of the pour as an independent library sees them, from the welded outlines: square grid units and
 * grid units. Nothing when that library can't: an outline that touches itself isn't valid to it, and its older overlay,
 * the only one there is for the browser, throws on some inputs.
 */
export function secondOpinion({
  members,
}: Layout): { area: number; perimeter: number } | undefined {
  const shapes = members
    .filter(({ part, chain }) => part !== 'line' && chain.points.length > 2)
    .map(({ part, chain }) => ({ part, shape: shapeOf(chain.points) }));
  if (!shapes.every(({ shape }) => shape.isValid())) return undefined;
  const of = (part: string) => shapes.filter((one) => one.part === part).map(({ shape }) => shape);
  try {
    let pour = of('pad').reduce((sum, shape) => sum.union(shape));
    for (const slab of of('existing')) pour = pour.difference(slab);
    for (const patch of of('patch')) pour = pour.union(patch);
    for (const cutter of of('cutter')) pour = pour.difference(cutter);
    return { area: pour.getArea(), perimeter: pour.getLength() };
  } catch {
    return undefined;
  }
}
