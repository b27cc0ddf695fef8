/** Words of the page of the order and of the customer's proposal. */
export const orderSheetEn = {
  title: 'Order and load',
  plot: 'Bags or truck: cost over volume',
  keyBags: 'Bags',
  keyTruck: 'Truck',
  keyJob: 'This job',
};

export const proposalEn = {
  title: 'Proposal',
  scope: 'The work',
  noScope: 'Not written yet: type it at the Order station.',
  exclusions: 'Not included',
  noExclusions: 'Nothing was named.',
  terms: 'Terms',
  noTerms: 'None were written.',
  price: 'Price',
  noPrice: 'No price yet: the order lacks prices or hours. See the Order station.',
  tax: { none: 'Tax is not included.', in: 'Tax is included.' },
  customer: 'Customer, date',
  contractor: 'Contractor, date',
};
