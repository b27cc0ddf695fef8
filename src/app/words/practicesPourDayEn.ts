/** What counts on the day of the pour, in words, and how far practitioners differ. */
export const practicesPourDayEn = {
  units: { minutes: 'min' },
  fields: {
    tripMinutes: { label: 'Trip for more bags, there and back' },
    marginMinutes: { label: 'Sent this much sooner' },
    patchDepthError: { label: 'Depth of a 2 ft patch may be off by' },
    frontError: { label: 'A tapped front may be off by' },
  },
  notes: {
    tripMinutes: {
      says: 'Door to door, with the wait at the counter and the loading. When the yard closes early, plan for the one that doesn’t.',
      source: 'Common practice, no source.',
    },
    marginMinutes: {
      says: 'A cold joint costs more than a trip for nothing: others send somebody as soon as there is doubt.',
      source: 'Common practice, no source.',
    },
    patchDepthError: {
      says: 'One standard deviation from patch to patch. Raked and tamped: 1/4 in. Left as dug: 1/2 in and more.',
      source: 'Common practice, no source.',
    },
    frontError: {
      says: 'Wet concrete ends in a slope, not in a line. Half a foot is good judging.',
      source: 'Common practice, no source.',
    },
  },
};
