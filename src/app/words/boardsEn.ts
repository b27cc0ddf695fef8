/** Words of the lists of boards, on the truck and at the yard. */
export const boardsEn = {
  title: 'Boards on hand',
  size: (size: string) => size.replace('x', '×'),
  fields: { size: 'Size', length: 'Length', count: 'Count', price: 'Price' },
  twisted: 'Twisted',
  straight: 'straight',
  truck: {
    title: 'On the truck',
    hint: 'The forms are cut from these first. The screed rides on the top edge, so a twisted board makes a wavy slab: the plan leaves it out unless the practices say otherwise.',
    none: 'No boards on the list: all of them are to buy.',
    row: (count: number, size: string, length: string, how: string) =>
      `${count} of ${size}, ${length}, ${how}`,
    add: 'Put on the truck',
    added: (count: number, size: string, length: string) =>
      `${size}, ${length}: ${count} on the truck now.`,
  },
  yard: {
    title: 'At the yard',
    hint: (size: string) =>
      `Lengths of ${size} that your yard sells, and what one costs. Leave the price empty when you don’t know it.`,
    none: (size: string) => `No ${size} listed: none can be bought.`,
    row: (size: string, length: string) => `${size}, ${length}`,
    add: 'Put on the yard’s list',
    added: (size: string, length: string, price: string) => `${size}, ${length}: ${price}.`,
    noPrice: 'price not known',
    others: (count: number) => `Other sizes (${count})`,
  },
  remove: (what: string) => `Take ${what} off the list`,
  removeShort: 'Take off',
};
