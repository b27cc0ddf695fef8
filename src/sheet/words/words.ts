import type { en } from './en.ts';

/** Words for figures, workings, notes and problems in one language. */
export type SheetWords = typeof en;
/** The same, where no other room's words are about. */
export type Words = SheetWords;
