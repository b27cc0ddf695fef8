import * as v from 'valibot';
import { EXTENT_LIMIT, FOOT, INCH, METRE } from '../units/grid.ts';
import { positive, whole } from './schemaParts.ts';

export const jointUse = v.picklist(['control', 'construction', 'existing']);

export const isolationSchema = v.strictObject({
  existing: v.boolean(),
  wall: v.boolean(),
  steps: v.boolean(),
  blockOut: v.boolean(),
  bondAtPatch: v.boolean(),
  thickness: whole(1, 4 * INCH),
  recess: whole(0, METRE),
  pieceLength: whole(INCH, EXTENT_LIMIT),
});

export const jointsSchema = v.strictObject({
  layout: v.picklist(['proposed', 'by-hand']),
  factor: v.pipe(v.number(), v.minValue(1), v.maxValue(200)),
  cap: whole(FOOT, 100 * METRE),
  ratio: v.pipe(v.number(), v.minValue(1), v.maxValue(100)),
  least: whole(0, 10 * METRE),
  angle: v.pipe(v.number(), v.minValue(0), v.maxValue(90)),
  made: v.picklist(['tooled', 'sawn']),
  depthShare: positive(1),
  leastDepth: whole(0, METRE),
  sealant: v.strictObject({
    joints: v.boolean(),
    strip: v.boolean(),
    width: whole(1, 4 * INCH),
    depth: whole(1, 10 * INCH),
    backer: v.boolean(),
    cartridge: positive(METRE ** 3),
  }),
});
