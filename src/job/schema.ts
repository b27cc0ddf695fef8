import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { FOOT, INCH, METRE } from '../units/grid.ts';
import { MOST_MONEY } from '../units/money.ts';
import { isolationSchema, jointsSchema, jointUse } from './jointsSchema.ts';
import { mixSchema, wasteSchema } from './mixSchema.ts';
import { bidSchema, orderSchema } from './orderSchema.ts';
import { placingSchema, weatherPracticesSchema, weatherSchema } from './placingSchema.ts';
import { closeOutSchema, pourDaySchema, pourLogSchema } from './pourLogSchema.ts';
import { id, positive, text, whole } from './schemaParts.ts';
import { SERVICES } from './services.ts';
import { meshStockSchema, steelSchema } from './steelSchema.ts';
import { TEXT_MOST } from './textLimits.ts';

/** The name by which a job file is known, and the version that this program writes. */
export const FORMAT = 'notchpad-job';
export const VERSION = 3;

/** More stakes set by hand than this are on no job. Our own limit. */
export const MOST_HAND_STAKES = 20_000;

/** Twenty times the largest job: how far off, and how big, is checked by soundness.ts in words of its own. */
const grid = whole(-Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
const point = v.strictObject({ x: grid, y: grid });

const attachment = v.strictObject({
  feature: id,
  corner: id,
  t: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
});
const corner = v.strictObject({
  id,
  x: grid,
  y: grid,
  rise: grid,
  on: v.exactOptional(attachment),
});
const outline = v.strictObject({
  form: v.literal('outline'),
  closed: v.boolean(),
  corners: v.pipe(v.array(corner), v.maxLength(20_000)),
});
const round = v.strictObject({ form: v.literal('round'), center: point, diameter: grid });
const shape = v.variant('form', [outline, round]);

const name = text(TEXT_MOST.name);
const base = { id, name };

const service = v.picklist(SERVICES);

export const featureSchema = v.variant('kind', [
  v.strictObject({ ...base, kind: v.literal('pad'), shape: outline }),
  v.strictObject({ ...base, kind: v.literal('existing-slab'), shape: outline }),
  v.strictObject({
    ...base,
    kind: v.literal('building-line'),
    shape: outline,
    pourAgainst: v.boolean(),
  }),
  v.strictObject({ ...base, kind: v.literal('steps'), shape: outline, treads: whole(1, 50) }),
  v.strictObject({ ...base, kind: v.literal('block-out'), shape }),
  v.strictObject({ ...base, kind: v.literal('patch'), shape: outline }),
  v.strictObject({ ...base, kind: v.literal('no-stake-zone'), shape }),
  v.strictObject({ ...base, kind: v.literal('utility-line'), shape: outline, service }),
  v.strictObject({ ...base, kind: v.literal('joint'), shape: outline, joint: jointUse }),
]);

const boardSize = v.picklist(['1x4', '1x6', '2x4', '2x6', '2x8', '2x10', '2x12']);
/** A board: a foot at least, and no longer than a long truck carries. */
const boardLength = whole(FOOT, 20 * METRE);
const spacing = whole(INCH, 10 * METRE);

export const practicesSchema = v.strictObject({
  currency: text(4),
  thickness: whole(1, METRE),
  formBoard: boardSize,
  gapUnderForm: whole(0, METRE),
  thickenedEdge: v.strictObject({
    use: v.boolean(),
    depth: whole(1, 2 * METRE),
    width: whole(1, 2 * METRE),
    taper: whole(0, 2 * METRE),
  }),
  base: v.strictObject({ depth: whole(0, METRE), retarder: v.boolean() }),
  edgeRadius: whole(0, 2 * INCH),
  closeEnough: whole(0, 4 * INCH),
  stakeSpacings: v.strictObject({
    '1x4': spacing,
    '1x6': spacing,
    '2x4': spacing,
    '2x6': spacing,
    '2x8': spacing,
    '2x10': spacing,
    '2x12': spacing,
  }),
  stakeFromEnd: whole(0, 10 * METRE),
  curve: v.strictObject({ spacing, flat: whole(1, METRE) }),
  bending: v.strictObject({
    deflection: whole(1, METRE),
    deflectionShare: positive(1),
    elasticity: positive(1e12),
    stress: positive(1e12),
    freshWeight: positive(10_000),
  }),
  kickersAbove: whole(0, METRE),
  utilityTolerance: whole(0, 10 * METRE),
  boards: v.strictObject({
    kerf: whole(0, 2 * INCH),
    shortest: whole(INCH, 5 * METRE),
    splices: v.boolean(),
    cleatLength: whole(INCH, 3 * METRE),
    runLong: whole(0, 10 * METRE),
    lapOn: whole(0, 3 * METRE),
    useTwisted: v.boolean(),
  }),
  fastening: v.strictObject({
    by: v.picklist(['duplex-nails', 'screws']),
    perStake: whole(0, 1_000),
    perCorner: whole(0, 1_000),
    perCleat: whole(0, 1_000),
    nailsPerPound: whole(1, 10_000),
    nailBox: positive(100),
    screwsPerBox: whole(1, 100_000),
  }),
  steel: steelSchema,
  isolation: isolationSchema,
  joints: jointsSchema,
  mix: mixSchema,
  weather: v.exactOptional(weatherPracticesSchema),
  placing: v.exactOptional(placingSchema),
  order: v.exactOptional(orderSchema),
  waste: wasteSchema,
  pourDay: v.exactOptional(pourDaySchema),
});

export const lumberSchema = v.strictObject({
  truck: v.pipe(
    v.array(
      v.strictObject({
        id,
        size: boardSize,
        length: boardLength,
        count: whole(1, 1_000),
        twisted: v.boolean(),
      }),
    ),
    v.maxLength(500),
  ),
  yard: v.pipe(
    v.array(
      v.strictObject({
        id,
        size: boardSize,
        length: boardLength,
        price: v.exactOptional(whole(0, MOST_MONEY)),
      }),
    ),
    v.maxLength(500),
  ),
});

export const handStakeSchema = v.strictObject({
  id,
  at: point,
  is: v.picklist(['pinned', 'removed']),
});

/** More depths than this nobody tapes. Our own limit. */
const MOST_READINGS = 200;

export const groundSchema = v.strictObject({
  readings: v.pipe(
    v.array(v.strictObject({ id, depth: whole(1, 2 * METRE), at: v.exactOptional(point) })),
    v.maxLength(MOST_READINGS),
  ),
  depthBy: v.picklist(['thickness', 'readings']),
});

export const textSchema = { name, site: text(TEXT_MOST.site), notes: text(TEXT_MOST.notes) };
export const titleSchema = v.strictObject({
  drawnBy: text(TEXT_MOST.title),
  revision: text(TEXT_MOST.title),
  replaces: text(TEXT_MOST.title),
  north: v.exactOptional(whole(0, 359)),
});
export const unitsSchema = v.picklist(['feet-inches', 'decimal-feet', 'metric']);

export const jobSchemaParts = v.strictObject({
  ...textSchema,
  title: v.exactOptional(titleSchema),
  units: unitsSchema,
  features: v.pipe(v.array(featureSchema), v.maxLength(5_000)),
  practices: practicesSchema,
  lumber: lumberSchema,
  meshStock: meshStockSchema,
  weather: v.exactOptional(weatherSchema),
  handStakes: v.pipe(v.array(handStakeSchema), v.maxLength(MOST_HAND_STAKES)),
  ground: groundSchema,
  bid: v.exactOptional(bidSchema),
  nextId: whole(1, Number.MAX_SAFE_INTEGER),
  pourLog: v.exactOptional(pourLogSchema),
  closeOut: v.exactOptional(closeOutSchema),
});

const file = v.strictObject({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  job: jobSchemaParts,
});

/** The JSON Schema of the job file, made from the validator. Lengths are whole grid units of 1/320 mm. */
export function jobSchema(): object {
  return { title: 'Notchpad job', ...toJsonSchema(file, { target: 'draft-2020-12' }) };
}
