/** What each practice of joints is, in words, and how far practitioners differ. */
export const practicesJointsEn = {
  units: { degrees: '°', fluidOunces: 'fl oz', millilitres: 'mL' },
  fields: {
    jointLayout: { label: 'Joints' },
    jointFactor: { label: 'Panels, at most this many thicknesses' },
    jointCap: { label: 'Panels, never longer than' },
    jointRatio: { label: 'Length over width, at most' },
    jointLeast: { label: 'Panels, no narrower than' },
    jointAngle: { label: 'Sharpest corner' },
    jointMade: { label: 'Joints are' },
    jointShare: { label: 'Joint depth, of the thickness' },
    jointLeastDepth: { label: 'Joint depth, at least' },
    existing: { label: 'Strip against existing slab' },
    wall: { label: 'Strip against walls' },
    steps: { label: 'Strip against steps' },
    blockOut: { label: 'Strip round block-outs' },
    bondAtPatch: { label: 'Patches bonded to the old slab, no strip' },
    stripThickness: { label: 'Strip, thickness' },
    stripRecess: { label: 'Strip, top kept low by' },
    pieceLength: { label: 'Strip, length of one piece' },
    sealJoints: { label: 'Control joints sealed' },
    sealWidth: { label: 'Groove, width' },
    sealDepth: { label: 'Sealant, depth' },
    backer: { label: 'Backer rod under it' },
    sealStrip: { label: 'Sealed over the strip' },
    cartridge: { label: 'One cartridge holds' },
  },
  choices: {
    proposed: 'Proposed, round those drawn',
    'by-hand': 'Those drawn by hand alone',
    tooled: 'Tooled (grooved)',
    sawn: 'Sawn',
  },
  notes: {
    jointLayout: {
      says: 'Proposed joints are the shortest that obey the rules below, laid round those that you draw. Take them over under the ticket to move or take away single ones.',
      source: 'Our own search.',
    },
    jointSpacing: {
      says: '24 for stone under 3/4 in, 30 for larger, 36 for a stiff mix: 8, 10 or 12 ft in a 4 in slab. Walks often every 5 ft. Caps seen: 15, 16 and 18 ft.',
      source: 'Published tables that disagree.',
    },
    jointRatio: {
      says: 'As square as can be; long narrow panels crack across the middle. Slivers and sharp corners break off.',
      source: 'A published guide (1.5); the others are common practice.',
    },
    jointDepth: {
      says: 'A quarter of the thickness; a Canadian standard says up to a third. A shallow groove cracks nothing.',
      source: 'Published guides.',
    },
    isolation: {
      says: 'Filler seen from 1/4 in to 1 in thick, where new concrete meets anything that stays. It lets the slab move without cracking.',
      source: 'Published specifications disagree.',
    },
    bondAtPatch: {
      says: 'A small missing piece can be made one with the slab it fills: roughened, clean and wet, or with a bonding agent. Otherwise it is kept apart like the rest.',
      source: 'Common practice, no source.',
    },
    sealant: {
      says: 'Many leave grooves in patios and walks open. Sealed ones keep water and grit out, and want sealing again after some years. Common: half as deep as wide, never thinner than 1/4 in.',
      source: 'Common practice, no source.',
    },
  },
};
