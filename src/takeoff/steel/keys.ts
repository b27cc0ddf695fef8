/** Names of what the steel's ticket can hold: see takeoff/keys.ts. */
export const STEEL_FIGURE_KEYS = [
  'mesh-area',
  'mesh-least',
  'mesh-proof',
  'mesh-rows',
  'mesh-pieces',
  'mesh-sheets',
  'mesh-rolls',
  'mesh-unrolled',
  'mesh-truck',
  'mesh-weight',
  'steel-ties',
  'steel-chairs',
  'steel-area',
  'drag-area',
] as const;
export type SteelFigureKey = (typeof STEEL_FIGURE_KEYS)[number];

export type SteelInputKey =
  | 'mesh-style'
  | 'mesh-cover'
  | 'mesh-size-length'
  | 'mesh-size-width'
  | 'mesh-lap-sides'
  | 'mesh-lap-ends'
  | 'mesh-lapped-area'
  | 'mesh-weight-by-area'
  | 'mesh-least-piece'
  | 'mesh-square'
  | 'tie-spacing'
  | 'chair-spacing'
  | 'lap-length'
  | 'drag-friction'
  | 'drag-length'
  | 'drag-weight'
  | 'drag-stress';

export type SteelTableKey = 'mesh-cuts' | 'mesh-used';

export type SteelColumnKey = 'piece' | 'from' | 'left';

export type SteelCountUnit = 'roll' | 'tie' | 'chair';

/** Words in figures and table cells. */
export type SteelTermKey =
  | 'layout-first'
  | 'layout-least'
  | 'layout-searched'
  | 'from-truck-sheet'
  | 'from-truck-roll'
  | 'from-yard-sheet'
  | 'from-yard-roll';

export const STEEL_NOTE_CODES = [
  // stop
  'mesh-size',
  'mesh-lap-too-wide',
  'mesh-no-room',
  'mesh-too-many',
  'mesh-none-listed',
  'mesh-not-enough',
  'chairs-too-many',
  // caution
  'mesh-springs-back',
  'mesh-stock-narrow',
  'mesh-lap-short',
  'drag-short',
  // assumption
  'steel-none',
  'steel-what-for',
  'mesh-laid-in-rows',
  'mesh-lap-used',
  'mesh-price-missing',
  'steel-on-chairs',
  'steel-lifted',
] as const;
export type SteelNoteCode = (typeof STEEL_NOTE_CODES)[number];
