import type {
  MixColumnKey,
  MixCountUnit,
  MixFigureKey,
  MixInputKey,
  MixNoteCode,
  MixTableKey,
} from '../../takeoff/mix/keys.ts';

export const mixFigureNames: Readonly<Record<MixFigureKey, string>> = {
  'ground-depth': 'Mean of the ground readings',
  'ground-spread': 'The mean may be off by',
  'allowance-share': 'Allowed: share of the net',
  'allowance-spread': 'Allowed: spread of the depth',
  'allowance-spillage': 'Allowed: spilled and left in the mixer',
  'allowance-extra': 'Allowed: added by hand',
  'allowance-floor': 'Allowed: up to the least count of bags',
  'batch-rounding': 'Filling up the last batch',
  'open-rounding': 'Left in opened bags',
  'bags-expected': 'Bags the net alone takes',
  'worst-volume': 'At worst',
  'batch-full': 'In a full batch',
  'batch-weight': 'A full batch, wet',
  'water-least': 'Water, at least',
  'water-most': 'Water, at most',
};

export const mixFormulas: Readonly<Record<MixFigureKey, string>> = {
  'ground-depth':
    'Each reading times its weight, added up. With places, a reading weighs as much as the ground nearest to it; otherwise all weigh alike.',
  'ground-spread':
    'Standard deviation of the readings (at least 1/8 in, as near as earth can be taped), times the root of the squares of their weights: the standard error of the mean.',
  'allowance-share': 'A share of the net.',
  'allowance-spread': 'Net area times what the mean depth may be off by, as often as set.',
  'allowance-spillage': 'A share of the net, and of nothing else.',
  'allowance-extra': 'What was added by hand, each by its name.',
  'allowance-floor': 'What the other parts lack of the least count of bags.',
  'batch-rounding':
    'What the batches make, less what the bags in the blend’s parts make. Only a last batch that would lack one mix is filled up.',
  'open-rounding': 'What the opened bags make, less what goes into the mixer.',
  'bags-expected': 'The fewest bags in the blend’s parts that make the net, nothing added.',
  'worst-volume':
    'The net with twice the spread of its depth, and the other named parts of the allowance.',
  'batch-full': 'As many whole sets of the blend’s parts as the mixer holds.',
  'batch-weight': 'Concrete of a full batch times the weight of wet concrete.',
  'water-least': 'Bags of each mix times the least water that one takes.',
  'water-most': 'Bags of each mix times the most water that one takes.',
};

export const mixInputs: Readonly<Record<MixInputKey, string>> = {
  readings: 'Ground readings',
  'reading-deviation': 'Standard deviation of a reading',
  'depth-spread': 'Mean depth may be off by',
  'spread-times': 'Allowed for, times',
  'worst-times': 'At worst, times',
  spillage: 'Spilled',
  'blend-made': 'Bags in the blend’s parts make',
  'mixed-made': 'All batches make',
  'mixed-bags': 'Bags that go into the mixer',
  'batch-makes': 'A full batch makes',
  'bag-water-least': 'Water for one bag, at least',
  'bag-water-most': 'Water for one bag, at most',
  'fresh-concrete': 'Wet concrete',
};

export const mixTables: Readonly<Record<MixTableKey, string>> = {
  'ground-readings': 'Ground readings',
  'batch-list': 'Batches',
  checkpoints: 'Checkpoints',
};

export const mixColumns: Readonly<Record<MixColumnKey, string>> = {
  reading: 'Reading',
  depth: 'Depth',
  'off-mean': 'Off the mean',
  'reading-weight': 'Weight',
  batch: 'Batch',
  'bags-main': 'Bags, main mix',
  'bags-other': 'Bags, other mix',
  'batch-water-least': 'Water from',
  'batch-water-most': 'to',
  'batch-concrete': 'Makes',
  'bags-so-far': 'Bags so far',
  'concrete-so-far': 'Made so far',
  placed: 'Full',
  'placed-area': 'Area',
  'placed-bags': 'Takes bags',
  'placed-bags-so-far': 'Bags by then',
  'placed-batches-so-far': 'Batches by then',
};

export const mixCounts: Readonly<
  Record<MixCountUnit, { readonly one: string; readonly many: string }>
> = {
  reading: { one: 'reading', many: 'readings' },
};

export const mixNotes: Readonly<Record<MixNoteCode, string>> = {
  'readings-too-few':
    'The volume is to be figured with the ground readings, and there are fewer than {least}. Tape more depths, or figure it with the thickness.',
  'batch-too-small':
    'The mixer holds {size}, and one bag makes {makes}: no batch of whole bags fits. Set what it holds as mixed concrete, take smaller bags, or allow half bags.',
  'batch-below-half-bag':
    'The mixer holds {size}, and half a bag makes {makes}: not even that fits. Set what it holds as mixed concrete, or take smaller bags.',
  'batch-below-set':
    'The mixer holds {size}, and these parts in whole bags, {mainBags} “{main}” and {otherBags} “{other}”, make {makes}. Allow half bags, choose parts that fit, or take a larger mixer.',
  'batch-below-half-set':
    'The mixer holds {size}, and these parts in half bags, {mainBags} “{main}” and {otherBags} “{other}”, make {makes}. Choose parts that fit, or take a larger mixer.',
  'readings-few':
    'Only {readings} of the ground. Their spread is a guess: tape {good} or more, evenly over the slab.',
  'readings-need-middle':
    'Four readings at the corners don’t say how deep the middle is: the mean is {low} or {high} by how the ground runs between them, {difference} apart. Tape one in the middle.',
  'readings-deeper':
    'By the ground readings the slab is {mean} deep (give or take {error}), not {thickness}: it takes {difference} more. Figure with the readings, or bring the ground up.',
  'readings-shallower':
    'By the ground readings the slab is only {mean} deep (give or take {error}), not {thickness}. Dig it out, or figure with the readings: {difference} less.',
  'water-unknown':
    'What water a bag takes isn’t typed. As commonly seen (3 to 5 qt for 80 lb), these bags take {least} to {most} in all: is there a hose? Mix only by what the bag says.',
  'batches-not-listed': 'More than {most}: they aren’t listed one by one.',
  'depth-from-readings':
    'The volume is figured with {depth}, the mean of {readings}, give or take {error}. Forms, steel and joints go by the thickness as set.',
  'allowance-by-parts':
    'The allowance is the spread of the depth ({times} ×: {spread}), {spillage} of the net spilled, and what was added by hand; at least {bags}. Each part is taken of the net alone: nothing is deducted and then added again.',
  'blend-half-bags':
    'Blended by bags: {mainParts} “{main}” to {otherParts} “{other}”, as near as half bags allow. Weigh the half bags. Makers don’t vouch for blends: try one first.',
  'last-batch-filled':
    'The last batch would have had none of one mix. It is filled up by {more}, so that its concrete is like the rest.',
  'half-bag-left': 'Half a bag of “{mix}” stays open. It doesn’t keep, and no yard takes it back.',
  'water-by-bag':
    'By the bags, all batches take {least} to {most} of water, and tools and curing take more. Is there a hose? Start with the least, and stop at the most.',
};
