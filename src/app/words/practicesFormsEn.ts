/** What each practice of forms and stakes is, in words, and how far practitioners differ. */
export const practicesFormsEn = {
  fields: {
    formBoard: { label: 'Form board' },
    gapUnderForm: { label: 'Gap under the form' },
    stakeSpacing: { label: 'Stake spacing, at most' },
    stakeFromEnd: { label: 'First and last stake within' },
    curveSpacing: { label: 'Stake spacing on curves, at most' },
    curveFlat: { label: 'Board off the curve, at most' },
    kickersAbove: { label: 'Kickers where the form is higher than' },
    utilityTolerance: { label: 'Nothing driven nearer to a utility line than' },
    splices: { label: 'A run may be spliced from several boards' },
    cleatLength: { label: 'Cleat over a splice' },
    runLong: { label: 'A board may run past its corner by' },
    lapOn: { label: 'Form lapped onto an old slab by' },
    useTwisted: { label: 'Twisted boards may be used' },
    kerf: { label: 'Saw kerf' },
    shortest: { label: 'Shortest piece worth cutting or keeping' },
    currency: { label: 'Sign of the currency' },
    deflection: { label: 'Bow between stakes, at most' },
    deflectionShare: { label: 'Bow as a share of the spacing, at most' },
    elasticity: { label: 'Modulus of elasticity of the board' },
    stress: { label: 'Bending stress that the board may bear' },
    freshWeight: { label: 'Weight of wet concrete' },
    fasteningBy: { label: 'Forms are fastened with' },
    perStake: { label: 'At each stake' },
    perCorner: { label: 'At each corner' },
    perCleat: { label: 'At each cleat' },
    nailBox: { label: 'Nails are sold by boxes of' },
    screwsPerBox: { label: 'Screws in a box' },
    nailsPerPound: { label: 'Duplex nails in a pound' },
  },
  notes: {
    gapUnderForm: {
      says: 'Board depth and gap together give the depth of the pour. Set it to zero when the board sits on the ground.',
      source: 'Common practice, no source.',
    },
    stakeSpacing: {
      says: 'Seen: 2 ft, 32 in going to 24 in as the form gets deeper, 3 ft, 3 to 4 ft. Deeper forms and soft ground want them closer.',
      source: 'Published pages and trade manuals disagree; common practice.',
    },
    stakeFromEnd: {
      says: 'Seen: 6 to 12 in from each end, and one on each side of every joint of two boards.',
      source: 'Common practice, no source.',
    },
    curveSpacing: {
      says: 'A bent board springs back. Seen: 18 in on curves where straight runs have 36.',
      source: 'Common practice, no source.',
    },
    curveFlat: {
      says: 'Between stakes a bent board runs straighter than the arc that was drawn. The tighter the curve, the closer the stakes.',
      source: 'Our own default, no source.',
    },
    kickersAbove: {
      says: 'Seen: a second stake and a diagonal where the form is more than 6 in above ground; others brace every stake, and pack soil behind.',
      source: 'A published trade article; pages disagree.',
    },
    utilityTolerance: {
      says: 'The zone runs from 18 to 30 in on each side by state, counted from the outside of the pipe. Call before you dig, wait for the marks, and dig by hand inside the zone. Your call centre’s figure rules.',
      source: 'Common practice; the law of your state.',
    },
    splices: {
      says: 'Some never splice the edge that is seen. A splice wants a cleat behind it and a stake on each side.',
      source: 'Common practice, no source.',
    },
    cleat: {
      says: 'A board scabbed over the splice. Seen: 2 ft at least, and 4 ft.',
      source: 'Common practice, no source.',
    },
    runLong: {
      says: 'A board that runs on past its corner needs no cut, where the ground is clear. Nobody minds but the one who trips over it.',
      source: 'Our own default, no source.',
    },
    lapOn: {
      says: 'Where the free edge meets an old slab the form goes on along the slab’s side, so that it holds against it. It stops short where there is no room.',
      source: 'Our own default, no source.',
    },
    twisted: {
      says: 'The screed rides on the top edge: the straightest boards belong on the longest and most seen edges. Some use a twisted one on a short run between close stakes.',
      source: 'Common practice, no source.',
    },
    kerf: {
      says: 'What the blade takes: 1/8 in for most circular saws, less for thin blades. Measure a cut of your own.',
      source: 'Common practice, no source.',
    },
    shortest: {
      says: 'Seen: 16 in is the least that is worth a stake. Some keep everything.',
      source: 'Common practice, from memory.',
    },
    deflection: {
      says: 'Formwork texts: 1/16 in, and 1/360 of the spacing. The lesser counts. On low slab edges neither governs: stakes give way before the board does.',
      source: 'Formwork texts, from memory.',
    },
    deflectionShare: {
      says: 'Type it as 1/360. Others take 1/270 where the edge isn’t seen. The lesser of the two limits counts.',
      source: 'Formwork texts, from memory.',
    },
    elasticity: {
      says: 'Softwood framing lumber runs from about 1.0 to 1.7 million psi by species and grade; wet lumber is softer.',
      source: 'Common practice, from memory.',
    },
    stress: {
      says: 'Grades run from under 500 to 1,500 psi. This is no structural design: it only keeps stakes from standing too far apart.',
      source: 'Common practice, from memory.',
    },
    freshWeight: {
      says: 'Ordinary concrete: 140 to 150 lb/ft³. On a slab’s edge the whole depth presses like a liquid.',
      source: 'Published manuals: 150 lb/ft³.',
    },
    fastening: {
      says: 'Duplex nails pull out with a bar. Screws come out without a blow, and the stake can be set again.',
      source: 'Common practice, no source.',
    },
    perStake: {
      says: 'Through the stake into the form. Two is usual, so that the board can’t turn; some take one on low forms.',
      source: 'Common practice, no source.',
    },
    perCleat: {
      says: 'Four on either side of the splice is usual.',
      source: 'Common practice, no source.',
    },
    nailBox: {
      says: 'Sold by boxes of 1, 5 and more pounds. The list is rounded up to whole boxes.',
      source: 'Common practice, no source.',
    },
    nails: {
      says: 'Counts in a pound differ by box: 16d common 47 to 50, 8d 94 to 106. Duplex nails: use the count on your own box.',
      source: 'Published nail tables; duplex counts: your box.',
    },
  },
};
