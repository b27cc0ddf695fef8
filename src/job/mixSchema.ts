import * as v from 'valibot';
import { METRE } from '../units/grid.ts';
import { id, positive, text, whole } from './schemaParts.ts';
import { TEXT_MOST } from './textLimits.ts';

/** A week: nothing that is poured takes longer to set. Our own limit. */
const MOST_MINUTES = 7 * 24 * 60;
const minutes = whole(1, MOST_MINUTES);

/** Quarters of a part are as fine as bags are halved and halved again. */
function parts(least: number) {
  return v.pipe(v.number(), v.multipleOf(0.25), v.minValue(least), v.maxValue(1_000));
}

const volume = positive(METRE ** 3);

const bagMix = v.strictObject({
  id,
  name: text(TEXT_MOST.name),
  weight: positive(1_000),
  yield: volume,
  water: v.exactOptional(v.strictObject({ least: volume, most: volume })),
  set: v.strictObject({
    initial: minutes,
    final: minutes,
    from: v.picklist(['bag', 'common-practice']),
  }),
});

export const mixSchema = v.strictObject({
  mixes: v.pipe(v.array(bagMix), v.minLength(1), v.maxLength(100)),
  blend: v.strictObject({
    main: id,
    mainParts: parts(0.25),
    other: v.exactOptional(id),
    otherParts: parts(0),
  }),
  batchVolume: volume,
  halfBags: v.boolean(),
});

const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

export const wasteSchema = v.strictObject({
  by: v.picklist(['share', 'parts']),
  share,
  depthSpread: whole(0, METRE),
  spreadTimes: v.pipe(v.number(), v.minValue(0), v.maxValue(5)),
  spillage: share,
  extras: v.pipe(
    v.array(v.strictObject({ id, name: text(TEXT_MOST.name), volume })),
    v.maxLength(50),
  ),
  minimumBags: whole(0, 1_000),
});
