/** Words of what is typed under the order's ticket. */
export const orderEn = {
  noOrder: 'Nothing to order yet. Draw a pad, or start from a rectangle.',
  parts: {
    prices: 'Prices',
    extras: 'Extras',
    hours: 'Hours',
    proposal: 'Proposal',
  },
  prices: {
    hint: 'Your own prices. They go along to your next job. Leave one empty when you don’t know it: it is then in no sum. Nought is for what costs nothing.',
    each: (one: string) => `/ ${one.replace(/^1 /, '')}`,
    file: 'Prices',
    save: 'Save prices as CSV',
    open: 'Open prices from CSV…',
    taken: (count: number) =>
      count === 1 ? 'One price was taken over.' : `${count} prices were taken over.`,
    refused: 'Nothing was changed. Mend these lines, and open the file again:',
    more: (count: number) => `And ${count} more.`,
    problems: {
      quote: (line: number) =>
        `Line ${line}: a quote is opened and never closed. Put one where the text ends.`,
      heads: (item: string, price: string) =>
        `The first line must name its columns: one “${item}”, one “${price}”. Save prices as CSV for one to start from.`,
      unknown: (line: number, item: string) =>
        `Line ${line}: “${item}” is on no line of this job. Take the line out, or correct its name.`,
      twice: (line: number, item: string) =>
        `Line ${line}: “${item}” was named before. Keep one of the two.`,
      price: (line: number, says: string) => `Line ${line}: ${says}`,
    },
  },
  extras: {
    hint: 'What no sketch asks for: fuel, a permit, a load of fill, the dump. They stay with this job.',
    newName: 'Something else',
    add: 'Put a line on the list',
    added: 'Put on the list. Type what it is.',
    row: (name: string) => `Extra: ${name}`,
    name: 'What',
    count: 'How many',
    price: 'Price of one',
    weight: 'Weight of one',
    remove: (name: string) => `Take ${name} off the list`,
    removeShort: 'Off the list',
  },
  hours: {
    hint: 'Hours of one person: two people for three hours are six. What is typed for this job goes before your rate; your rates go along to the next job.',
    typed: (task: string) => `${task}, this job`,
    rate: (task: string) => `${task}, your rate`,
  },
  proposal: {
    hint: 'One page for the customer, chosen at the Sheet station. It has the price and no cost of yours. What is left out and the terms go along to your next job.',
    scope: 'The work',
    exclusions: 'Not included',
    terms: 'Terms',
  },
};
