import { insetPolygons } from '../../geometry/offset.ts';
import type { Polygon } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import { type Grid, METRE } from '../../units/grid.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { count, length, number, text } from '../quantity.ts';
import type { BarsResult } from '../result.ts';
import type { Searched } from '../searched.ts';
import { cutBars } from './barCutting.ts';
import { barRanges, barsOneWay, cornerBars, crossings } from './barLines.ts';
import { barOf } from './bars.ts';
import { longestWay } from './longestWay.ts';

/** More bars than this are a spacing typed wrong. Our own limit: it keeps a drag quick. */
const MOST_BARS = 5_000;

/**
 * A grid of bars on the real shape: along the longest side and across it, from cover to cover, holes and notches left
 * out, one more bar across each inside corner. Cut from bars of one length, lapped where a line is longer.
 * @param polygons The pour as polygons, arcs flattened.
 */
export function barGrid(
  { practices }: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
  searched: Searched,
): Figured<BarsResult> {
  const { size, spacing, cover, lapDiameters, stockLength, cornerLength, price } =
    practices.steel.bars;
  const bar = barOf(size);
  const lap = Math.round(lapDiameters * bar.diameter);
  if (!(spacing > 0 && cover >= 0 && lap >= 0 && stockLength > 0)) {
    return withheld(tradeNote('steel', 'stop', 'bars-size'));
  }
  const laps = { lap: length(lap), stock: length(stockLength) };
  // Past half a bar three of them would lie beside each other: a length typed wrong.
  if (2 * lap > stockLength || cornerLength > stockLength) {
    return withheld(tradeNote('steel', 'stop', 'bars-stock-short', { facts: laps }));
  }
  const inset = insetPolygons(polygons, cover);
  if (inset.length === 0) {
    return withheld(
      tradeNote('steel', 'stop', 'bars-no-room', { facts: { cover: length(cover) } }),
    );
  }
  if (tooMany(inset, spacing)) {
    const facts = { spacing: length(spacing), most: count(MOST_BARS, 'bar') };
    return withheld(tradeNote('steel', 'stop', 'bars-too-many', { facts }));
  }
  const angle = longestWay(pour, closeness);
  const one = (turn: number, way: 'along' | 'across') =>
    barsOneWay(inset, angle + turn, spacing, closeness, lap, way);
  const along = one(0, 'along');
  const across = one(Math.PI / 2, 'across');
  const rule = { length: cornerLength, cover, shortest: lap, closeness };
  const corners = cornerBars(pour, inset, rule);
  const lines = [...along, ...across, ...corners];
  const stock = { size, length: stockLength, lap, ...(price === undefined ? {} : { price }) };
  const cuts = cutBars(
    lines.map((line) => line.length),
    stock,
    searched.bars,
  );
  if (!cuts) return withheld(tradeNote('steel', 'stop', 'bars-stock-short', { facts: laps }));
  const figured: BarsResult = {
    size,
    angle,
    inset,
    lines,
    lap,
    ranges: [
      ...barRanges(inset, angle, spacing, closeness, lap, 'along'),
      ...barRanges(inset, angle + Math.PI / 2, spacing, closeness, lap, 'across'),
    ],
    cuts,
    corners: corners.length,
    crossings: crossings(along, across, angle),
    laid: lines.reduce((sum, line) => sum + line.length, 0),
    weight: (cuts.plan.boards.length * stockLength * bar.weight) / METRE,
    area: bar.area / (spacing / METRE),
  };
  return {
    figured,
    notes: [
      tradeNote('steel', 'caution', 'bar-caps'),
      tradeNote('steel', 'assumption', 'bars-laid', {
        facts: {
          size: text(size),
          spacing: length(spacing),
          cover: length(cover),
          lap: length(lap),
          diameters: number(lapDiameters),
        },
      }),
    ],
  };
}

function tooMany(inset: readonly Polygon[], spacing: number): boolean {
  let lines = 0;
  for (const { outer } of inset) {
    const xs = outer.map(({ x }) => x);
    const ys = outer.map(({ y }) => y);
    for (const values of [xs, ys]) {
      const [least, most] = values.reduce(
        ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
        [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
      );
      lines += (most - least) / spacing;
    }
  }
  return lines > MOST_BARS;
}
