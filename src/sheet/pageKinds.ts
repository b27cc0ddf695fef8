/**
 * The pages of the crew sheet, in the order that a crew uses them. Which of them are printed is chosen by the user; what
 * stands in the way of a pour is said on the layout page and on the lists, whichever of them is printed.
 */
export const PAGE_KINDS = [
  'layout',
  'forms',
  'steel',
  'sections',
  'set-out',
  'pour',
  'order',
  'load',
  'proposal',
  'cautions',
  'code',
] as const;

export type PageKind = (typeof PAGE_KINDS)[number];

/** What is printed until somebody chooses: what goes to the customer is no part of what the crew gets. */
export const USUAL_PAGES: readonly PageKind[] = PAGE_KINDS.filter((one) => one !== 'proposal');
