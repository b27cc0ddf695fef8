/** Names of what the joints' ticket can hold: see takeoff/keys.ts. */
export const JOINT_FIGURE_KEYS = [
  'panel-most',
  'joint-panels',
  'joint-length',
  'joint-stop-length',
  'joint-proof',
  'joint-depth',
  'strip-length',
  'strip-depth',
  'strip-pieces',
  'sealant',
  'sealant-cartridges',
  'backer-length',
] as const;
export type JointFigureKey = (typeof JOINT_FIGURE_KEYS)[number];

export type JointInputKey =
  | 'joint-factor'
  | 'joint-cap'
  | 'joint-ratio'
  | 'joint-share'
  | 'joint-least-depth'
  | 'joint-width'
  | 'seal-depth'
  | 'strip-thickness'
  | 'strip-recess'
  | 'strip-piece-length'
  | 'cartridge-holds';

export type JointTableKey = 'panels' | 'joints' | 'strips';

export type JointColumnKey =
  | 'panel-long'
  | 'panel-wide'
  | 'panel-ratio'
  | 'panel-area'
  | 'panel-says'
  | 'joint-from'
  | 'joint-to'
  | 'joint-by';

export type JointCountUnit = 'panel' | 'cartridge' | 'joint-place';

/** Words in figures and table cells: how sure a layout is, what a joint is, and why a panel doesn't pass. */
export type JointTermKey =
  | 'joints-first'
  | 'joints-proved'
  | 'joints-gap'
  | 'joints-by-hand'
  | 'joint-proposed'
  | 'joint-hand'
  | 'panel-passes'
  | 'broken-too-long'
  | 'broken-ratio'
  | 'broken-sliver'
  | 'broken-inside-corner'
  | 'broken-block-out'
  | 'broken-old-joint'
  | 'broken-sharp'
  | 'broken-ends-on-joint'
  | 'broken-ends-inside';

export const JOINT_NOTE_CODES = [
  // stop
  'strip-piece-zero',
  'strip-too-low',
  'joints-rules-wrong',
  'joints-too-many',
  'joint-too-deep',
  'sealant-wrong',
  // caution
  'joint-broken-too-long',
  'joint-broken-ratio',
  'joint-broken-sliver',
  'joint-broken-inside-corner',
  'joint-broken-block-out',
  'joint-broken-old-joint',
  'joint-broken-sharp',
  'joint-broken-ends-on-joint',
  'joint-broken-ends-inside',
  'joint-outside',
  'joint-existing-apart',
  'sealant-shallow',
  'strip-not-sealed',
  // assumption
  'joints-rules-used',
  'joints-none-needed',
  'joints-tooled-when',
  'joints-sawn-when',
  'joints-stop',
  'joints-may-crack',
  'strip-bonded',
  'strip-edges',
  'strip-none',
  'strip-butted',
] as const;
export type JointNoteCode = (typeof JOINT_NOTE_CODES)[number];
