/** Words of the printed plan of the pour. */
export const pourSheetEn = {
  title: 'Pour plan',
  batches: 'Batches',
  tick: 'Tick each batch as it leaves the mixer',
  waterByBag: 'Water for each batch: as the bag says. Start with the least, and stop at the most.',
  noBatches:
    'Batches aren’t listed: see what is in the way, or take a larger mixer for so many bags.',
  checkpoints: 'Checkpoints',
  checkpointsSay:
    'By the net alone. When a batch more than this is gone, the ground takes more: send for bags now, not at the end.',
  counted: 'Counted',
};
