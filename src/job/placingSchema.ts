import * as v from 'valibot';
import { EXTENT_LIMIT, FOOT, INCH, METRE, SQUARE_METRE } from '../units/grid.ts';
import { positive, whole } from './schemaParts.ts';

function within(least: number, most: number) {
  return v.pipe(v.number(), v.minValue(least), v.maxValue(most));
}

const share = within(0, 1);
const minutes = positive(24 * 60);
const areaRate = positive(10_000 * SQUARE_METRE);

export const weatherSchema = v.strictObject({
  air: v.exactOptional(within(-40, 60)),
  concrete: v.exactOptional(within(0, 60)),
  humidity: v.exactOptional(share),
  wind: v.exactOptional(within(0, 200)),
  sky: v.exactOptional(v.picklist(['sun', 'shade'])),
  frost: v.exactOptional(v.boolean()),
});

export const weatherPracticesSchema = v.strictObject({
  evaporationMost: positive(10),
  evaporationLowBleed: positive(10),
  coldBelow: within(-40, 60),
  hotFrom: within(-40, 60),
  setShift: within(0, 2),
});

export const placingSchema = v.strictObject({
  crew: whole(1, 50),
  mixers: whole(1, 20),
  cycle: minutes,
  barrow: v.strictObject({
    load: positive(METRE ** 3),
    distance: whole(0, EXTENT_LIMIT),
    speed: whole(FOOT, EXTENT_LIMIT),
    lost: within(0, 60),
  }),
  placeRate: positive(100 * METRE ** 3),
  strikeRate: areaRate,
  floatRate: areaRate,
  edgeRate: whole(FOOT, 100 * EXTENT_LIMIT),
  trowel: v.boolean(),
  trowelRate: areaRate,
  broomRate: areaRate,
  bleedShare: share,
  floatShare: share,
  trowelShare: share,
  edgeWindow: minutes,
  stripHours: positive(30 * 24),
  board: whole(FOOT, 20 * METRE),
  boardBearing: whole(0, 2 * METRE),
  pulledBy: v.picklist(['two', 'one']),
  soloMost: whole(INCH, 20 * METRE),
  strips: v.picklist(['proposed', 'across', 'along']),
  handReach: whole(0, 20 * METRE),
  poleReach: whole(0, 50 * METRE),
  coolWater: within(0, 60),
  waterShare: share,
});
