import type { Practices } from '../../job/job.ts';
import { pourDayOf } from '../../job/pourDay.ts';
import type { PourDayPractices } from '../../job/pourLog.ts';
import { FOOT, INCH } from '../../units/grid.ts';
import type { Field, FieldKey, NoteKey } from './field.ts';

type Typed = Exclude<keyof PourDayPractices, 'checks'>;

function kept(part: Typed) {
  return {
    get: (practices: Practices) => pourDayOf(practices)[part],
    put: (practices: Practices, value: number) => ({
      ...practices,
      pourDay: { ...pourDayOf(practices), [part]: value },
    }),
  };
}

function minutes(key: FieldKey & NoteKey & Typed): Field {
  const unit = ['minutes', 1] as const;
  return {
    kind: 'measured',
    key,
    note: key,
    unit: { metric: unit, other: unit },
    least: 0,
    most: 24 * 60,
    ...kept(key),
  };
}

function off(key: FieldKey & NoteKey, part: Typed, most: number): Field {
  return { kind: 'length', key, note: key, least: 0, most, ...kept(part) };
}

/** How far away more bags are, and what the forecast is reckoned with. */
export const POUR_DAY_FIELDS: readonly Field[] = [
  minutes('tripMinutes'),
  minutes('marginMinutes'),
  off('patchDepthError', 'patchDepth', 6 * INCH),
  off('frontError', 'frontError', 6 * FOOT),
];
