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
  'cautions',
  'code',
] as const;

export type PageKind = (typeof PAGE_KINDS)[number];
