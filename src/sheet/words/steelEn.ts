import type {
  SteelColumnKey,
  SteelCountUnit,
  SteelFigureKey,
  SteelInputKey,
  SteelNoteCode,
  SteelTableKey,
  SteelTermKey,
} from '../../takeoff/steel/keys.ts';

export const steelFigures: Readonly<Record<SteelFigureKey, string>> = {
  'mesh-area': 'Area inside the cover',
  'mesh-least': 'Least by area and lap alone',
  'mesh-proof': 'This layout',
  'mesh-rows': 'Rows',
  'mesh-pieces': 'Pieces to lay',
  'mesh-sheets': 'Mesh sheets',
  'mesh-rolls': 'Mesh rolls',
  'mesh-unrolled': 'Off the roll',
  'mesh-truck': 'Of the truck’s mesh, used',
  'mesh-weight': 'Mesh, weight',
  'steel-ties': 'Ties',
  'steel-chairs': 'Chairs',
  'steel-area': 'Steel each way',
  'drag-area': 'Drag formula asks for, each way',
};

export const steelFormulas: Readonly<Record<SteelFigureKey, string>> = {
  'mesh-area': 'The pour moved in by the cover on every edge.',
  'mesh-least':
    'The larger of two: area inside the cover by the area of one, and the area of the places farther than half a lap from its edges by what one covers less a lap each way. Truck’s mesh counted off first, then rounded up. The count can’t be less.',
  'mesh-proof':
    'Proved least when it takes no more than area and lap alone ask for. Else the best that was found: there may be a better one.',
  'mesh-rows':
    'What the rows must cover, less one lap, divided by the width less a lap, rounded up; each piece of the pour on its own, and more where rows end at a corner to save mesh.',
  'mesh-pieces': 'The pieces of every row, from one end to the other.',
  'mesh-sheets':
    'For each row: its length less one lap, divided by the sheet’s length less a lap, rounded up; less the sheets (r) saved by using offcuts again. What is cut from each stands below.',
  'mesh-rolls':
    'Lengths cut off the roll, added up, by the length of a roll, rounded up. What is cut from each stands below.',
  'mesh-unrolled': 'Lengths cut off rolls, end to end.',
  'mesh-truck': 'Sheets and rolls of the truck’s that are cut into.',
  'mesh-weight': 'What is bought, times its area, times the weight of mesh by area.',
  'steel-ties': 'For each lap: its length by the spacing of ties, rounded up, and one more.',
  'steel-chairs':
    'Lines of chairs along each row, none farther apart than the spacing; along each line its length inside the pour by the spacing, rounded up.',
  'steel-area': 'Area of one wire by the spacing of the wires.',
  'drag-area':
    'Friction times the length between joints times the weight of the slab, by twice the stress that the steel may bear.',
};

export const steelInputs: Readonly<Record<SteelInputKey, string>> = {
  'mesh-style': 'Mesh',
  'mesh-cover': 'Cover at the edges',
  'mesh-size-length': 'Length of one',
  'mesh-size-width': 'Width of one',
  'mesh-lap-sides': 'Lap at sides',
  'mesh-lap-ends': 'Lap at ends',
  'mesh-lapped-area': 'Area farther than half a lap from the edges',
  'mesh-weight-by-area': 'Weight of mesh',
  'mesh-least-piece': 'Smallest piece',
  'mesh-square': 'One square',
  'tie-spacing': 'Ties apart, at most',
  'chair-spacing': 'Chairs apart, at most',
  'lap-length': 'Laps, length in all',
  'drag-friction': 'Friction',
  'drag-length': 'Length between joints',
  'drag-weight': 'Weight of the slab',
  'drag-stress': 'Stress in the steel',
};

export const steelTables: Readonly<Record<SteelTableKey, string>> = {
  'mesh-cuts': 'Mesh pieces',
  'mesh-used': 'Mesh to cut from',
};

export const steelColumns: Readonly<Record<SteelColumnKey, string>> = {
  piece: 'Piece',
  from: 'From',
  left: 'Left',
};

export const steelCounts: Readonly<
  Record<SteelCountUnit, { readonly one: string; readonly many: string }>
> = {
  roll: { one: 'roll', many: 'rolls' },
  tie: { one: 'tie', many: 'ties' },
  chair: { one: 'chair', many: 'chairs' },
};

export const steelTerms: Readonly<Record<SteelTermKey, string>> = {
  'layout-first': 'quick layout',
  'layout-least': 'proved least',
  'layout-searched': 'best found',
  'from-truck-sheet': 'truck, sheet',
  'from-truck-roll': 'truck, roll',
  'from-yard-sheet': 'yard, sheet',
  'from-yard-roll': 'yard, roll',
};

export const steelNotes: Readonly<Record<SteelNoteCode, string>> = {
  // In the way.
  'mesh-size':
    'Mesh can’t be counted: the smallest piece and the spacing of ties must be more than nothing, laps and cover not below it. Set them under practices.',
  'mesh-none-listed':
    'There is no mesh to lay. Put in what is on the truck or what the yard sells.',
  'mesh-lap-too-wide':
    'A lap of {lap} leaves nothing of any sheet or roll in your lists. Make the lap smaller, or put in wider mesh.',
  'mesh-no-room':
    'With {cover} of cover on every edge no room is left for mesh. Make the cover smaller, or leave the mesh out.',
  'mesh-too-many':
    'Lapped {lap}, the mesh in your lists would come to more than {most}. Look for a size or a lap that was typed wrong.',
  'mesh-not-enough':
    'There isn’t enough mesh on the truck, or none wide enough. Put in what the yard sells, or more mesh.',
  'chairs-too-many':
    'Chairs {spacing} apart would be more than any slab takes. Look for a spacing that was typed wrong.',
  // Look before you build.
  'mesh-springs-back':
    'Mesh springs back when it is cut or unrolled. Weigh down both ends first, stand clear, and wear gloves and eye protection. Cap wire and bar ends that someone could fall on.',
  'mesh-stock-narrow': 'Not used, as it is no wider than the lap: {rows} of your lists of mesh.',
  'mesh-lap-short':
    'Laps are less than one square ({square}), so that no cross wire is lapped. Ask what your inspector wants.',
  'drag-short':
    'The subgrade drag formula asks for {need} each way, and this mesh has {has}. Choose heavier mesh, put joints closer together, or change what the formula is reckoned with.',
  // Taken as so.
  'steel-none': 'No steel is figured, as the practices choose.',
  'steel-what-for':
    'Steel this light holds cracks tight. It doesn’t stop them, and doesn’t let the slab carry more. By the subgrade drag formula {need} each way would do; there is {has}. This is no structural design: ask your building department or an engineer.',
  'mesh-laid-in-rows':
    'Mesh lies in rows, {cover} in from every edge, holes and slants cut out of each piece on site. Offcuts are used again where they fit, in length and across; nothing is cut smaller than {least}. One kind is bought.',
  'mesh-lap-used':
    'Mesh laps by {sides} at its sides and {ends} at its ends, and more where a piece would be too small.',
  'mesh-price-missing':
    'No sum of money: not all mesh of the yard has a price. Of {kinds} the one that buys the least area was chosen.',
  'steel-on-chairs':
    'Chairs at most {spacing} apart hold the steel at its height. Wire sags and is trodden down between chairs that are far apart.',
  'steel-lifted':
    'The steel is lifted to its height as the concrete is placed, so no chairs are counted. It is easily trodden down again: lift it last, and look.',
};
