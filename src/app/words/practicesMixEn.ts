/** What the allowance, the mixer and the bags are, in words, and how far practitioners differ. */
export const practicesMixEn = {
  choices: {
    parts: 'Named parts',
    share: 'One share of the net',
  },
  fields: {
    wasteBy: { label: 'Allowance by' },
    wasteShare: { label: 'Allowance' },
    depthSpread: { label: 'Mean depth may be off by' },
    spreadTimes: { label: 'Allow for that, times' },
    spillage: { label: 'Spilled and left in the mixer' },
    minimumBags: { label: 'Allowance, at least this many bags' },
    halfBags: { label: 'Half bags may go into a batch' },
  },
  notes: {
    wasteBy: {
      says: 'A share hides what it is for. Named parts say it: what the ground may be off, what is spilled, what you add by hand. Each is taken of the net alone; openings are deducted already and never allowed for again.',
      source: 'Common practice, no source.',
    },
    depthSpread: {
      says: 'Until depths are taped. 1/4 in of mean depth is 7 % of a 3 1/2 in slab, and nobody sees it. Ground readings take its place.',
      source: 'Common practice, no source.',
    },
    spreadTimes: {
      says: 'Once is enough five times out of six; twice, nearly always. 0 leaves the ground to luck.',
      source: 'Statistics of a mean; how often is your own choice.',
    },
    spillage: {
      says: '1 to 2 % is seen with careful crews; two barrows of a large pour, less than 1 %.',
      source: 'Common practice, no source.',
    },
    minimumBags: {
      says: 'On a small job a share is less than one bag: 5 % of eight bags is half a bag. One or two bags are commonly kept at hand.',
      source: 'Common practice, no source.',
    },
    halfBags: {
      says: 'A half bag guessed by eye is off by a quarter of it, and the water with it: weigh it. An opened half keeps no better than a day.',
      source: 'Common practice, no source.',
    },
  },
  mix: {
    water: { least: 'Water for one bag, at least', most: 'Water for one bag, at most' },
    waterUnknown: 'Not known. Type what the bag says, like 3 qt or 2.8 L.',
    set: { initial: 'Initial set, at about 70 °F (21 °C)', final: 'Final set' },
    setCommon:
      'Set times as commonly said of such a mix. Type what the bag or its data sheet says.',
    setIsBag: 'The bag says the same',
    quarters: 'Write parts in quarters, like 2, 1 1/2 or 0.75.',
    minutes: 'Write a time like 30 min, 4 h or 4 h 30.',
    extras: 'Added to the allowance by hand',
    extraName: 'What for',
    extraVolume: 'Concrete',
    extraNameNeeded: 'Type what it is for.',
    addExtra: 'Add a part',
    newExtra: 'Soft ground',
    removeExtra: (name: string) => `Take out ${name}`,
  },
};
