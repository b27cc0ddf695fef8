import type { LayoutNoteCode } from '../../takeoff/layout/keys.ts';
import type { TradeNoteCode } from '../../takeoff/notes.ts';
import type { OutlineNoteCode } from '../../takeoff/outline/notes.ts';
import { boardNotes } from './boardsEn.ts';
import { jointNotes } from './jointsEn.ts';
import { layoutNotes } from './layoutTradeEn.ts';
import { mixNotes } from './mixEn.ts';
import { orderNotes } from './orderNotesEn.ts';
import { placingNotes } from './placingEn.ts';
import { stakeNotes } from './stakesEn.ts';
import { steelNotes } from './steelEn.ts';
import { thickenedNotes } from './thickenedEn.ts';
import { weatherNotes } from './weatherEn.ts';

/** What must be known before anyone acts on a figure: what is wrong or taken as so, then how to mend or check it. */
export const notes: Readonly<Record<OutlineNoteCode | TradeNoteCode | LayoutNoteCode, string>> = {
  // In the way: the outline.
  'no-pad': 'There is no pad or patch yet. Draw one, or start from a rectangle.',
  'broken-number':
    'A number in this shape can’t be read. Type its corners again, or take the shape away and draw it anew.',
  'too-few-corners':
    'This shape has {corners}. It needs three at least, or two where an edge is curved. Put in a corner, or take the shape away.',
  'not-closed': 'This outline isn’t closed. Close it back to its first corner.',
  'no-size': 'This shape has no size. Give it a size of more than nothing.',
  'no-area':
    'This outline encloses nothing: all its corners lie on one line. Move a corner off that line.',
  'arc-without-chord':
    'A curved edge starts and ends at the same place. Move one of its corners, or make the edge straight.',
  'crosses-itself':
    'The outline crosses itself where it is marked, so there is no telling which side is poured. Move a corner so that no edge crosses another. Nothing is lost.',
  'too-large':
    'This is {extent} across. A job may be 200 m (656 ft) at most. Look for a number that was typed wrong.',
  'pad-inside-existing-slab':
    'The pad lies wholly inside an existing slab, so nothing is left to pour. Move it, or draw the missing piece of that slab as a patch.',
  'pad-covered':
    'What is drawn over the pad covers all of it, so nothing is left to pour. Move or shrink what covers it.',
  'clip-failed':
    'This outline couldn’t be figured safely, so no figures are shown. Move a corner by 1/16 in (1 mm) and look again. Your sketch is kept.',
  // In the way: the trades.
  'thickness-zero':
    'Volume and bags can’t be figured: the thickness must be more than nothing. Set it under practices.',
  'form-depth-zero':
    'The form gives no depth. Set the board and the gap under it, so that they come to more than nothing.',
  'waste-below-zero':
    'Bags can’t be counted: the waste allowance is below nothing. Set it to 0 or more.',
  'blend-no-parts':
    'Bags can’t be counted: the blend has no parts. Give whole parts, at least one of one mix.',
  'mix-not-listed':
    'The blend asks for a mix that isn’t in your list ({mix}). Choose one that is, or put it in.',
  'bag-yield-zero':
    'Bags can’t be counted: “{mix}” says it makes nothing. Type what one bag makes, as printed on it.',
  'bag-weight-zero': 'Bags can’t be weighed: “{mix}” has no weight. Type it as printed on the bag.',
  'bags-too-many':
    'This would take more than {most}. Look for a size or a yield that was typed wrong, or order ready-mix.',

  // Look before you build: the outline.
  'zone-ignored':
    'A no-stake zone isn’t a whole shape, so stakes may stand in it. Mend its outline, or take it away.',
  'line-ignored':
    'A buried line can’t be read, so stakes may stand over it. Mend its corners, or take it away and draw it anew.',
  'separate-pieces': 'The pour comes in {pieces} that don’t touch. If it should be one, join them.',
  'pads-overlap': 'Two pads overlap. What they share is poured, and counted, once.',
  'adds-nothing': 'This pad adds nothing: others cover it. Take it away if it isn’t needed.',
  'patch-apart':
    'This patch touches neither a pad nor an existing slab. It is figured as a pour of its own.',
  'building-line-crosses-pad':
    'A wall line runs through the pad. A line cuts nothing out: close it round the building, or move it to the edge.',
  'block-out-outside':
    'This block-out takes nothing from the pour. Move it inside the pad, or take it away.',
  'narrow-neck':
    'The pour is no wider than about {closeEnough} here. Look at the corners: should it be apart, or wider?',
  'clip-retried': 'Corners were rounded to 1/20 mm to figure this outline. No tape shows that.',
  'second-engine':
    'The usual way of cutting out this outline failed, and a second one was used. Check the net area by hand before you order.',
  // Look before you build: the trades.
  'form-gap':
    'The form boards stand {gap} off the ground. Pack soil against the gap from outside, or the concrete runs out under the form.',
  'form-cut':
    'For {thickness} of concrete the ground inside the form has to be cut {cut} deeper than a {board} ({depth} deep) and its gap give. Cut it clear of the boards’ bearing, and fill no low spot with loose soil.',
  'form-proud':
    'A {board} is {depth} deep, the slab {thickness}: set on the ground, its top stands {proud} too high. Let it into the ground by as much, or bring the ground inside up and pack it.',
  'form-deeper':
    'A {board} with its gap gives {depth}, but the volume is figured at {thickness}. Poured to the top of the form it takes {difference} more. Change the thickness or the gap if that is what you mean.',
  'form-shallower':
    'A {board} with its gap gives only {depth}, but the volume is figured at {thickness}. Poured to the top of the form it takes {difference} less. Raise the form, dig deeper, or change the thickness.',
  'nominal-depth':
    'A {board} isn’t as deep as it is called: dressed and dry, and set on the ground, it gives {depth}, not {thickness}.',
  'cement-burns':
    'Wet concrete burns skin and eyes. Wear waterproof gloves, boots and eye protection, rinse it off with clean water at once, and change soaked clothes.',
  'silica-dust':
    'Dry mix and cut concrete give off silica dust, which harms the lungs for good. Open bags low and slowly, keep upwind, wet it down, and wear a respirator that fits.',
  'heavy-bags':
    'One bag weighs {weight}. More than {limit} is too much for one person, even close to the body: lift it by two, or buy smaller bags.',

  // Taken as so: the outline.
  'close-enough':
    'Edges no farther apart than {closeEnough} are taken as one line. The farthest that a line moved is {farthest}.',
  'slivers-dissolved': 'Leftovers too narrow to be meant were dropped: {slivers}, {area} in all.',
  // Taken as so: the trades.
  'local-code':
    'Local code decides on thickness, steel, joints, fall and frost. Nothing here is checked against it, and nothing here is a structural design: ask your building department.',
  'forms-inside-face':
    'Lengths of form are of the inside face, the one that the concrete touches. Boards that run past a corner are longer.',
  'form-none-against-old':
    'No form against an existing slab, steps or a wall that can be poured against: {length} of the edge.',
  'edges-not-thickened':
    'Edges are taken as no thicker than the slab. A thickened edge is dug as a trench inside the form: say so under practices, and its concrete is counted.',
  'thickness-used': 'The slab is {thickness} thick everywhere, its edges too.',
  'flat-ground':
    'The ground is taken as flat and at the right depth. If it is {depth} lower on the whole, it takes {more} more: check with a string across the forms.',
  'allowance-used':
    'The allowance is {share} of the net, or {bags} where that is more. It is a line of its own, never in the net.',
  'yield-nominal':
    'What a bag makes is as printed on it. Real bags vary by a few percent, and more with the water.',
  'blend-whole-bags':
    'Blended by bags: {mainParts} “{main}” to {otherParts} “{other}”, as near as whole bags allow. Makers don’t vouch for blends: try one first.',
  ...boardNotes,
  ...jointNotes,
  ...layoutNotes,
  ...mixNotes,
  ...steelNotes,
  ...orderNotes,
  ...stakeNotes,
  ...thickenedNotes,
  ...weatherNotes,
  ...placingNotes,
};
