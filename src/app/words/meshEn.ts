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
  row: (form: string, length: string, width: string) => `${form}, ${length} by ${width}`,
  remove: (what: string) => `Take ${what} off the list`,
  removeShort: 'Take off',
};
