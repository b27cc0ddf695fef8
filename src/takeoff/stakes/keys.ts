/** Names of what the stakes trade gives: figures, inputs, tables, columns, words and notes. See takeoff/keys.ts. */
export const STAKE_FIGURE_KEYS = [
  'stake-spacing-used',
  'stakes',
  'stakes-inside',
  'kickers',
  'spreaders',
  'weights',
  'cleats',
  'nails',
  'nail-weight',
  'fastening-boxes',
] as const;
export type StakeFigureKey = (typeof STAKE_FIGURE_KEYS)[number];

export const STAKE_INPUT_KEYS = [
  'stake-spacing',
  'stake-from-end',
  'spacing-by-deflection',
  'spacing-by-share',
  'spacing-by-bending',
  'spacing-governed-by',
  'board-thickness',
  'fresh-weight',
  'form-pressure',
  'form-thrust',
  'deflection-most',
  'deflection-share',
  'elasticity',
  'bending-stress',
  'kickers-above',
  'kickers-high',
  'kickers-beyond',
  'nails-per-stake',
  'nails-per-corner',
  'nails-per-cleat',
  'nails-per-pound',
  'nail-box',
  'screws-per-box',
] as const;
export type StakeInputKey = (typeof STAKE_INPUT_KEYS)[number];

export type StakeTableKey = 'stake-list';

export type StakeColumnKey =
  | 'most-apart'
  | 'stake-from'
  | 'stake-along'
  | 'stake-side'
  | 'stake-kind';

export type StakeTermKey =
  | 'by-practice'
  | 'by-deflection'
  | 'by-deflection-share'
  | 'by-bending'
  | 'run-start'
  | 'outside-form'
  | 'inside-form'
  | 'stake'
  | 'stake-by-hand'
  | 'stake-and-kicker'
  | 'inside-stake'
  | 'kicker-alone'
  | 'spreader'
  | 'weight';

export const STAKE_NOTE_CODES = [
  // stop
  'stake-spacing-zero',
  'curve-spacing-zero',
  'board-bears-nothing',
  'utility-tolerance-below-zero',
  'nails-per-pound-zero',
  'screws-per-box-zero',
  'stakes-too-many',
  // caution
  'call-before-digging',
  'dig-by-hand',
  'driving-stakes',
  'hold-spreaders',
  'hold-kickers',
  'hold-inside',
  'hold-weights',
  'kickers-high',
  'broken-spacing',
  'broken-from-end',
  'broken-splice',
  'broken-blocked',
  'hand-stakes-off',
  // assumption
  'stakes-at-ends',
  'stakes-on-curves',
  'stakes-by-practice',
  'stakes-by-bending',
] as const;
export type StakeNoteCode = (typeof STAKE_NOTE_CODES)[number];
