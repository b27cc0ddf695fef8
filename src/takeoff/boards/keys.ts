/** Names of what the boards' part of the forms' ticket can hold: see takeoff/keys.ts. */
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
