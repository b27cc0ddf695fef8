import type {
  JointColumnKey,
  JointCountUnit,
  JointFigureKey,
  JointInputKey,
  JointNoteCode,
  JointTableKey,
  JointTermKey,
} from '../../takeoff/joints/keys.ts';

export const jointFigures: Readonly<Record<JointFigureKey, string>> = {
  'panel-most': 'Panels no longer than',
  'joint-panels': 'Panels',
  'joint-length': 'Control joints',
  'joint-stop-length': 'Construction joints',
  'joint-proof': 'This layout',
  'joint-depth': 'Joint depth',
  'strip-length': 'Isolation strip',
  'strip-depth': 'Strip, depth',
  'strip-pieces': 'Strip, pieces',
  sealant: 'Sealant',
  'sealant-cartridges': 'Sealant, cartridges',
  'backer-length': 'Backer rod',
};

export const jointFormulas: Readonly<Record<JointFigureKey, string>> = {
  'panel-most': 'So many times the thickness, and never more than the cap.',
  'joint-panels': 'What the joints part the pour into, counted.',
  'joint-length': 'All control joints added up.',
  'joint-stop-length': 'All joints at which the pour stops, added up. Full depth.',
  'joint-proof':
    'Of all joints that can be made of the lines tried, the shortest that break no rule; where none does, those that break the least. Proved, when every other one is longer or breaks more.',
  'joint-depth': 'A share of the thickness, and no less than the least depth.',
  'strip-length': 'Edges that get a strip under your practices, added up.',
  'strip-depth': 'The thickness, less what the strip’s top is kept low by.',
  'strip-pieces': 'Strip length by the length of one piece, rounded up.',
  sealant: 'Length times width times depth of what is sealed. Waste isn’t in it.',
  'sealant-cartridges': 'Sealant by what one cartridge holds, rounded up.',
  'backer-length':
    'As long as the control joints that are sealed. A rod a quarter thicker than the groove stays in it.',
};

export const jointInputs: Readonly<Record<JointInputKey, string>> = {
  'joint-factor': 'Times the thickness',
  'joint-cap': 'Never longer than',
  'joint-ratio': 'Length over width, at most',
  'joint-share': 'Share of the thickness',
  'joint-least-depth': 'Depth, at least',
  'joint-width': 'Groove, width',
  'seal-depth': 'Sealant, depth',
  'strip-thickness': 'Strip, thickness',
  'strip-recess': 'Strip kept low by',
  'strip-piece-length': 'Length of one piece of strip',
  'cartridge-holds': 'One cartridge holds',
};

export const jointTables: Readonly<Record<JointTableKey, string>> = {
  panels: 'Panels',
  joints: 'Joints',
  strips: 'Strip by edge',
};

export const jointColumns: Readonly<Record<JointColumnKey, string>> = {
  'panel-long': 'Length',
  'panel-wide': 'Width',
  'panel-ratio': 'Ratio',
  'panel-area': 'Area',
  'panel-says': 'Verdict',
  'joint-from': 'From',
  'joint-to': 'To',
  'joint-by': 'By',
};

export const jointCounts: Readonly<
  Record<JointCountUnit, { readonly one: string; readonly many: string }>
> = {
  panel: { one: 'panel', many: 'panels' },
  cartridge: { one: 'cartridge', many: 'cartridges' },
  'joint-place': { one: 'place', many: 'places' },
};

export const jointTerms: Readonly<Record<JointTermKey, string>> = {
  'joints-first': 'quick layout',
  'joints-proved': 'proved shortest',
  'joints-gap': 'best found',
  'joints-by-hand': 'drawn by hand',
  'joint-proposed': 'proposed',
  'joint-hand': 'hand',
  'panel-passes': 'passes',
  'broken-too-long': 'too long',
  'broken-ratio': 'too narrow for its length',
  'broken-sliver': 'sliver',
  'broken-inside-corner': 'inside corner without a joint',
  'broken-block-out': 'joints don’t meet the block-out',
  'broken-old-joint': 'older joint not carried on',
  'broken-sharp': 'sharp corner',
  'broken-ends-on-joint': 'a joint ends on another',
  'broken-ends-inside': 'a joint ends inside',
};

export const jointNotes: Readonly<Record<JointNoteCode, string>> = {
  // In the way.
  'strip-piece-zero':
    'Strip can’t be counted in pieces: set the length of one piece under practices.',
  'strip-too-low':
    'Strip kept low by {recess} in a slab of {thickness} is none. Set how low its top is kept under practices.',
  'joints-rules-wrong':
    'Joints can’t be laid out: panels no longer than {most}, no narrower than {least}. Under practices, the first must be more than the second, the ratio 1 or more, and the angle from 0 to 90.',
  'joints-too-many':
    'With panels no longer than {most} there would be hundreds. Look for a number that was typed wrong under practices.',
  'joint-too-deep':
    'A joint {depth} deep isn’t one in a slab of {thickness}. Set its depth under practices: a quarter of the thickness is usual.',
  'sealant-wrong':
    'Sealant can’t be counted: its width and depth, the strip’s thickness and what a cartridge holds must be more than nothing. Set them under practices.',
  // Look before you build.
  'joint-broken-too-long':
    'Too long: {panels}. The longest is {found}; no panel should be longer than {allowed}.',
  'joint-broken-ratio':
    'Too narrow for their length: {panels}. The worst is {found} times as long as it is wide; {allowed} is the most.',
  'joint-broken-sliver':
    'Slivers: {panels}. The narrowest is {found} wide; narrower than {allowed} breaks off.',
  'joint-broken-inside-corner':
    'No joint comes to an inside corner ({places}: {panels}). A slab nearly always cracks there.',
  'joint-broken-block-out':
    'Joints don’t come to a block-out from two sides ({places}: {panels}), at its corners or in line with its middle. It will crack from there.',
  'joint-broken-old-joint':
    'A joint of the older slab isn’t carried on ({places}: {panels}). The crack goes on into the new one.',
  'joint-broken-sharp':
    'Sharp corners: {panels}. The sharpest is {found}; a corner under {allowed} breaks off.',
  'joint-broken-ends-on-joint':
    'A joint ends on another ({places}: {panels}). A crack may run on from there: carry it through to an edge where you can.',
  'joint-broken-ends-inside':
    'A joint ends inside a panel ({places}: {panels}). A crack runs on from there: carry it to an edge or to another joint.',
  'joint-outside':
    'A drawn joint lies nowhere in the pour. Move it from edge to edge of the slab, or take it away.',
  'joint-existing-apart':
    'A joint of the older slab doesn’t come to the pour, so nothing is lined up with it. Draw it up to the edge of the new slab.',
  'sealant-shallow':
    'Sealant and backer rod need {needs}, but the joint is {depth} deep. Make it deeper, or leave the rod out.',
  'strip-not-sealed':
    'Strip that is flush leaves no room for sealant, so none is counted over it. Keep its top low, 1/4 to 1/2 in, under practices.',
  // Taken as so.
  'joints-rules-used':
    'Panels no longer than {most}, no more than {ratio} times as long as wide, no narrower than {least}: your practices. Curves count by their chords.',
  'joints-none-needed': 'No control joint is needed by these rules, or none was drawn.',
  'joints-tooled-when':
    'Tooled: cut the groove once bleed water has gone and the concrete still gives under the groover, and again after floating. How soon that is changes with heat, wind, sun and mix.',
  'joints-sawn-when':
    'Sawn: as soon as the edge of a cut doesn’t ravel, before it cracks by itself. Seen: 4 to 12 h, 6 to 18 h, 8 to 24 h after placing. Heat, wind, sun and fast mixes make it sooner, cold later: try a short cut. Saw wet, with a respirator: the dust harms the lungs for good.',
  'joints-stop':
    'At a construction joint the pour stops against a bulkhead, square and full depth. Its form and stakes aren’t counted.',
  'joints-may-crack':
    'Joints choose where a slab cracks. Even a good layout lets a few panels in a hundred crack elsewhere.',
  'strip-bonded':
    'No strip in a patch: the new concrete is bonded to the old there. Clean and roughen the old edge, wet it, and carry the old slab’s joints through.',
  'strip-edges': 'Strip goes on the kinds of edge chosen under practices.',
  'strip-none':
    'No edge gets isolation strip: none of those chosen under practices is in this pour.',
  'strip-butted':
    'Strip comes in pieces of {piece}, butted end to end, and cut pieces are used again.',
};
