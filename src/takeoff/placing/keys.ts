/** Names of what is said of placing: see takeoff/keys.ts. */
export const PLACING_FIGURE_KEYS = [
  'placing-batch',
  'placing-rate',
  'placing-time',
  'first-set',
  'open-edge',
  'edge-window',
  'finish-time',
  'forms-off',
  'screed-span',
  'screed-strips',
] as const;
export type PlacingFigureKey = (typeof PLACING_FIGURE_KEYS)[number];

export type PlacingInputKey =
  | 'crew'
  | 'mixers'
  | 'mixer-cycle'
  | 'barrow-load'
  | 'barrow-trips'
  | 'haul-distance'
  | 'batch-covers'
  | 'work-hauling'
  | 'work-placing'
  | 'work-striking'
  | 'work-all'
  | 'blend-initial'
  | 'window-usual'
  | 'screed-board'
  | 'screed-bearing'
  | 'solo-most'
  | 'strip-width'
  | 'strip-length-pulled'
  | 'strip-hours';

export type PlacingTableKey = 'placing-strips' | 'placing-offers';

export type PlacingColumnKey =
  | 'strip-wide'
  | 'strip-rides'
  | 'strip-batches'
  | 'strip-placed'
  | 'strip-float'
  | 'strip-done'
  | 'offer'
  | 'offer-placed'
  | 'offer-edge'
  | 'offer-works';

export type PlacingCountUnit = 'strip' | 'hand' | 'mixer' | 'trip';

export type PlacingTermKey =
  | 'ride-form'
  | 'ride-old-slab'
  | 'ride-steps'
  | 'ride-rail'
  | 'ride-wet-screed'
  | 'offer-hands'
  | 'offer-mixer'
  | 'offer-narrow'
  | 'offer-mix'
  | 'offer-water'
  | 'offer-bulkhead'
  | 'offer-truck'
  | 'offer-enough'
  | 'offer-helps';

export const PLACING_NOTE_CODES = [
  // stop
  'screed-board-short',
  'placing-rates-wrong',
  // caution
  'placing-no-batches',
  'placing-too-many',
  'placing-cold-joint',
  'placing-sets-first',
  'placing-finish-late',
  'placing-nothing-works',
  'placing-alone',
  'placing-no-way-out',
  'placing-out-of-reach',
  'placing-edge-wall-first',
  'screed-rails',
  'screed-wet',
  // assumption
  'placing-rates',
  'placing-even',
  'placing-blend-fastest',
  'placing-from',
  'placing-forms-off',
  'broom-across-fall',
] as const;
export type PlacingNoteCode = (typeof PLACING_NOTE_CODES)[number];
