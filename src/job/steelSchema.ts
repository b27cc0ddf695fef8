import * as v from 'valibot';
import { FOOT, INCH, METRE } from '../units/grid.ts';
import { MOST_MONEY } from '../units/money.ts';
import { id, positive, whole } from './schemaParts.ts';

const style = v.picklist([
  '6x6-W1.4',
  '6x6-W2.0',
  '6x6-W2.1',
  '6x6-W2.9',
  '6x6-W4.0',
  '4x4-W1.4',
  '4x4-W2.0',
  '4x4-W2.1',
  '4x4-W2.9',
  '4x4-W4.0',
  'own',
]);
const barSize = v.picklist(['#3', '#4', '#5', '#6', '#7', '#8']);

export const steelSchema = v.strictObject({
  kind: v.picklist(['mesh', 'bars', 'none']),
  mesh: v.strictObject({
    style,
    own: v.strictObject({ square: whole(INCH, METRE), weight: positive(100) }),
    lapEnds: whole(0, METRE),
    lapSides: whole(0, METRE),
    cover: whole(0, METRE),
    leastPiece: whole(INCH, 5 * METRE),
  }),
  supports: v.strictObject({
    by: v.picklist(['chairs', 'lifting']),
    spacing: whole(INCH, 10 * METRE),
    below: whole(1, METRE),
  }),
  tieSpacing: whole(INCH, 10 * METRE),
  bars: v.strictObject({
    size: barSize,
    spacing: whole(INCH, 10 * METRE),
    cover: whole(0, METRE),
    lapDiameters: positive(200),
    stockLength: whole(FOOT, 30 * METRE),
    price: v.exactOptional(whole(0, MOST_MONEY)),
    cornerLength: whole(0, 10 * METRE),
  }),
  dowels: v.strictObject({
    use: v.boolean(),
    by: v.picklist(['table', 'own']),
    own: v.strictObject({
      diameter: whole(1, 4 * INCH),
      length: whole(INCH, 3 * METRE),
      spacing: whole(INCH, 10 * METRE),
    }),
    set: v.picklist(['epoxy', 'sleeve']),
    fromCorner: whole(0, 3 * METRE),
  }),
  drag: v.strictObject({
    friction: positive(10),
    jointLength: whole(FOOT, 100 * METRE),
    stress: positive(1e12),
  }),
});

const meshBase = {
  id,
  form: v.picklist(['sheet', 'roll']),
  /** No smaller than a scrap that is worth carrying, no longer than a roll is wound. */
  length: whole(6 * INCH, 100 * METRE),
  width: whole(6 * INCH, 100 * METRE),
};

export const meshStockSchema = v.strictObject({
  truck: v.pipe(v.array(v.strictObject({ ...meshBase, count: whole(1, 1_000) })), v.maxLength(200)),
  yard: v.pipe(
    v.array(v.strictObject({ ...meshBase, price: v.exactOptional(whole(0, MOST_MONEY)) })),
    v.maxLength(200),
  ),
});
