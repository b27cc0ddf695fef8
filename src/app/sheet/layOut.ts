import type { Job } from '../../job/job.ts';
import type { PrintedCode } from '../../sheet/code/jobCode.ts';
import { layoutSheet } from '../../sheet/layoutSheet.ts';
import type { SheetPage } from '../../sheet/page.ts';
import { isSmallPad } from '../../sheet/pages/onePage.ts';
import { pageWords } from '../../sheet/words/pageWords.ts';
import type { LayoutChoice } from '../../takeoff/layout/layout.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { localeOf, type Speech } from '../speech.ts';
import type { SheetChoice } from './choice.ts';

export type Laid = { readonly pages: readonly SheetPage[] } | { readonly failed: string };

/** The pages of the sheet; a layout that fails leaves the rest of the place at work, so another choice can be made. */
export function layOut(
  job: Job,
  takeoff: Takeoff,
  choice: SheetChoice,
  setOut: LayoutChoice,
  { sheet, screen, terms }: Speech,
  code: PrintedCode | null,
): Laid {
  const language = sheet ?? screen;
  try {
    const options = {
      paper: choice.paper,
      pages: choice.pages,
      onePage: choice.onePage ?? isSmallPad(takeoff),
      setOut,
      ...(code ? { code } : {}),
      ...(choice.turn ? { turn: choice.turn } : {}),
      ...(choice.scale ? { scale: choice.scale } : {}),
      date: new Intl.DateTimeFormat(localeOf(language === 'both' ? 'en' : language), {
        dateStyle: 'medium',
      }).format(new Date()),
      words: pageWords(language, terms),
    };
    return { pages: layoutSheet(job, takeoff, options) };
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) };
  }
}
