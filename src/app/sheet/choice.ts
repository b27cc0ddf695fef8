import type { UnitStyle } from '../../job/job.ts';
import { PAGE_KINDS, type PageKind, USUAL_PAGES } from '../../sheet/pageKinds.ts';
import { PAPER_NAMES, type PaperName, TURNS, type Turn, usualPaper } from '../../sheet/papers.ts';

/** What the sheet is printed on. Turn and scale: null for what fits largest; a scale by its name. */
export interface SheetChoice {
  readonly paper: PaperName;
  readonly turn: Turn | null;
  readonly scale: string | null;
  /** In the order of the sheet; never none. */
  readonly pages: readonly PageKind[];
  /** Null: on one page when the pad is small. */
  readonly onePage: boolean | null;
}

const KEY = 'notchpad-sheet';

function firstChoice(units: UnitStyle): SheetChoice {
  return {
    paper: usualPaper(units),
    turn: null,
    scale: null,
    pages: USUAL_PAGES,
    onePage: null,
  };
}

/** The paper and pages chosen last on this device, as far as they make sense to this version. The scale goes with a job. */
export function keptChoice(units: UnitStyle): SheetChoice {
  const first = firstChoice(units);
  try {
    return readChoice(JSON.parse(localStorage.getItem(KEY) ?? 'null'), first);
  } catch {
    return first;
  }
}

export function keepChoice({ paper, turn, pages }: SheetChoice): void {
  try {
    localStorage.setItem(KEY, JSON.stringify({ paper, turn, pages }));
  } catch {
    // Private windows may refuse; the choice then lasts as long as the page.
  }
}

export function readChoice(kept: unknown, first: SheetChoice): SheetChoice {
  if (typeof kept !== 'object' || kept === null) return first;
  const paper = PAPER_NAMES.find((one) => one === Reflect.get(kept, 'paper'));
  const turn = TURNS.find((one) => one === Reflect.get(kept, 'turn'));
  const listed: unknown = Reflect.get(kept, 'pages');
  const pages = Array.isArray(listed) ? PAGE_KINDS.filter((one) => listed.includes(one)) : [];
  return {
    ...first,
    ...(paper ? { paper } : {}),
    ...(turn ? { turn } : {}),
    ...(pages.length > 0 ? { pages } : {}),
  };
}

/** A page ticked or not; the last one stays, since a sheet of no pages is none. */
export function withPage(choice: SheetChoice, page: PageKind, printed: boolean): SheetChoice {
  const pages = PAGE_KINDS.filter((one) => (one === page ? printed : choice.pages.includes(one)));
  return pages.length > 0 ? { ...choice, pages } : choice;
}
