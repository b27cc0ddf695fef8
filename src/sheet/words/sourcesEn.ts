/**
 * Where rules and constants come from, as it stands under a working. The ids are those of the published references that
 * the tests hold the figures against; the last three are no publications.
 */
export const sources = {
  'bag-yields': 'Published yield tables of bagged concrete',
  'en5151-support-count': 'US Army correspondence course EN5151, formwork: number of supports',
  'en0069-squaring': 'US Army correspondence course EN0069, squaring building lines',
  'estimating-book-mesh-lap':
    'Estimating textbook, mesh rolls and laps (its 10% corrected to 11.1%)',
  'farmers-bulletin-1279': 'USDA Farmers’ Bulletin 1279, Plain Concrete for Farm Use (1922)',
  'form-board-statics':
    'Statics of a board over three spans, coefficients as in the formwork texts',
  'joint-spacing-association':
    'State ready-mix association: panels by thickness; joints a quarter of it deep',
  'joint-spacing-concrete-code':
    'Concrete institute’s guide, as quoted: 24 to 36 thicknesses, 18 ft at most',
  'joint-spacing-table': 'Masonry and concrete textbook: spacing of joints by slump and stone',
  'nails-per-pound': 'Published table of nails to the pound',
  'bag-water': 'Water of bagged concrete: public pages that contradict each other',
  'navedtra-14070-estimate': 'NAVEDTRA 14070, Engineering Aid: concrete estimate with 10% waste',
  'ps-20-lumber-sizes': 'American Softwood Lumber Standard PS 20, minimum dressed sizes, dry',
  'ready-mix-joints': 'Ready-mix association advice: isolate slabs from walls, steps and posts',
  'stake-spacing-article': 'Trade article: stakes no more than 3 ft apart for 2x4 and 2x6 forms',
  'surveying-text-coordinate-area': 'Open surveying textbook: area by coordinates',
  'critical-ratio':
    'Econometrica 19 (1951), Optimal Inventory Policy: one order for an unsure need',
  'pallet-bags': 'Published tables of bags on a pallet',
  'shrink-factor-highway':
    'US federal lands highway design manual, 9.4.C: shrink and swell factors',
  'wheelbarrow-1908': 'Concrete Construction: Methods and Costs (1908): wheeling',
  'dowel-tables': 'Published tables of dowels by slab thickness; they disagree',
  'rebar-sizes': 'Published tables of bar sizes (ASTM A615)',
  'subgrade-drag-note': 'Industry note: subgrade drag formula, steel in slabs on ground',
  'welded-wire-table-1975': 'Trade article on wire styles (1975), Table I: weights',
  'evaporation-paper-1998':
    'Paper in a concrete institute’s journal (1998): evaporation from concrete, as quoted publicly',
  'evaporation-nomograph':
    'The equation behind the evaporation nomograph, and its table, from memory',
  'evaporation-uncertainty-2020':
    'Later paper (2020): the whole method is good to about 40% either way',
  'evaporation-limits': 'Public building specifications for cold and hot weather',
  'barrow-book-1908': 'Concrete Construction: Methods and Costs (1908): barrow loads and trips',
  'common-practice': 'Common practice, no published source',
  geometry: 'Geometry',
  user: 'Your own setting',
};
