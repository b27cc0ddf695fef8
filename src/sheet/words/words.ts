import type { en } from './en.ts';

/** Words for figures, workings, notes and problems in one language. */
export type Words = typeof en;
