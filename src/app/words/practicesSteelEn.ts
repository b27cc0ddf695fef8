/** What each practice of steel is, in words, and how far practitioners differ. */
export const practicesSteelEn = {
  fields: {
    steelKind: { label: 'Steel' },
    meshStyle: { label: 'Mesh' },
    square: { label: 'One square' },
    meshWeight: { label: 'Mesh weight' },
    lapSides: { label: 'Lap at sides' },
    lapEnds: { label: 'Lap at ends' },
    leastPiece: { label: 'Smallest piece of mesh' },
    cover: { label: 'Cover at the edge' },
    chairs: { label: 'Chairs under the steel' },
    chairSpacing: { label: 'Chairs apart, at most' },
    tieSpacing: { label: 'Ties apart, at most' },
    friction: { label: 'Friction on the ground' },
    jointLength: { label: 'Length between joints' },
    steelStress: { label: 'Stress in the steel' },
  },
  choices: {
    mesh: 'Welded wire mesh',
    none: 'None',
    '6x6-W1.4': '6×6-W1.4×W1.4 (10 gauge)',
    '6x6-W2.0': '6×6-W2.0×W2.0 (8 gauge)',
    '6x6-W2.1': '6×6-W2.1×W2.1 (8 gauge, exactly)',
    '6x6-W2.9': '6×6-W2.9×W2.9 (6 gauge)',
    '6x6-W4.0': '6×6-W4.0×W4.0 (4 gauge)',
    '4x4-W1.4': '4×4-W1.4×W1.4 (10 gauge)',
    '4x4-W2.0': '4×4-W2.0×W2.0 (8 gauge)',
    '4x4-W2.1': '4×4-W2.1×W2.1 (8 gauge, exactly)',
    '4x4-W2.9': '4×4-W2.9×W2.9 (6 gauge)',
    '4x4-W4.0': '4×4-W4.0×W4.0 (4 gauge)',
    own: 'Another: type its square and weight',
  },
  notes: {
    steelKind: {
      says: 'Steel in a slab on the ground holds cracks tight; it doesn’t stop them. Some crews use none and rely on joints close together.',
      source: 'Trade pages disagree; no structural design.',
    },
    meshStyle: {
      says: 'The number after W is the area of one wire in hundredths of a square inch. What is sold as 8 gauge is W2.0 in tables (29 lb per 100 ft²) and W2.1 by the gauge itself (30 lb).',
      source: 'A published table of wire styles.',
    },
    lap: {
      says: 'Seen: one square, one square plus 2 in, 4 in, 6 in. Ask what your inspector wants.',
      source: 'Published pages disagree; common practice.',
    },
    cover: {
      says: 'From the edge of the pour to the nearest wire. Ground contact and salt want more. Ask locally.',
      source: 'Common practice, no source.',
    },
    chairs: {
      says: 'Chairs seen 2 to 6 ft apart. Some crews won’t have them and lift the mesh as they pour; lifted mesh is easily trodden down again. Wires 12 in apart and more let a foot through.',
      source: 'Trade pages disagree; common practice.',
    },
    drag: {
      says: 'Friction 1.5 is common on a granular base, less on a sheet of plastic. Stress: two thirds or three quarters of the yield of the steel (65,000 psi for drawn wire, 60,000 for bars).',
      source: 'An industry engineering note; the shares disagree.',
    },
  },
};
