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
  'mesh-money': 'Mesh, price',
  'mesh-truck': 'Of the truck’s sheets, used',
  'mesh-truck-rolls': 'Of the truck’s rolls, used',
  'mesh-weight': 'Mesh, weight',
  'steel-ties': 'Ties',
  'bar-lines': 'Bars to lay, laps not counted',
  'bar-length': 'Bars laid, length in all',
  'bars-to-buy': 'Bars to buy',
  'bars-money': 'Bars, price',
  'bars-proof': 'Plan of the bars',
  'bar-cuts': 'Cuts',
  'bars-least': 'Least by length alone',
  'bar-weight': 'Bars, weight',
  'bar-ties': 'Ties',
  dowels: 'Dowels',
  'dowel-hole': 'Dowel holes, depth',
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
  'mesh-money': 'What is bought of the yard, times the price of one.',
  'mesh-truck': 'Sheets of the truck’s that are cut into.',
  'mesh-truck-rolls': 'Rolls of the truck’s that are cut into.',
  'mesh-weight': 'What is bought, times its area, times the weight of mesh by area.',
  'steel-ties': 'For each lap: its length by the spacing of ties, rounded up, and one more.',
  'bar-lines':
    'Each way: the shape’s breadth inside the cover by the spacing, rounded up, and one more; a line that a hole or a notch breaks is two bars. One more lies across each inside corner.',
  'bar-length': 'All bars from end to end, laps not counted.',
  'bars-to-buy':
    'Lines longer than a bar are lapped; then every piece is cut from bars as the plan below says. It can’t be less than the length alone would take (N₀).',
  'bars-money': 'Bars to buy times the price of one.',
  'bars-proof':
    'Cut plans are weighed by the bars bought (C), then by cuts (k). Proved best: no plan does with less of the first, nor with fewer of the second at that. Else the search is still to come, or was ended before that was known.',
  'bar-cuts': 'Every piece but one that ends where its bar does is cut once.',
  'bars-least': 'Length of all bars and laps (k of them) by the length of one bar, rounded up.',
  'bar-weight': 'Bars to buy times the length of one times the weight of its size.',
  'bar-ties': 'Every other crossing (x), and two at each lap (k).',
  dowels:
    'For each straight edge against the old slab, from corner to corner, and from joint to joint where one ends at it: the length less the distance kept from both ends, by the spacing, rounded up, and one more.',
  'dowel-hole': 'Half of the dowel.',
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
  'bar-size': 'Bar',
  'bar-spacing': 'Bars apart, at most',
  'bar-cover': 'Cover at the edges',
  'bar-lap': 'Lap of two bars',
  'bar-laps': 'Laps',
  'bar-stock-length': 'Length of one bar',
  'bar-crossings': 'Crossings',
  'price-of-one': 'Price of one',
  'dowel-diameter': 'Diameter of a dowel',
  'dowel-length': 'Length of a dowel',
  'dowel-spacing': 'Dowels apart, at most',
  'dowel-from-corner': 'Kept from corners',
  'dowel-set': 'Set in',
  'drag-friction': 'Friction',
  'drag-length': 'Length between joints',
  'drag-weight': 'Weight of the slab',
  'drag-stress': 'Stress in the steel',
};

export const steelTables: Readonly<Record<SteelTableKey, string>> = {
  'bar-buy': 'Bars to buy',
  'bar-cuts': 'Bars to cut',
  'bar-lengths': 'Bars by length',
  'dowel-holes': 'Dowel holes',
  'mesh-buy': 'Mesh to buy',
  'mesh-cuts': 'Mesh pieces',
  'mesh-rests': 'Mesh left over',
  'mesh-used': 'Mesh to cut from',
};

export const steelColumns: Readonly<Record<SteelColumnKey, string>> = {
  'bar-count': 'Bars',
  'bar-pieces': 'Pieces',
  'bar-size': 'Size',
  'bar-way': 'Way',
  from: 'From',
  'from-start': 'From its start',
  hole: 'Hole',
  left: 'Left',
  'mesh-form': 'What',
  piece: 'Piece',
  seam: 'Seam',
  'used-mesh': 'Sheet or roll',
};

export const steelCounts: Readonly<
  Record<SteelCountUnit, { readonly one: string; readonly many: string }>
> = {
  bar: { one: 'bar', many: 'bars' },
  dowel: { one: 'dowel', many: 'dowels' },
  roll: { one: 'roll', many: 'rolls' },
  tie: { one: 'tie', many: 'ties' },
  chair: { one: 'chair', many: 'chairs' },
};

export const steelTerms: Readonly<Record<SteelTermKey, string>> = {
  'form-roll': 'roll',
  'form-sheet': 'sheet',
  'way-across': 'across',
  'way-along': 'along',
  'way-corner': 'inside corners',
  'set-epoxy': 'epoxy',
  'set-sleeve': 'greased, in a sleeve',
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
  'bars-size':
    'Bars can’t be counted: the spacing and the length of a bar must be more than nothing, cover and lap not below it. Set them under practices.',
  'bars-stock-short':
    'A lap of {lap} must be no more than half a bar of {stock}, and the bars at inside corners no longer than one. Set a longer bar, a shorter lap or corner bar.',
  'bars-no-room':
    'With {cover} of cover on every edge no room is left for bars. Make the cover smaller, or leave the bars out.',
  'bars-too-many':
    'At {spacing} apart this would come to more than {most}. Look for a spacing that was typed wrong.',
  'dowels-size':
    'Dowels can’t be counted: the spacing must be more than nothing and not far too small, the distance from corners not below nothing.',
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
  'bar-caps':
    'A bar end that stands up, or that someone could fall on, runs a person through. Cap every one, or bend it over. Bars are heavy and spring: carry long ones by two, and wear gloves.',
  'dowels-meet':
    'Dowels of neighbouring edges would meet inside the old slab where it is marked. Leave one of each two out, or set them shorter.',
  'dowels-drill':
    'Drilling into concrete gives off silica dust, which harms the lungs for good: drill with water or suction, and wear a respirator that fits. Look for pipes and cables in the old slab first.',
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
  'bars-laid':
    '{size} bars along the longest side and across it, no more than {spacing} apart, {cover} in from every edge. Laps are {lap} ({diameters} diameters). A piece shorter than a lap is left out. This is no structural design.',
  'dowels-off':
    'No dowels into the old slab. Some crews want them, so that neither slab rises over the other; some won’t have them, as they tie the new slab to one that moves, and crack it. Under practices they can be turned on.',
  'dowels-epoxy':
    'Dowels are set in epoxy, {depth} deep in the middle of the old slab’s depth, level and square to the edge, {fromCorner} or more from corners. Keep them as far from the old slab’s own joints. Grease the half in the new slab where it should still move. Blow the holes clean, and wear gloves: epoxy burns.',
  'dowels-sleeve':
    'Dowels lie greased in a sleeve, {depth} deep in the middle of the old slab’s depth, level and square to the edge, {fromCorner} or more from corners, so that the slabs can part and not rise. Keep them as far from the old slab’s own joints.',
  'steel-lifted':
    'The steel is lifted to its height as the concrete is placed, so no chairs are counted. It is easily trodden down again: lift it last, and look.',
};
