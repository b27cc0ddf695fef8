/** Names of what the boards' part of the forms' ticket can hold: see takeoff/keys.ts. */
export const BOARD_FIGURE_KEYS = [
  'boards-bought',
  'boards-money',
  'boards-length-bought',
  'boards-from-truck',
  'board-cuts',
  'board-splices',
  'board-cleats',
  'boards-waste',
  'boards-proof',
] as const;
export type BoardFigureKey = (typeof BOARD_FIGURE_KEYS)[number];

export type BoardInputKey =
  | 'boards-used'
  | 'boards-needed'
  | 'saw-kerf'
  | 'shortest-piece'
  | 'cleat-length'
  | 'proof-weighs'
  | 'proof-have'
  | 'proof-bound'
  | 'proof-seconds';

export type BoardTableKey = 'board-cut-list' | 'board-runs' | 'board-buy' | 'board-rests';

export type BoardColumnKey =
  | 'board'
  | 'board-from'
  | 'board-length'
  | 'board-count'
  | 'board-piece'
  | 'board-pieces'
  | 'board-run'
  | 'board-left'
  | 'board-start'
  | 'board-end'
  | 'board-need'
  | 'board-price'
  | 'board-sum';

export type BoardCountUnit = 'board' | 'board-end' | 'board-length' | 'cleat' | 'cut' | 'splice';

export type BoardTermKey =
  | 'board-truck'
  | 'board-yard'
  | 'end-passes'
  | 'end-butts'
  | 'end-flat'
  | 'end-laps'
  | 'end-stops'
  | 'proof-first'
  | 'proof-proved'
  | 'proof-gap'
  | 'weigh-price'
  | 'weigh-cuts'
  | 'weigh-splices'
  | 'weigh-waste';

export const BOARD_NOTE_CODES = [
  // stop
  'boards-none',
  'boards-row-wrong',
  'boards-run-too-long',
  'boards-run-no-splice',
  'boards-not-enough',
  // caution
  'boards-corner-tight',
  'boards-stop',
  'boards-twisted-used',
  'boards-run-short',
  // assumption
  'boards-pass',
  'boards-lapped',
  'boards-spliced',
  'boards-twisted-left',
  'boards-rip',
  'boards-price-missing',
  'boards-curved',
] as const;
export type BoardNoteCode = (typeof BOARD_NOTE_CODES)[number];
