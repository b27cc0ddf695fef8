import { nearestAreas } from '../../geometry/nearestAreas.ts';
import type { Point, Polygon } from '../../geometry/point.ts';
import type { GroundReading, GroundSaid } from '../../job/job.ts';
import type { GroundDepth } from '../result.ts';
import { LEAST_READINGS, TAPED_WITHIN } from './rules.ts';

type Placed = GroundReading & { readonly at: Point };

/**
 * The mean of the taped depths, and what it may be off by: its standard error. Where every reading has a place, each weighs
 * as much as the ground that lies nearest to it; otherwise all weigh alike. Source: geometry, and the usual statistics of a
 * sample (variance over n − 1, no reading taken as nearer than a tape comes to loose earth); that depths are taped here and there, and not where it looks deep, is taken as so.
 * @returns nothing when there are too few to say anything of their spread
 */
export function groundDepth(
  { readings }: GroundSaid,
  polygons: readonly Polygon[],
): GroundDepth | undefined {
  if (readings.length < LEAST_READINGS) return undefined;
  const placed = readings.filter((reading): reading is Placed => reading.at !== undefined);
  const areas =
    placed.length === readings.length
      ? nearestAreas(
          polygons,
          placed.map(({ at }) => at),
        )
      : [];
  const whole = areas.reduce((sum, each) => sum + each, 0);
  const byArea = whole > 0;
  const weights = readings.map((_, i) => (byArea ? areas[i]! / whole : 1 / readings.length));
  const mean = readings.reduce((sum, { depth }, i) => sum + weights[i]! * depth, 0);
  const spread = readings.reduce((sum, { depth }, i) => sum + weights[i]! * (depth - mean) ** 2, 0);
  const seen = Math.sqrt((spread * readings.length) / (readings.length - 1));
  const deviation = Math.max(seen, TAPED_WITHIN);
  const twist = placed.length === 4 && readings.length === 4 ? twistOf(placed) : undefined;
  return {
    readings: readings.map(({ depth }, i) => ({ depth, weight: weights[i]! })),
    weighed: byArea ? 'by-area' : 'alike',
    mean,
    deviation,
    error: deviation * Math.sqrt(weights.reduce((sum, each) => sum + each ** 2, 0)),
    ...(twist ? { twist } : {}),
  };
}

/**
 * Four depths at the corners of a quadrilateral don't say what lies in its middle: parted along the one diagonal or along
 * the other, the mean comes out differently. Nothing when they bound no convex quadrilateral.
 */
function twistOf(readings: readonly Placed[]): GroundDepth['twist'] {
  const middle = {
    x: readings.reduce((sum, { at }) => sum + at.x, 0) / 4,
    y: readings.reduce((sum, { at }) => sum + at.y, 0) / 4,
  };
  const around = (one: Placed) => Math.atan2(one.at.y - middle.y, one.at.x - middle.x);
  const [a, b, c, d] = [...readings].sort((one, other) => around(one) - around(other)) as [
    Placed,
    Placed,
    Placed,
    Placed,
  ];
  const along = (triangles: readonly (readonly [Placed, Placed, Placed])[]) => {
    const sizes = triangles.map(turn);
    if (!sizes.every((size) => size > 0)) return undefined;
    const whole = sizes.reduce((sum, size) => sum + size, 0);
    return triangles.reduce(
      (sum, corners, i) =>
        sum + ((sizes[i]! / whole) * corners.reduce((all, { depth }) => all + depth, 0)) / 3,
      0,
    );
  };
  const one = along([
    [a, b, c],
    [a, c, d],
  ]);
  const other = along([
    [b, c, d],
    [b, d, a],
  ]);
  if (one === undefined || other === undefined) return undefined;
  return { low: Math.min(one, other), high: Math.max(one, other) };
}

/** Twice the area of a triangle, positive counter-clockwise. */
function turn([{ at: a }, { at: b }, { at: c }]: readonly [Placed, Placed, Placed]): number {
  return (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
}
