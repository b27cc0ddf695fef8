import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { EXTENT_LIMIT, FOOT, INCH, METRE } from '../units/grid.ts';
import { TEXT_MOST } from './textLimits.ts';

/** The name by which a job file is known, and the version that this program writes. */
export const FORMAT = 'notchpad-job';
export const VERSION = 1;

const ID = /^[A-Za-z0-9_-]{1,40}$/;

function whole(least: number, most: number) {
  return v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
}
function positive(most: number) {
  return v.pipe(v.number(), v.gtValue(0), v.maxValue(most));
}
function text(most: number) {
  return v.pipe(v.string(), v.maxLength(most));
}

const id = v.pipe(v.string(), v.regex(ID));
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
]);

const bagMix = v.strictObject({
  id,
  name,
  weight: positive(1_000),
  yield: positive(METRE ** 3),
});

export const practicesSchema = v.strictObject({
  thickness: whole(1, METRE),
  formBoard: v.picklist(['1x4', '1x6', '2x4', '2x6', '2x8', '2x10', '2x12']),
  gapUnderForm: whole(0, METRE),
  closeEnough: whole(0, 4 * INCH),
  stakeSpacing: whole(INCH, 10 * METRE),
  stakeFromEnd: whole(0, 10 * METRE),
  nailsPerStake: whole(0, 1_000),
  nailsPerCorner: whole(0, 1_000),
  nailsPerPound: whole(1, 10_000),
  mesh: v.strictObject({
    sheetLength: whole(FOOT, 100 * METRE),
    sheetWidth: whole(FOOT, 100 * METRE),
    lap: whole(0, METRE),
    cover: whole(0, METRE),
    square: whole(INCH, METRE),
    weight: positive(100),
  }),
  isolation: v.strictObject({
    existing: v.boolean(),
    wall: v.boolean(),
    steps: v.boolean(),
    blockOut: v.boolean(),
    pieceLength: whole(INCH, EXTENT_LIMIT),
  }),
  mix: v.strictObject({
    mixes: v.pipe(v.array(bagMix), v.minLength(1), v.maxLength(100)),
    blend: v.strictObject({
      main: id,
      mainParts: whole(1, 1_000),
      other: v.exactOptional(id),
      otherParts: whole(0, 1_000),
    }),
    batchVolume: positive(METRE ** 3),
  }),
  waste: v.strictObject({
    share: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
    minimumBags: whole(0, 1_000),
  }),
});

export const textSchema = { name, site: text(TEXT_MOST.site), notes: text(TEXT_MOST.notes) };
export const unitsSchema = v.picklist(['feet-inches', 'decimal-feet', 'metric']);

export const jobSchemaParts = v.strictObject({
  ...textSchema,
  units: unitsSchema,
  features: v.pipe(v.array(featureSchema), v.maxLength(5_000)),
  practices: practicesSchema,
  nextId: whole(1, Number.MAX_SAFE_INTEGER),
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
