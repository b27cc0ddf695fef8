import * as v from 'valibot';
import { EXTENT_LIMIT, INCH, METRE } from '../units/grid.ts';
import { TASKS, TROUBLES } from './pourLog.ts';
import { id, positive, text, whole } from './schemaParts.ts';
import { TEXT_MOST } from './textLimits.ts';

/** Until the year 5138. */
const instant = whole(0, 1e14);
const someBags = v.pipe(v.number(), v.minValue(0), v.maxValue(100_000));
const bagsOf = v.strictObject({ mix: id, bags: someBags });
const bags = v.pipe(v.array(bagsOf), v.maxLength(100));
const degrees = whole(0, 359);

export const pourLogSchema = v.strictObject({
  checked: v.pipe(v.array(id), v.maxLength(200)),
  toward: v.exactOptional(degrees),
  onHand: v.exactOptional(bags),
  entries: v.pipe(
    v.array(
      v.variant('is', [
        v.strictObject({ is: v.literal('batch'), at: instant, bags }),
        v.strictObject({
          is: v.literal('front'),
          at: instant,
          toward: degrees,
          along: whole(-20 * EXTENT_LIMIT, 20 * EXTENT_LIMIT),
        }),
        v.strictObject({ is: v.literal('more'), at: instant, bags }),
      ]),
    ),
    v.maxLength(20_000),
  ),
});

export const closeOutSchema = v.strictObject({
  at: instant,
  net: positive(Number.MAX_VALUE),
  area: positive(Number.MAX_VALUE),
  bags: v.pipe(
    v.array(
      v.strictObject({
        mix: id,
        name: text(TEXT_MOST.name),
        yield: positive(METRE ** 3),
        used: someBags,
        left: someBags,
        returned: someBags,
      }),
    ),
    v.maxLength(100),
  ),
  hours: v.pipe(
    v.array(
      v.strictObject({
        task: v.picklist(TASKS),
        hours: v.pipe(v.number(), v.minValue(0), v.maxValue(10_000)),
      }),
    ),
    v.maxLength(TASKS.length),
  ),
  wrong: v.pipe(v.array(v.picklist(TROUBLES)), v.maxLength(TROUBLES.length)),
  says: text(TEXT_MOST.notes),
  depth: v.exactOptional(whole(1, METRE)),
});

const minutes = v.pipe(v.number(), v.minValue(0), v.maxValue(24 * 60));
const depthError = whole(0, 12 * INCH);

export const pourDaySchema = v.strictObject({
  tripMinutes: minutes,
  marginMinutes: minutes,
  patchDepth: depthError,
  frontError: whole(0, 3 * METRE),
  checks: v.pipe(v.array(v.strictObject({ id, text: text(TEXT_MOST.name) })), v.maxLength(100)),
});
