/** Words of the lists of mesh, on the truck and at the yard. */
export const meshEn = {
  title: 'Mesh on hand',
  fields: {
    form: 'What',
    length: 'Length',
    width: 'Width',
    count: 'How many',
    price: 'Price of one',
  },
  forms: { sheet: 'Sheet', roll: 'Roll' },
  truck: {
    title: 'On the truck',
    hint: 'Whole sheets, offcuts, or what is left of a roll. These are laid first.',
    none: 'None on the list: all mesh is to buy.',
    add: 'Put one on the truck',
    added: 'Put on the truck. Type what it is.',
  },
  yard: {
    title: 'At the yard',
    hint: 'Sheets and whole rolls that your yard sells, and what one costs. Leave the price empty when you don’t know it. A plan buys one kind: the cheapest, or the one of least area while a price is missing.',
    none: 'None listed: none can be bought.',
    add: 'Put one on the yard’s list',
    added: 'Put on the yard’s list. Type what it is.',
  },
  /** How sure the layout, or the cut plan of bars, is. */
  standing: {
    layout: 'Mesh layout',
    bars: 'Cut plan of the bars',
    first: 'The layout is the first answer: whether another takes less is not known.',
    least: 'Proved: no layout takes less, as area and lap alone need as much.',
    gap: (seconds: number, has: string, least: string) =>
      `Best found in ${seconds} s, not proved: it buys ${has}; area and lap alone would take ${least}.`,
    otherKind: (seconds: number) =>
      `Best found in ${seconds} s, not proved: none of its kind does with fewer, but another kind of your yard might cost less.`,
    truckOnly: (seconds: number) =>
      `Best found in ${seconds} s: laid from the truck’s mesh. One that begins fewer of them is not ruled out.`,
    cutting: {
      first: 'The plan is the first answer: whether another takes fewer bars is not known.',
      proved: (seconds: number) =>
        `Proved in ${seconds} s: no plan buys less bar. At that none has fewer cuts.`,
      gap: {
        price: (seconds: number, most: string) =>
          `Best found in ${seconds} s, not proved: another plan could cost at most ${most} less.`,
        length: (seconds: number, most: string) =>
          `Best found in ${seconds} s, not proved: another plan could buy at most ${most} less of bar.`,
        cuts: (seconds: number, most: string) =>
          `Best found in ${seconds} s. Proved: no plan buys less bar. Not proved: another could save ${most} at most.`,
      },
    },
  },
  row: (form: string, length: string, width: string) => `${form}, ${length} by ${width}`,
  remove: (what: string) => `Take ${what} off the list`,
  removeShort: 'Take off',
};
