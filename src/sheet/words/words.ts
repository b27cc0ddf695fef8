import type { en } from './en.ts';

/** SheetWords for figures, workings, notes and problems in one language. */
export type SheetWords = typeof en;
