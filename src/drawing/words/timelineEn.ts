/** Words of the drawing of the day of the pour. Letters stand in its bars. */
export const timelineEn = {
  batches: 'Batch',
  letters: { placed: 'P', float: 'F', edge: 'E', trowel: 'T', broom: 'B' },
  placed: 'placed',
  float: 'floated',
  edge: 'edged',
  trowel: 'troweled',
  broom: 'broomed',
  bleeding: 'bleeding',
  firstSets: (time: string) => `first concrete sets ${time}`,
  lastPlaced: (time: string) => `last concrete placed ${time}`,
  more: (count: number) => `${count} more in the list`,
};
