import * as v from 'valibot';
import { METRE } from '../units/grid.ts';
import { id, positive, text, whole } from './schemaParts.ts';
import { TEXT_MOST } from './textLimits.ts';

/** A week: nothing that is poured takes longer to set. Our own limit. */
const MOST_MINUTES = 7 * 24 * 60;
const minutes = whole(1, MOST_MINUTES);
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
    mainParts: whole(1, 1_000),
    other: v.exactOptional(id),
    otherParts: whole(0, 1_000),
  }),
  batchVolume: volume,
});
