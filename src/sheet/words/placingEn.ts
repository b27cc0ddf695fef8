import type {
  PlacingColumnKey,
  PlacingCountUnit,
  PlacingFigureKey,
  PlacingInputKey,
  PlacingNoteCode,
  PlacingTableKey,
  PlacingTermKey,
} from '../../takeoff/placing/keys.ts';

export const placingFigures: Readonly<Record<PlacingFigureKey, string>> = {
  'placing-batch': 'One batch to the next',
  'placing-rate': 'Placed in an hour, all hands',
  'placing-time': 'First water to last concrete',
  'first-set': 'First concrete sets after',
  'open-edge': 'Oldest open edge',
  'edge-window': 'An edge may stay open',
  'finish-time': 'Broomed, all of it, after',
  'forms-off': 'Forms off after',
  'screed-span': 'Your board strikes off',
  'screed-strips': 'Strips',
};

export const placingFormulas: Readonly<Record<PlacingFigureKey, string>> = {
  'placing-batch':
    'The mixer’s cycle, or the hand-work on a batch (by the mixer, wheeling, shovelling, striking off) shared by all hands, whichever is longer.',
  'placing-rate': 'The area that a batch covers, by the time from one batch to the next.',
  'placing-time':
    'All batches one after another. One pair of hands is missed at the mixer while a strip is finished.',
  'first-set': 'The initial set of the mix at 70 °F (21 °C), times the factor for today.',
  'open-edge':
    'How long the edge of a strip waits for the concrete of the next, looked at all along it: about the area of one strip by what is placed in an hour. At least from one batch to the next.',
  'edge-window':
    'What is usual, less in heat, never longer in the cold; and no longer than the mix takes to set.',
  'finish-time':
    'The last pass over the last strip: floated and edged once it is stiff enough, troweled if you want it, then broomed. Earlier strips come first.',
  'forms-off': 'Hours after the last pass, longer in the cold.',
  'screed-span':
    'The board in hand, less what lies on the rails at both ends; alone, no more than one person pulls.',
  'screed-strips':
    'The width of the pour by what the board strikes off, rounded up; all of one width.',
};

export const placingInputs: Readonly<Record<PlacingInputKey, string>> = {
  crew: 'Hands',
  mixers: 'Mixers',
  'mixer-cycle': 'Mixer, one batch to the next',
  'barrow-load': 'Barrow load',
  'barrow-trips': 'Barrow trips a batch',
  'haul-distance': 'Mixer to pour',
  'batch-covers': 'A batch covers',
  'work-hauling': 'Wheeling it',
  'work-placing': 'Shovelling and raking it',
  'work-striking': 'Striking it off',
  'work-all': 'All hand-work on a batch',
  'blend-initial': 'Initial set at 70 °F (21 °C)',
  'window-usual': 'An edge may stay open, usually',
  'screed-board': 'Screed board',
  'screed-bearing': 'Of it on the rails',
  'solo-most': 'Alone, at most',
  'strip-width': 'Strip, width',
  'strip-length-pulled': 'Strip, length',
  'strip-hours': 'Forms stay on',
};

export const placingTables: Readonly<Record<PlacingTableKey, string>> = {
  'placing-strips': 'Strips, from the first water on',
  'placing-offers': 'What would help',
};

export const placingColumns: Readonly<Record<PlacingColumnKey, string>> = {
  'strip-wide': 'Width',
  'strip-rides': 'Board rides on',
  'strip-batches': 'Batches',
  'strip-placed': 'Placed',
  'strip-float': 'Float',
  'strip-done': 'Broomed',
  offer: 'Change',
  'offer-placed': 'Last concrete',
  'offer-edge': 'Oldest edge',
  'offer-works': 'Enough?',
};

export const placingCounts: Readonly<
  Record<PlacingCountUnit, { readonly one: string; readonly many: string }>
> = {
  strip: { one: 'strip', many: 'strips' },
  hand: { one: 'hand', many: 'hands' },
  mixer: { one: 'mixer', many: 'mixers' },
  trip: { one: 'trip', many: 'trips' },
};

export const placingTerms: Readonly<Record<PlacingTermKey, string>> = {
  'ride-form': 'form',
  'ride-old-slab': 'old slab',
  'ride-steps': 'steps',
  'ride-rail': 'rail',
  'ride-wet-screed': 'wet screed',
  'offer-hands': 'More hands',
  'offer-mixer': 'A second mixer, and more hands',
  'offer-narrow': 'Narrower strips',
  'offer-mix': 'A slower mix alone',
  'offer-water': 'Cool water',
  'offer-bulkhead': 'Bulkhead, a day for each section',
  'offer-truck': 'A truck, same hands',
  'offer-enough': 'enough',
  'offer-helps': 'helps, not enough',
};

export const placingNotes: Readonly<Record<PlacingNoteCode, string>> = {
  'screed-board-short':
    'A board of {board} with {bearing} of it on the rails strikes off nothing. Set the board you have under practices.',
  'placing-rates-wrong':
    'Placing can’t be timed: hands, mixers, barrow and every rate must be more than nothing. Set them under practices.',
  'placing-no-batches':
    'Placing can’t be timed while batches can’t be counted. Set what the mixer holds.',
  'placing-too-many':
    'This takes more batches or strips than are timed one by one. Look at mixer and board, or order ready-mix.',
  'placing-cold-joint':
    'The edge of {strip} waits {age} for the next concrete; it should wait no longer than {window}. That makes a cold joint. What would help is listed below. Stop only at a joint: square, full depth, against a bulkhead.',
  'placing-sets-first':
    'The first concrete sets after {sets}, the last is placed after {placed}: what lies can’t be worked any more while you still pour. What would help is listed below.',
  'placing-finish-late':
    'Strips set hard (after {final}) before their finish is done: {strips}. More hands for finishing, or a smaller pour.',
  'placing-nothing-works':
    'Nothing that was tried is enough by itself. Combine them, or part the pour at a joint and pour on two days.',
  'placing-alone':
    'Alone, the mixer stands still while you finish a strip. Get a second pair of hands, or pour only what one person finishes.',
  'placing-no-way-out':
    'No way out of {strips}: once it lies, walls or fresh concrete are all round. Leave a way: pour it from the other end, or walk on planks over the forms.',
  'placing-out-of-reach':
    'Parts of the pour are {away} from where anyone can stand; your pole reaches {reach}. Have kneeboards and a longer pole, or pour it in two.',
  'placing-edge-wall-first':
    '{length} of edge runs along a wall, farther than {reach} from where you can stand outside. Edge and finish that side first, from the ground beside it, before it is closed in; later only with a walking edger on a pole.',
  'screed-rails':
    'Your board strikes off {span} at most: {strips}, with temporary rails (pipe or 2x4 on stakes) between them, set to height. Pull each rail as the next strip is placed and fill its slot. A board as long as from form to form needs none.',
  'screed-wet':
    'A wall gives the board nothing to ride on: {strips}. Set a wet screed there first: a band of concrete at height along a chalk line on the strip or wall. Or pull along the wall, between rails.',
  'placing-rates':
    'Times are for {hands} at common rates, without rests or trouble. Time your own first batches, and set them under practices.',
  'placing-even':
    'Every bag on the list is taken as poured, evenly deep: with concrete left over it goes faster.',
  'placing-blend-fastest':
    'A blend is taken to set as its fastest mix does: “{mix}”, {sets} at 70 °F (21 °C). It may take longer: make a trial batch.',
  'placing-from':
    'Start at the end that is hardest to get out of and work back, strip by strip, to where you can step out. Arrows show the pull. Where the mixer stands isn’t in the sketch.',
  'placing-forms-off':
    'Forms off {after} after the last pass, if the edge takes a thumbnail without a mark. Curing goes on for days.',
  'broom-across-fall':
    'Broom across the fall, so that shoes grip and water still runs off. Heights aren’t set, so take it as across the longer side.',
};
