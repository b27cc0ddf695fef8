/** Words of the depths taped down to the ground. */
export const groundEn = {
  title: 'Ground readings',
  hint: 'Stretch a string from form to form, or lay the screed board across, and tape down to the ground: five to nine places, evenly over the slab, not where it looks deep.',
  depthBy: 'Figure the volume with',
  by: {
    thickness: 'the thickness as set',
    readings: 'the mean of these readings',
  },
  none: 'None yet.',
  add: 'One more reading',
  addHint: 'Type the depth and press Enter.',
  row: (number: number) => `Reading ${number}`,
  depth: 'Depth',
  at: { x: 'Across', y: 'Up' },
  places:
    'Places can be left empty: then all readings weigh alike. Across and up are from the first corner of the pad; with all of them, a reading weighs as much as the ground nearest to it.',
  remove: (number: number) => `Take reading ${number} off the list`,
  removeShort: 'Take off',
};
