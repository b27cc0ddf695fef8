/** Words of the thickened edge, and of a slab that is thin: figures, workings and notes. */
export const thickenedFigures = {
  'slab-volume': 'Slab, volume',
  'thickened-volume': 'Thickened edge, volume',
};

export const thickenedFormulas = {
  'slab-volume': 'Net area times thickness.',
  'thickened-volume':
    'How far the edge goes below the slab, times a mean area: all that lies within its width of a free edge counts whole, over the taper less and less. Corners are mitred, what two edges share counts once, and nothing outside the pour counts.',
};

export const thickenedInputs = {
  'thickened-depth': 'Depth of the edge, from the finish down',
  'thickened-width': 'Width of the edge at the bottom',
  'thickened-taper': 'Run of the taper',
  'thickened-below': 'Below the slab',
  'thickened-flat-area': 'Area within the width of a free edge',
  'thickened-whole-area': 'Area within width and taper of a free edge',
  'thickened-mean-area': 'Mean area',
};

export const thickenedNotes = {
  'thickened-not-deeper':
    'Volume and bags can’t be figured: the thickened edge goes {depth} down from the finish, the slab is {thickness} thick already. Type the whole depth of the edge, or turn it off under practices.',
  'thickened-used':
    'The slab is {thickness} thick, and {depth} along all free edges: {width} wide at the bottom, up to the slab over {taper}. No edge that meets something is thickened; where a free edge ends, its thickening ends square.',
  'edges-thickened':
    'The thickened edge is a trench in the ground inside the forms, {depth} down from the finish and {width} wide at the bottom. The form gets no deeper: a {board} stays, and the last {below} are cast against the ground. Ground that won’t stand so high needs a deeper board.',
  'slab-thin':
    'The slab is {thickness} thick. A published code for houses asks {least} at least of a slab on ground, more under wheels. Local code decides: ask your building department.',
  'trench-bank':
    'Under the form the outer bank of the trench stands {below} high and holds the concrete, and the gap of {gap} is open to it. Drive the stakes first, dig up to the inside face of the form and no farther, close the gap from outside, and clear loose soil from the bottom.',
};
