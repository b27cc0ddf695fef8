/** Names of what squaring and setting out give: figures, inputs, tables, columns, words and notes. See takeoff/keys.ts. */
export const LAYOUT_FIGURE_KEYS = [
  'layout-band',
  'layout-tie-error',
  'layout-difference',
  'layout-misclosure',
  'layout-move',
  'layout-fit-misclosure',
  'layout-fit-move',
] as const;
export type LayoutFigureKey = (typeof LAYOUT_FIGURE_KEYS)[number];

export type LayoutInputKey = 'longest-diagonal' | 'tape-reading' | 'side-held';

export const LAYOUT_TABLE_KEYS = [
  'layout-ties',
  'layout-squares',
  'layout-offsets',
  'layout-tape-ties',
  'layout-moves',
] as const;
export type LayoutTableKey = (typeof LAYOUT_TABLE_KEYS)[number];

export type LayoutColumnKey =
  | 'corner'
  | 'tie'
  | 'tie-kind'
  | 'tie-use'
  | 'leg-one'
  | 'leg-two'
  | 'across-legs'
  | 'station'
  | 'offset'
  | 'station-exact'
  | 'offset-exact'
  | 'from-first'
  | 'from-second'
  | 'side-of-line'
  | 'crossing'
  | 'tie-error'
  | 'move-along'
  | 'move-toward'
  | 'move-square'
  | 'move-way'
  | 'move-in-all';

export type LayoutTermKey =
  | 'side'
  | 'chord'
  | 'between'
  | 'diagonal'
  | 'sets'
  | 'checks'
  | 'sets-blocked'
  | 'checks-blocked'
  | 'left'
  | 'right'
  | 'in-line'
  | 'at-the-mark'
  | 'no-fix'
  | 'away'
  | 'nearer'
  | 'stays';

export const LAYOUT_NOTE_CODES = [
  // stop
  'layout-no-pour',
  'layout-pad-gone',
  'layout-few-corners',
  'layout-many-corners',
  'layout-baseline-gone',
  'layout-baseline-short',
  'layout-mark-gone',
  'layout-marks-coincide',
  'layout-no-marks',
  'tape-no-triangle',
  'tape-cannot-close',
  'tape-misclosure',
  'tape-more-needed',
  'tape-fit-none',
  'tape-fit-misclosure',
  // caution
  'layout-ties-flat',
  'layout-tie-blocked',
  'tape-out-of-band',
  'tape-sides-off',
  'tape-sides-unmeasured',
  'tape-fit-off',
  'tape-fit-unchecked',
  // assumption
  'layout-not-proof',
  'layout-one-baseline',
  'layout-sides-left',
  'layout-pick-side',
  'tape-within-band',
  'tape-fit-within',
  'tape-sides-held',
] as const;
export type LayoutNoteCode = (typeof LAYOUT_NOTE_CODES)[number];
