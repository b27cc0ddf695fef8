import type {
  StakeColumnKey,
  StakeFigureKey,
  StakeInputKey,
  StakeNoteCode,
  StakeTableKey,
  StakeTermKey,
} from '../../takeoff/stakes/keys.ts';

/** Words of stakes, of what holds a form besides, and of what fastens it. */
export const stakeFigures: Readonly<Record<StakeFigureKey, string>> = {
  'stake-spacing-used': 'Stakes apart, at most',
  stakes: 'Stakes',
  'stakes-inside': 'Stakes inside the form, to be pulled',
  kickers: 'Kickers',
  spreaders: 'Spreaders',
  weights: 'Places held by weight',
  cleats: 'Cleats over splices',
  nails: 'Nails or screws',
  'nail-weight': 'Nails, weight',
  'fastening-boxes': 'Boxes of nails or screws',
};

export const stakeFormulas: Readonly<Record<StakeFigureKey, string>> = {
  'stake-spacing-used':
    'The least of four: your practice (s₀), and what the board bears when fresh concrete pushes it sideways as a fluid (q): bending stress (F), bow (δ), and bow as a share (r) of the spacing. The board bends flat, about its weak axis (d deep on edge, t thick), over three spans or more.',
  stakes:
    'For each run: its length less the distance from both ends, divided by the spacing, rounded up, and one more. With those added (a) for splices, for stakes set by hand, and where something is in the way and even places can’t all be driven, so that no gap gets wider than the spacing; less those (b) where something else holds the form, and those left out by hand.',
  'stakes-inside':
    'Places where nothing can be driven behind the form, but in front of it: pulled as the concrete stiffens, the hole packed.',
  kickers:
    'Braces to a stake farther out: where nothing can be driven just behind the form, and at every stake where the form stands higher than your limit. Each takes one more stake.',
  spreaders:
    'Places where the form is held off a wall, steps, a slab or another form by a strut or wedge.',
  weights: 'Places where neither a stake nor a brace has room: bags or blocks against the form.',
  cleats: 'One over each splice.',
  nails:
    'So many for each stake (n), behind the form or inside; as many at either end of a kicker (j); and those for each corner where two boards meet (m) and each cleat (p).',
  'nail-weight': 'Nails divided by the nails in a pound.',
  'fastening-boxes': 'Rounded up to whole boxes.',
};

export const stakeInputs: Readonly<Record<StakeInputKey, string>> = {
  'stake-spacing': 'Stake spacing by practice, at most',
  'stake-from-end': 'First and last stake from the ends, at most',
  'spacing-by-deflection': 'Spacing by how far the board bows',
  'spacing-by-share': 'Spacing by bow as a share of it',
  'spacing-by-bending': 'Spacing by bending stress',
  'spacing-governed-by': 'What governs',
  'board-thickness': 'Dressed thickness of the board',
  'fresh-weight': 'Fresh concrete weighs',
  'form-pressure': 'Concrete presses at the bottom of the board with',
  'form-thrust': 'Thrust on the form',
  'deflection-most': 'The board bows out, at most',
  'deflection-share': 'The spacing is so many times the bow, at least',
  elasticity: 'Modulus of elasticity of the board',
  'bending-stress': 'Bending stress that the board may bear',
  'kickers-above': 'Kickers where the form stands higher than',
  'kickers-high': 'Stakes braced as the form stands high',
  'kickers-beyond': 'Places with the stake beyond what is in the way',
  'nails-per-stake': 'Nails or screws a stake',
  'nails-per-corner': 'Nails or screws a corner',
  'nails-per-cleat': 'Nails or screws a cleat',
  'nails-per-pound': 'Nails in a pound',
  'nail-box': 'A box holds',
  'screws-per-box': 'Screws in a box',
};

export const stakeTables: Readonly<Record<StakeTableKey, string>> = {
  'stake-list': 'Stake list',
};

export const stakeColumns: Readonly<Record<StakeColumnKey, string>> = {
  'most-apart': 'May be',
  'stake-from': 'From',
  'stake-along': 'Along',
  'stake-side': 'Side',
  'stake-kind': 'What',
};

export const stakeTerms: Readonly<Record<StakeTermKey, string>> = {
  'by-practice': 'your practice',
  'by-deflection': 'how far the board bows',
  'by-deflection-share': 'bow as a share of the spacing',
  'by-bending': 'bending stress',
  'run-start': 'run start',
  'outside-form': 'outside',
  'inside-form': 'inside',
  stake: 'stake',
  'stake-by-hand': 'stake, set by hand',
  'stake-and-kicker': 'stake and kicker',
  'inside-stake': 'inside stake',
  'kicker-alone': 'kicker',
  spreader: 'spreader',
  weight: 'weight',
};

export const stakeNotes: Readonly<Record<StakeNoteCode, string>> = {
  // In the way.
  'stake-spacing-zero':
    'Stakes can’t be counted: the spacing must be more than nothing, and the distance from the ends not below it. Set both under practices.',
  'curve-spacing-zero':
    'Stakes on curves can’t be placed: their spacing, and how far the board may stand off the arc, must be more than nothing. Set both under practices.',
  'board-bears-nothing':
    'Stakes can’t be spaced: what the board bears, how far it may bow and what fresh concrete weighs must all be more than nothing, and leave some spacing. Set them under practices.',
  'utility-tolerance-below-zero':
    'Stakes can’t be placed: the distance kept from buried lines must not be below nothing. Set it under practices.',
  'nails-per-pound-zero':
    'Nails can’t be weighed: count how many are in a pound of your box, and set that and what a box weighs under practices.',
  'screws-per-box-zero':
    'Screws can’t be counted in boxes: set how many a box holds under practices.',
  'stakes-too-many':
    'At this spacing it would take {stakes}. Look for a spacing that was typed wrong.',

  // Look before you build.
  'call-before-digging':
    'Have buried lines marked before you drive a stake. In the US call 811, some days ahead; it is free. Dig by hand near the marks.',
  'dig-by-hand':
    'A buried line runs near the forms. No stake is placed within {tolerance} of it on either side. Call before you dig; within that distance dig by hand, and don’t trust the mark for the depth. Your state’s distance may be another: ask.',
  'driving-stakes':
    'Driving stakes: wear eye protection, and let nobody hold a stake by hand under a sledge. Cap steel pins, which can run a person through.',
  'hold-spreaders':
    '{places} on {runs}, as no stake can be driven behind the form there: cut a strut or wedge between the form and what stands opposite, and nail it so that it can’t drop.',
  'hold-kickers':
    '{places} on {runs}, as no stake can be driven just behind the form there: drive a stake beyond what is in the way, and brace the form to it.',
  'hold-inside':
    '{places} inside the form on {runs}, as none can be driven behind it there: pull them as the concrete stiffens, and pack the holes.',
  'hold-weights':
    '{places} on {runs}, as there is no room for a stake or a brace there: hold the form with bags or blocks, and check it before you pour. It can slide.',
  'kickers-high':
    'The form stands {height} high, more than {above}: {kickers}, one at every stake. Some set stakes closer instead, and brace every second one.',
  'broken-spacing':
    'Stakes are {found} apart on {runs}, where {allowed} is the most: one was left out by hand. Put one in between, or brace the board there.',
  'broken-from-end':
    'The nearest stake is {found} from an end on {runs}, where {allowed} is the most: one was left out by hand. Put it back, or brace the end.',
  'broken-splice':
    'The nearest stake is {found} from one side of a splice on {runs}, where {allowed} is the most. Move the splice, or brace both boards at it.',
  'broken-blocked':
    'A stake is set by hand on {runs} where none may be driven: its middle is {found} from what is in the way, and {allowed} is the least. Move it, or let the plan place it.',
  'hand-stakes-off':
    '{stakes} set by hand on no form any more: the sketch has changed since. Set them anew, or let the plan place them.',

  // Taken as so.
  'stakes-at-ends':
    'Stakes no more than {spacing} apart, with one no more than {fromEnd} from each end of a run and on either side of every splice. A corner is held by two, one on each board. Where something is in the way stakes move to either side of it, and are added only where a gap would get too wide.',
  'stakes-on-curves':
    'On curves stakes stand no more than {spacing} apart, and closer where the board would lie more than {flat} off the arc.',
  'stakes-by-practice':
    'The spacing is practice, not calculation. Fresh concrete alone would let a {board} go {calculated}; at {spacing} it bows the board {bow} between two stakes, where a knock of 150 lb, a foot or the end of a screed, bows it {knocked}. Knocks, feet on the form, and stakes that give, not the push of the concrete, set the practice.',
  'stakes-by-bending':
    'Your practice of {practice} is more than the board bears: a {board} goes {calculated} under fresh concrete, and that is used. At {spacing} a knock of 150 lb between two stakes bows it {knocked}.',
};
