/** What the thickened edge, the base and the edger are, in words, and how far practitioners differ. */
export const practicesEdgeEn = {
  fields: {
    thickenedUse: { label: 'Free edges are thickened' },
    thickenedDepth: { label: 'Thickened edge, whole depth' },
    thickenedWidth: { label: 'Thickened edge, width at the bottom' },
    thickenedTaper: { label: 'Thickened edge, run of the taper' },
    baseDepth: { label: 'Base under the slab' },
    retarder: { label: 'Vapour retarder under the slab' },
    edgeRadius: { label: 'Edger, radius' },
  },
  notes: {
    thickenedUse: {
      says: 'A trench inside the forms, along every free edge. Others thicken only the edges that carry or that wheels cross, or none: a patio rarely needs it. Where the ground freezes or something is carried, code and a licensed designer decide.',
      source: 'Common practice, no source.',
    },
    thickenedDepth: {
      says: 'From the finish down, the slab with it: seen from 8 to 12 in under a 4 in slab.',
      source: 'Common practice, no source. Local code comes first.',
    },
    thickenedWidth: {
      says: 'From the outside face in: seen from 8 to 12 in. A shovel’s width is the least that gets dug.',
      source: 'Common practice, no source.',
    },
    thickenedTaper: {
      says: 'How far in the bottom rises to the underside of the slab. As much as the rise makes 45°; 0 is a square step, which cracks sooner.',
      source: 'Common practice, no source.',
    },
    baseDepth: {
      says: 'Compacted stone or gravel. 0 is none: many small pads lie on firm ground. Seen: 4 in on ground that holds water.',
      source: 'Common practice; local code comes first.',
    },
    retarder: {
      says: 'Plastic right under the slab, for floors that are to stay dry. Outdoors most go without: bleed water then has one way less to go.',
      source: 'Common practice; local code comes first.',
    },
    edgeRadius: {
      says: 'Edgers of 1/4 to 1/2 in. 0 leaves the edge sharp, and it chips.',
      source: 'Common practice, no source.',
    },
  },
};
