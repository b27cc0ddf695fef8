/** Words of the tables that go out as CSV. */
export const csvEn = {
  /** In the place of a unit, where things are counted. */
  number: 'number',
  figures: 'Figures',
  heads: {
    station: 'Station',
    figure: 'Figure',
    shown: 'As read',
    number: 'Number',
    unit: 'Unit',
    kind: 'Kind',
  },
  prices: { item: 'Item', what: 'What it is', unit: 'Of', price: 'Price' },
  roles: { net: 'net', allowance: 'allowance', rounding: 'rounding', order: 'to get' },
};
