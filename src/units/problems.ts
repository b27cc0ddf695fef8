/**
 * Codes of what can be wrong with a typed value. `where` is the text as it was typed.
 * The language files (`sheet/words`) have one sentence for each.
 */
export const UNIT_PROBLEMS = [
  /** Nothing was typed. */
  'length-empty',
  /** Not a length in any way of writing that is known. */
  'length-unreadable',
  /** A comma that could part thousands or decimals. */
  'length-comma',
  /** A fraction that is on no tape: not halves to sixty-fourths, or not less than one. */
  'length-fraction',
  /** Twelve inches or more beside feet. */
  'length-inches',
  /** Two readings are as likely. facts: `one`, `other`, both written so that they can be typed. */
  'length-ambiguous',
  /** A bare fraction or pair of numbers where the unit style doesn't say what they are. */
  'length-unit-needed',
  /** More than 2 km. */
  'length-absurd',
  'number-empty',
  'number-unreadable',
  'number-comma',
  'volume-empty',
  'volume-unreadable',
  'volume-comma',
  'weight-empty',
  'weight-unreadable',
  'weight-comma',
  'share-empty',
  'share-unreadable',
  'share-comma',
  'money-empty',
  'money-unreadable',
  'money-comma',
  /** More than two places after the point. */
  'money-places',
  /** Less than nothing, or more than a hundred million. */
  'money-range',
  'angle-empty',
  'angle-unreadable',
  /** More than a full turn. */
  'angle-range',
] as const;

export type UnitProblemCode = (typeof UNIT_PROBLEMS)[number];
