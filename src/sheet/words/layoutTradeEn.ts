import type {
  LayoutColumnKey,
  LayoutFigureKey,
  LayoutInputKey,
  LayoutNoteCode,
  LayoutTableKey,
  LayoutTermKey,
} from '../../takeoff/layout/keys.ts';

/** Words of squaring and setting out. */
export const layoutFigures: Readonly<Record<LayoutFigureKey, string>> = {
  'layout-band': 'Diagonals may be off by',
  'layout-tie-error': 'Worst corner, tapes misread',
  'layout-difference': 'Diagonals off by',
  'layout-misclosure': 'Tapes disagree by',
  'layout-move': 'Farthest move',
  'layout-fit-misclosure': 'Tapes disagree by',
  'layout-fit-move': 'Farthest move',
};

export const layoutFormulas: Readonly<Record<LayoutFigureKey, string>> = {
  'layout-band':
    'A quarter of an inch where the longest diagonal is 20 ft or less, which is common practice; beyond that in proportion, which is our own rule.',
  'layout-tie-error':
    'Both tapes read ± 1/8 in: the farthest of the four places where the arcs then cross from where they should. Near enough it is the reading’s error divided by the smaller of sine and cosine of half the crossing angle.',
  'layout-difference':
    'How much longer one measured diagonal is than the other, less how much longer it is drawn. Each diagonal below: as drawn + what it is off = as measured.',
  'layout-misclosure':
    'The sides decide how long both diagonals are together. What is measured, less that, shared by the two: more than a little means a tape read wrong or a side that isn’t its length.',
  'layout-move':
    'One side stays. The other three swing on their lengths to the one angle at which the diagonals differ as measured; from there to the drawn place is the move. Worked from the true triangles, not from a rule of thumb.',
  'layout-fit-misclosure':
    'The form whose lengths come nearest to the tapes, all trusted alike (least squares). What the tape farthest off says more or less than that form has. Each tape below: as measured, or as drawn where a side wasn’t, less as fitted.',
  'layout-fit-move':
    'One side stays. From where each corner stands in the form that comes nearest to the tapes (least squares), to where it was drawn.',
};

export const layoutInputs: Readonly<Record<LayoutInputKey, string>> = {
  'longest-diagonal': 'Longest diagonal',
  'tape-reading': 'A tape is read wrong by up to',
  'side-held': 'Side that stays',
};

export const layoutTables: Readonly<Record<LayoutTableKey, string>> = {
  'layout-ties': 'Sides and diagonals',
  'layout-squares': '3-4-5 at square corners',
  'layout-offsets': 'Offsets from the baseline',
  'layout-tape-ties': 'Tape ties from two marks',
  'layout-moves': 'Moves to make',
};

export const layoutColumns: Readonly<Record<LayoutColumnKey, string>> = {
  corner: 'Corner',
  tie: 'From–to',
  'tie-kind': 'What',
  'tie-use': 'Use',
  'leg-one': 'Along next side',
  'leg-two': 'Along side before',
  'across-legs': 'Across',
  station: 'Along',
  offset: 'Out',
  'station-exact': 'Along, to 1/64',
  'offset-exact': 'Out, to 1/64',
  'from-first': 'From M1',
  'from-second': 'From M2',
  'side-of-line': 'Side',
  crossing: 'Cross at',
  'tie-error': 'May be off',
  'move-along': 'Along',
  'move-toward': 'Toward',
  'move-square': 'Square to it',
  'move-way': 'Way',
  'move-in-all': 'In all',
};

export const layoutTerms: Readonly<Record<LayoutTermKey, string>> = {
  side: 'side',
  chord: 'chord of the curve',
  between: 'across the gap',
  diagonal: 'diagonal',
  sets: 'sets the form',
  checks: 'check',
  'sets-blocked': 'sets the form; something stands between',
  'checks-blocked': 'check; something stands between',
  left: 'left',
  right: 'right',
  'in-line': 'in line',
  'at-the-mark': 'at the mark',
  'no-fix': 'no fix',
  away: 'away from the side',
  nearer: 'nearer the side',
  stays: '–',
};

export const layoutNotes: Readonly<Record<LayoutNoteCode, string>> = {
  // In the way.
  'layout-no-pour':
    'Nothing to set out yet: the pour can’t be figured. Mend what the ticket above names first.',
  'layout-pad-gone': 'That pad isn’t in the job any more. Choose another to set out.',
  'layout-few-corners':
    'This pad has fewer than two corners with a form, so there is nothing to set out by ties. Measure the form’s ends from what it meets.',
  'layout-many-corners':
    'This pad has {corners} corners with a form; ties are worked out for {most} at most. Set it out by a string grid, or split the pad.',
  'layout-baseline-gone':
    'The chosen baseline isn’t there any more, or isn’t straight. Choose another line to measure from.',
  'layout-baseline-short':
    'The chosen baseline has no length. Move one of its ends, or choose another line.',
  'layout-mark-gone':
    'A chosen mark isn’t there any more. Choose another corner to hook the tape on.',
  'layout-marks-coincide': 'Both marks are the same place. Choose two that lie apart.',
  'layout-no-marks':
    'There aren’t two marks to tie to. Draw what stands there already (an existing slab, a wall, steps), or set out two corners first.',
  'tape-no-triangle':
    'These three tapes can’t make a triangle: {tapes}. One of them was read or typed wrong; measure them again.',
  'tape-cannot-close':
    'No form with these sides has such diagonals. Measure both diagonals and all four sides again, corner to corner on the inside face.',
  'tape-misclosure':
    'These diagonals are {off} each from what these sides allow, so no move is given: it could be wrong. Measure both diagonals again, then the four sides.',
  'tape-more-needed':
    'These tapes still leave a corner free to move. Tape more ties across: {tapes}. Those that set the form are in the table.',
  'tape-fit-none':
    'No form near the one drawn has these lengths, so no move is given. Look for a tape that was read or typed wrong.',
  'tape-fit-misclosure':
    'The tapes don’t agree: {tape} is {off} from what the others leave it, so no move is given. Measure it again, then its neighbours.',
  // Look before you build.
  'layout-ties-flat':
    'The two arcs cross too flat at {corners} (under 30° or over 150°): a small slip of the tape moves the corner far. Choose other marks, or use the offsets.',
  'layout-tie-blocked':
    'A wall or steps stand between a mark and {corners}: the tape can’t be stretched there. Choose other marks, or use the offsets.',
  'tape-out-of-band':
    'Out of square: the diagonals are {off} off, more than the {band} that is let pass. Make the moves below, then measure again.',
  'tape-sides-off':
    'A side is {off} off its length. Mend the sides before the diagonals; the moves below count that in.',
  'tape-sides-unmeasured':
    'Equal diagonals alone don’t prove the shape: a form with two sloping ends has them too. Measure all four sides as well.',
  'tape-fit-off':
    'A corner is {off} from its place, more than the {band} that is let pass. Make the moves below, then measure again.',
  'tape-fit-unchecked':
    'Nothing checks these tapes: one read wrong moves a corner and isn’t seen. Tape one more.',
  // Taken as so.
  'layout-not-proof':
    'Equal diagonals alone don’t prove a rectangle. Opposite sides must match as well: tape all the lengths in the table.',
  'layout-one-baseline':
    'One line is the baseline. Old walls and slabs are seldom straight or square to each other: measure the others from it, at three places at least.',
  'layout-sides-left':
    'Corners against what stands there already aren’t in these tables: the form ends where it meets it.',
  'layout-pick-side':
    'Two arcs cross on both sides of the line through the marks. “Left” and “right” are seen from M1 looking to M2.',
  'tape-within-band':
    'The diagonals are {off} off, within the {band} that is let pass. Square enough, if opposite sides match too.',
  'tape-fit-within': 'Every corner is within {off} of its place; {band} is let pass.',
  'tape-sides-held': 'Sides that weren’t measured are taken to be as long as drawn.',
};
