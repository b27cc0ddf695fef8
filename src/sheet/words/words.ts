import type { en } from './en.ts';

/** What is said of figures, workings, notes and problems, in one language. */
export type Words = typeof en;
