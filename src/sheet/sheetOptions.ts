import type { DrawingWords } from '../drawing/words/en.ts';
import type { LayoutChoice } from '../takeoff/layout/layout.ts';
import type { PrintedCode } from './code/jobCode.ts';
import type { PageKind } from './pageKinds.ts';
import type { PaperName, Turn } from './papers.ts';
import type { Words } from './words/words.ts';

/** The dictionaries that the pages are written from. */
export interface PageWords {
  readonly sheet: Words;
  readonly drawing: DrawingWords;
  /** What whole sentences are written from, where that isn't the same: a page in two languages has each of them once. */
  readonly sentences?: Omit<PageWords, 'sentences'>;
}

export interface SheetOptions {
  readonly paper: PaperName;
  /** Which way the paper is turned; the one with the larger scale when not said. */
  readonly turn?: Turn;
  /** The name of one of the scales of the job's units; the largest that fits when not said. */
  readonly scale?: string;
  /** The pages to print; all of them when not said. */
  readonly pages?: readonly PageKind[];
  /** One page with what a small pad needs, instead of `pages`. */
  readonly onePage?: boolean;
  /** What to set out by; by rule when not said. */
  readonly setOut?: LayoutChoice;
  /** What opens a copy of the job on a phone; none is printed when not said. */
  readonly code?: PrintedCode;
  readonly words: PageWords;
  /** Written in the title block as it is: the sheet knows no clock. */
  readonly date?: string;
}
