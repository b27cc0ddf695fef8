import type {
  BoardColumnKey,
  BoardCountUnit,
  BoardFigureKey,
  BoardInputKey,
  BoardTableKey,
  BoardTermKey,
} from './boards/keys.ts';
import {
  JOINT_FIGURE_KEYS,
  type JointColumnKey,
  type JointCountUnit,
  type JointInputKey,
  type JointTableKey,
  type JointTermKey,
} from './joints/keys.ts';
import type {
  LayoutColumnKey,
  LayoutFigureKey,
  LayoutInputKey,
  LayoutTableKey,
  LayoutTermKey,
} from './layout/keys.ts';
import {
  MIX_FIGURE_KEYS,
  type MixColumnKey,
  type MixCountUnit,
  type MixInputKey,
  type MixTableKey,
} from './mix/keys.ts';
import type {
  OrderColumnKey,
  OrderCountUnit,
  OrderFigureKey,
  OrderInputKey,
  OrderTableKey,
  OrderTermKey,
} from './order/keys.ts';
import {
  PLACING_FIGURE_KEYS,
  type PlacingColumnKey,
  type PlacingCountUnit,
  type PlacingInputKey,
  type PlacingTableKey,
  type PlacingTermKey,
} from './placing/keys.ts';
import type {
  StakeColumnKey,
  StakeFigureKey,
  StakeInputKey,
  StakeTableKey,
  StakeTermKey,
} from './stakes/keys.ts';
import {
  STEEL_FIGURE_KEYS,
  type SteelColumnKey,
  type SteelCountUnit,
  type SteelInputKey,
  type SteelTableKey,
  type SteelTermKey,
} from './steel/keys.ts';
import type { WeatherFigureKey, WeatherInputKey } from './weather/keys.ts';

/**
 * Names of everything that a ticket can hold. The language files (`sheet/words`) must have words for each: the compiler
 * says which is missing. Stable over versions: people's exports and the printed sheet go by them.
 */
export const FIGURE_KEYS = [
  'net-area',
  'gross-area',
  'cut-out-area',
  'perimeter',
  'edge-free',
  'edge-existing-slab',
  'edge-wall',
  'edge-wall-formed',
  'edge-steps',
  'edge-block-out',
  'edge-patch',
  'form-depth',
  'form-length',
  'thickness',
  'slab-volume',
  'thickened-volume',
  'net-volume',
  'form-depth-volume',
  'allowance',
  'needed',
  'bag-rounding',
  'made',
  'bags',
  'bag-weight',
  'batches',
  'last-batch',
  ...MIX_FIGURE_KEYS,
  ...JOINT_FIGURE_KEYS,
  ...STEEL_FIGURE_KEYS,
  ...PLACING_FIGURE_KEYS,
] as const;
export type FigureKey =
  | (typeof FIGURE_KEYS)[number]
  | LayoutFigureKey
  | BoardFigureKey
  | StakeFigureKey
  | WeatherFigureKey
  | OrderFigureKey;

/** Inputs of workings that are no figures themselves. */
export const INPUT_KEYS = [
  'board-depth',
  'gap-under-form',
  'thickened-depth',
  'thickened-width',
  'thickened-taper',
  'thickened-below',
  'thickened-flat-area',
  'thickened-whole-area',
  'thickened-mean-area',
  'form-corners',
  'waste-share',
  'waste-bags',
  'bag-yield',
  'batch-size',
  'close-enough',
] as const;
export type InputKey =
  | (typeof INPUT_KEYS)[number]
  | LayoutInputKey
  | BoardInputKey
  | StakeInputKey
  | PlacingInputKey
  | JointInputKey
  | MixInputKey
  | SteelInputKey
  | WeatherInputKey
  | OrderInputKey;

export const TABLE_KEYS = ['runs', 'bags-by-mix'] as const;
export type TableKey =
  | (typeof TABLE_KEYS)[number]
  | LayoutTableKey
  | BoardTableKey
  | StakeTableKey
  | PlacingTableKey
  | JointTableKey
  | MixTableKey
  | SteelTableKey
  | OrderTableKey;

export const COLUMN_KEYS = [
  'mark',
  'meets',
  'length',
  'width',
  'shape',
  'stakes',
  'held',
  'gap',
  'row',
  'mix',
  'parts',
  'bags',
  'weight',
] as const;
export type ColumnKey =
  | (typeof COLUMN_KEYS)[number]
  | LayoutColumnKey
  | BoardColumnKey
  | StakeColumnKey
  | PlacingColumnKey
  | JointColumnKey
  | MixColumnKey
  | SteelColumnKey
  | OrderColumnKey;

/** What is counted. */
export const COUNT_UNITS = [
  'bag',
  'batch',
  'box',
  'cleat',
  'corner',
  'kicker',
  'nail',
  'part',
  'piece',
  'row',
  'screw',
  'sheet',
  'sliver',
  'spreader',
  'stake',
  'weight',
] as const;
export type CountUnit =
  | (typeof COUNT_UNITS)[number]
  | BoardCountUnit
  | PlacingCountUnit
  | JointCountUnit
  | MixCountUnit
  | SteelCountUnit
  | OrderCountUnit;

/** Words that stand in a table's cell. Edge kinds are words too. */
export const TERM_KEYS = ['straight', 'curved'] as const;
export type TermKey =
  | (typeof TERM_KEYS)[number]
  | LayoutTermKey
  | BoardTermKey
  | StakeTermKey
  | PlacingTermKey
  | JointTermKey
  | SteelTermKey
  | OrderTermKey;
