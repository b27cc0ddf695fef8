import type { Job } from '../../job/job.ts';
import { layoutSheet } from '../../sheet/layoutSheet.ts';
import type { SheetPage } from '../../sheet/page.ts';
import type { LayoutChoice } from '../../takeoff/layout/layout.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { AllWords } from '../words/words.ts';
import type { SheetChoice } from './choice.ts';

export type Laid = { readonly pages: readonly SheetPage[] } | { readonly failed: string };

/** The pages of the sheet; a layout that fails leaves the rest of the place at work, so another choice can be made. */
export function layOut(
  job: Job,
  takeoff: Takeoff,
  choice: SheetChoice,
  setOut: LayoutChoice,
  words: AllWords,
): Laid {
  try {
    const options = {
      paper: choice.paper,
      pages: choice.pages,
      setOut,
      ...(choice.turn ? { turn: choice.turn } : {}),
      ...(choice.scale ? { scale: choice.scale } : {}),
      date: new Intl.DateTimeFormat(undefined, { dateStyle: 'medium' }).format(new Date()),
      words,
    };
    return { pages: layoutSheet(job, takeoff, options) };
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) };
  }
}
