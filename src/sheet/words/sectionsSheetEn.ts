/** Words of the pages of sections. */
export const sectionsSheetEn = {
  title: 'Sections',
  rest: 'What the job doesn’t know isn’t drawn to size: how deep what is there goes, how far a stake is driven. Depths are from the finish. Local code decides on thickness, base, steel and frost; nothing here is a structural design.',
  unplaced: (sizes: string) => `No room in the section for: ${sizes}.`,
};
