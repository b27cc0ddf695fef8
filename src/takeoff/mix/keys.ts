/** Names of what the mix's ticket can hold: see takeoff/keys.ts. */
export const MIX_FIGURE_KEYS = [
  'ground-depth',
  'ground-spread',
  'allowance-share',
  'allowance-spread',
  'allowance-spillage',
  'allowance-extra',
  'allowance-floor',
  'batch-rounding',
  'open-rounding',
  'bags-expected',
  'worst-volume',
  'batch-full',
  'batch-weight',
  'water-least',
  'water-most',
] as const;
export type MixFigureKey = (typeof MIX_FIGURE_KEYS)[number];

export type MixInputKey =
  | 'readings'
  | 'reading-deviation'
  | 'depth-spread'
  | 'spread-times'
  | 'worst-times'
  | 'spillage'
  | 'blend-made'
  | 'mixed-made'
  | 'mixed-bags'
  | 'batch-makes'
  | 'bag-water-least'
  | 'bag-water-most'
  | 'fresh-concrete';

export type MixTableKey = 'ground-readings' | 'batch-list' | 'checkpoints';

export type MixColumnKey =
  | 'reading'
  | 'depth'
  | 'off-mean'
  | 'reading-weight'
  | 'batch'
  | 'bags-main'
  | 'bags-other'
  | 'batch-water-least'
  | 'batch-water-most'
  | 'batch-concrete'
  | 'bags-so-far'
  | 'concrete-so-far'
  | 'placed'
  | 'placed-area'
  | 'placed-bags'
  | 'placed-bags-so-far'
  | 'placed-batches-so-far';

export type MixCountUnit = 'reading';

/** Notes of the bags, the mixer, the allowance and the depth. */
export const MIX_NOTE_CODES = [
  // stop
  'readings-too-few',
  'batch-too-small',
  'batch-below-half-bag',
  'batch-below-set',
  'batch-below-half-set',
  // caution
  'readings-few',
  'readings-need-middle',
  'readings-deeper',
  'readings-shallower',
  'water-unknown',
  'batches-not-listed',
  // assumption
  'depth-from-readings',
  'allowance-by-parts',
  'blend-half-bags',
  'last-batch-filled',
  'half-bag-left',
  'water-by-bag',
] as const;
export type MixNoteCode = (typeof MIX_NOTE_CODES)[number];
