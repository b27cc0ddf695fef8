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
  'mesh-money',
  'mesh-truck',
  'mesh-truck-rolls',
  'mesh-weight',
  'steel-ties',
  'bar-lines',
  'bar-length',
  'bars-to-buy',
  'bars-money',
  'bars-proof',
  'bar-cuts',
  'bars-least',
  'bar-weight',
  'bar-ties',
  'dowels',
  'dowel-hole',
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
  | 'bar-size'
  | 'bar-spacing'
  | 'bar-cover'
  | 'bar-lap'
  | 'bar-laps'
  | 'bar-stock-length'
  | 'bar-crossings'
  | 'price-of-one'
  | 'dowel-diameter'
  | 'dowel-length'
  | 'dowel-spacing'
  | 'dowel-from-corner'
  | 'dowel-set'
  | 'drag-friction'
  | 'drag-length'
  | 'drag-weight'
  | 'drag-stress';

export type SteelTableKey =
  | 'bar-buy'
  | 'bar-cuts'
  | 'bar-lengths'
  | 'dowel-holes'
  | 'mesh-buy'
  | 'mesh-cuts'
  | 'mesh-rests'
  | 'mesh-used';

export type SteelColumnKey =
  | 'bar-count'
  | 'bar-pieces'
  | 'bar-size'
  | 'bar-way'
  | 'from'
  | 'from-start'
  | 'hole'
  | 'left'
  | 'mesh-form'
  | 'piece'
  | 'seam'
  | 'used-mesh';

export type SteelCountUnit = 'bar' | 'dowel' | 'roll' | 'tie' | 'chair';

/** Words in figures and table cells. */
export type SteelTermKey =
  | 'form-roll'
  | 'form-sheet'
  | 'way-across'
  | 'way-along'
  | 'way-corner'
  | 'set-epoxy'
  | 'set-sleeve'
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
  'bars-size',
  'bars-stock-short',
  'bars-no-room',
  'bars-too-many',
  'dowels-size',
  'chairs-too-many',
  // caution
  'mesh-springs-back',
  'mesh-stock-narrow',
  'mesh-lap-short',
  'drag-short',
  'bar-caps',
  'dowels-drill',
  'dowels-meet',
  // assumption
  'steel-none',
  'steel-what-for',
  'mesh-laid-in-rows',
  'mesh-lap-used',
  'mesh-price-missing',
  'steel-on-chairs',
  'steel-lifted',
  'bars-laid',
  'dowels-off',
  'dowels-epoxy',
  'dowels-sleeve',
] as const;
export type SteelNoteCode = (typeof STEEL_NOTE_CODES)[number];
