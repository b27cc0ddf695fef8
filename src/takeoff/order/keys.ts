/** Names of what the order's ticket can hold: see takeoff/keys.ts. Which of them there are hangs on what was asked for. */
export const ORDER_FIGURE_KEYS = [
  'order-lines',
  'order-unpriced',
  'order-money',
  'base-compacted',
  'base-loose',
  'retarder-area',
  'cure-volume',
  'spare-ratio',
  'spare-average',
  'bags-to-take',
  'spare-bags',
  'pallets',
  'pallet-deposit',
  'ready-mix',
  'bags-cost',
  'truck-cost',
  'break-even',
  'haul-weight',
  'trips',
  'trips-least',
  'labour-hours',
  'bid-materials',
  'bid-labour',
  'bid-overhead',
  'bid-profit',
  'bid-tax',
  'bid-rounding',
  'bid-price',
] as const;
export type OrderFigureKey = (typeof ORDER_FIGURE_KEYS)[number];

export type OrderInputKey =
  | 'base-depth'
  | 'base-shrink'
  | 'base-means'
  | 'retarder-width'
  | 'retarder-length'
  | 'retarder-lap'
  | 'cure-coverage'
  | 'cure-can'
  | 'short-cost'
  | 'over-cost'
  | 'bags-over'
  | 'bags-spread'
  | 'spread-jobs'
  | 'spare-quantile'
  | 'bags-per-pallet'
  | 'deposit-one'
  | 'bag-price'
  | 'bag-hours'
  | 'labour-rate'
  | 'mixer-hire'
  | 'ready-price'
  | 'ready-least'
  | 'ready-step'
  | 'short-below'
  | 'short-fee'
  | 'missing-fee'
  | 'on-site'
  | 'free-time'
  | 'waiting-rate'
  | 'wheelers'
  | 'truck-payload'
  | 'trailer-payload'
  | 'riding-weight'
  | 'overhead-share'
  | 'profit-share'
  | 'profit-by'
  | 'tax-share'
  | 'tax-on'
  | 'price-step';

export type OrderTableKey = 'order-list' | 'haul-plan' | 'labour-by-task' | 'cost-parts';

export type OrderColumnKey =
  | 'order-what'
  | 'order-count'
  | 'order-price'
  | 'order-sum'
  | 'trip'
  | 'trip-on'
  | 'task'
  | 'task-size'
  | 'task-hours'
  | 'task-from'
  | 'cost-part'
  | 'cost-bags'
  | 'cost-truck';

export type OrderCountUnit =
  | 'can'
  | 'cubic-metre'
  | 'cubic-yard'
  | 'foot'
  | 'hour'
  | 'job'
  | 'line'
  | 'load'
  | 'metre'
  | 'minute'
  | 'pallet'
  | 'person'
  | 'trip'
  | 'unit';

export type OrderTermKey =
  | 'order-bag'
  | 'order-ready-mix'
  | 'order-board'
  | 'order-bent-form'
  | 'order-stake'
  | 'order-kicker'
  | 'order-spreader'
  | 'order-weight'
  | 'order-cleat'
  | 'order-nails'
  | 'order-screws'
  | 'order-mesh-sheet'
  | 'order-mesh-roll'
  | 'order-bar'
  | 'order-tie'
  | 'order-chair'
  | 'order-dowel'
  | 'order-sleeve'
  | 'order-strip'
  | 'order-sealant'
  | 'order-backer'
  | 'order-base'
  | 'order-retarder'
  | 'order-cure'
  | 'order-extra'
  | 'order-mixer-hire'
  | 'order-short-load'
  | 'order-missing'
  | 'order-waiting'
  // Asked for, but no lines of the list.
  | 'price-pallet'
  | 'price-labour'
  | 'price-one-short'
  | 'price-one-over'
  | 'rate-least'
  | 'rate-short'
  | 'rate-free'
  | 'rate-walk'
  | 'rate-hours'
  // Parts of what concrete costs.
  | 'part-concrete'
  | 'part-work'
  | 'part-wheeling'
  | 'part-all'
  | 'on-truck'
  | 'on-trailer'
  | 'means-swell'
  | 'means-shrink'
  | 'profit-margin'
  | 'profit-markup'
  | 'tax-materials'
  | 'tax-all'
  | 'tax-none'
  | 'hours-typed'
  | 'hours-rate'
  | 'hours-missing'
  | 'task-base'
  | 'task-forms'
  | 'task-steel'
  | 'task-place'
  | 'task-finish'
  | 'task-strip'
  | 'task-haul'
  | 'task-other';

export const ORDER_NOTE_CODES = [
  // stop
  'retarder-lap-wide',
  'haul-nothing-left',
  'haul-piece-heavy',
  'haul-trips-many',
  'order-too-dear',
  // caution
  'order-incomplete',
  'haul-below-pallet',
  'haul-axles',
  'spare-no-end',
  // assumption
  'order-unpriced',
  'order-unweighed',
  'order-delivered',
  'order-on-truck',
  'base-means-swell',
  'base-means-shrink',
  'retarder-by-area',
  'cure-by-can',
  'spare-asked',
  'spare-guessed',
  'spare-from-jobs',
  'spare-covered',
  'bags-returned',
  'bags-not-returned',
  'pallets-asked',
  'ready-mix-quarter',
  'compare-asked',
  'compare-smooth',
  'haul-asked',
  'bid-asked',
  'bid-needs-prices',
  'bid-before-deposit',
] as const;
export type OrderNoteCode = (typeof ORDER_NOTE_CODES)[number];
