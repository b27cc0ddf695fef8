import type { Mark } from '../drawing/marks.ts';
import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { furniture, line } from './furniture.ts';
import { printable } from './lettering.ts';
import type { Rect, SheetPage, SheetPart } from './page.ts';
import { type PageKind, USUAL_PAGES } from './pageKinds.ts';
import { bestPlan } from './pages/bestPlan.ts';
import type { ScaledPlan } from './pages/fitPlan.ts';
import { formsSheet } from './pages/formsPages.ts';
import { layoutPages, type PadLayout } from './pages/layoutPages.ts';
import { legendRows } from './pages/legend.ts';
import { listPages, sizePages } from './pages/listPages.ts';
import { onePage } from './pages/onePage.ts';
import { orderPages, proposalPages } from './pages/orderPages.ts';
import { padLayouts } from './pages/padLayouts.ts';
import { type PlanFrame, planFrames } from './pages/planFrame.ts';
import { type PlanPages, planPages } from './pages/planPage.ts';
import { pourPages } from './pages/pourPages.ts';
import { sectionPages } from './pages/sectionPages.ts';
import { steelSheet } from './pages/steelPages.ts';
import { TITLE_HEIGHT, titleBlock } from './pages/titleBlock.ts';
import { paperSize } from './papers.ts';
import type { SheetOptions } from './sheetOptions.ts';

/**
 * The crew sheet as pages for any painter: a dimensioned layout to scale with all its sizes, forms and stakes and the steel
 * to scale with their tables, what to tape, the plan of the pour, then lists (material, cautions, what was taken as so), each if it is wanted. The same job,
 * takeoff and options give the same pages.
 */
export function layoutSheet(
  job: Job,
  takeoff: Takeoff,
  options: SheetOptions,
): readonly SheetPage[] {
  const { layout } = options.words.sheet;
  const pads = padLayouts(job, takeoff, options);
  const drawn = options.onePage
    ? drawnOnOne(job, takeoff, options, pads)
    : drawnPages({ job, takeoff, options, pads });
  const size = paperSize(options.paper, drawn[0]!.frame.turn);
  const name = printable(job.name).text || layout.noName;
  const pages = drawn.length;
  return drawn.map(({ called, frame: { title }, parts, scaleName }, i): SheetPage => {
    const facts = { sheet: called, page: i + 1, pages, ...(scaleName ? { scale: scaleName } : {}) };
    return {
      ...size,
      title: `${name}: ${called}, ${layout.page(i + 1, pages)}`,
      parts: [...parts, furniture(titleBlock(job, title, facts, options))],
    };
  });
}

/** A page but for its title block. */
interface Drawn {
  readonly called: string;
  readonly frame: PlanFrame;
  readonly parts: readonly SheetPart[];
  /** The scale of its plan; absent on lists. */
  readonly scaleName?: string;
}

function drawnOnOne(
  job: Job,
  takeoff: Takeoff,
  options: SheetOptions,
  pads: readonly PadLayout[],
): readonly Drawn[] {
  const { layout } = options.words.sheet;
  const { frame, scaleName, plan, more } = onePage(job, takeoff, pads, options);
  return [
    ...planned(layout.layout, frame, scaleName, plan, options),
    ...onPages(layout.onePage, frame, more),
  ];
}

function onPages(
  called: string,
  frame: PlanFrame,
  pages: readonly (readonly Mark[])[],
): readonly Drawn[] {
  return pages.map((marks) => ({
    called,
    frame,
    parts: [furniture([...marks, ...outerFrame(frame)])],
  }));
}

/** What the pages are made from. */
interface Making {
  readonly job: Job;
  readonly takeoff: Takeoff;
  readonly options: SheetOptions;
  readonly pads: readonly PadLayout[];
}

function drawnPages(making: Making): readonly Drawn[] {
  const { job, takeoff, options, pads } = making;
  const { layout } = options.words.sheet;
  const wanted = pagesWanted(takeoff, options);
  // The first plan that is printed turns the paper of all.
  const scaled = wanted.has('layout') ? bestPlan(job, takeoff, options, pads) : undefined;
  const first = scaled?.frame.turn ?? options.turn;
  const forms = wanted.has('forms')
    ? formsSheet(job, takeoff, { turn: first, listArea }, options)
    : undefined;
  const turn = first ?? forms?.frame.turn;
  const steel = wanted.has('steel')
    ? steelSheet(job, takeoff, { turn, listArea }, options)
    : undefined;
  const frame = [scaled, forms, steel].find((plan) => plan)?.frame ?? listFrame(options);
  const area = listArea(frame);
  const listed = (called: string, pages: readonly (readonly Mark[])[]): readonly Drawn[] =>
    onPages(called, frame, pages);
  const own = [
    { stations: ['forms'] as const, called: layout.forms.title, sheet: forms },
    { stations: ['steel', 'joints'] as const, called: layout.steel.title, sheet: steel },
  ];
  // A station's own pages hold its tables and cautions: the lists leave them out.
  const apart = own.flatMap(({ stations, sheet }): readonly Station[] => (sheet ? stations : []));
  return [
    ...(scaled ? layoutPlan(making, scaled, listed) : []),
    ...own.flatMap(({ called, sheet }): readonly Drawn[] => {
      if (!sheet) return [];
      const { frame: on, scaleName, plan, tables } = sheet;
      return [...planned(called, on, scaleName, plan, options), ...listed(called, tables)];
    }),
    ...(wanted.has('sections') ? sectionsDrawn(making, frame) : []),
    ...(wanted.has('set-out') ? listed(layout.setOut, layoutPages(job, pads, area, options)) : []),
    ...(wanted.has('pour')
      ? listed(layout.pour.title, pourPages(job, takeoff, area, options))
      : []),
    ...(wanted.has('load')
      ? listed(layout.order.title, orderPages(job, takeoff, area, options))
      : []),
    ...(wanted.has('proposal')
      ? listed(layout.proposal.title, proposalPages(job, takeoff, area, options))
      : []),
    ...listed(layout.lists, listPages(job, takeoff, wanted, apart, area, options)),
  ];
}

/** Where nothing but lists is printed. */
function listFrame({ paper, turn = 'upright' }: SheetOptions): PlanFrame {
  return planFrames(paper, turn, [], false)[0]!;
}

function sectionsDrawn({ job, takeoff, options }: Making, frame: PlanFrame): readonly Drawn[] {
  const sections = sectionPages(job, takeoff, listArea(frame), options);
  return (sections?.pages ?? []).map((parts) => ({
    called: options.words.sheet.layout.sections.title,
    frame,
    parts: [...parts, furniture(outerFrame(frame))],
    scaleName: sections!.scaleName,
  }));
}

/** The plan, and the sizes that found no room on its page. */
function layoutPlan(
  { job, takeoff, options }: Making,
  scaled: ScaledPlan,
  listed: (called: string, pages: readonly (readonly Mark[])[]) => readonly Drawn[],
): readonly Drawn[] {
  const { layout } = options.words.sheet;
  const { frame, scale } = scaled;
  const legend = legendRows(job, takeoff, options.words);
  const { pages, left } = planPages(job, takeoff, scaled, legend, options);
  return [
    ...planned(layout.layout, frame, scale.name, pages, options),
    ...listed(layout.layout, sizePages(job, scaled.plan, left, listArea(frame), options)),
  ];
}

/** The pages of a plan, each part named where there are several. */
function planned(
  title: string,
  frame: PlanFrame,
  scaleName: string,
  pages: PlanPages['pages'],
  { words }: SheetOptions,
): readonly Drawn[] {
  const { part } = words.sheet.layout;
  return pages.map((parts, i) => ({
    called: pages.length > 1 ? `${title}, ${part(i + 1, pages.length)}` : title,
    frame,
    parts,
    scaleName,
  }));
}

/** The pages that are printed: those that were chosen, and what stands in the way whatever was chosen. */
function pagesWanted({ notes }: Takeoff, { pages = USUAL_PAGES }: SheetOptions) {
  const wanted = new Set<PageKind>(pages);
  if (notes.some(({ weight }) => weight === 'stop')) wanted.add('cautions');
  return wanted;
}

function listArea({ area }: PlanFrame): Rect {
  return { ...area, height: area.height - TITLE_HEIGHT };
}

function outerFrame({ area, title }: PlanFrame): readonly Mark[] {
  const right = area.x + area.width;
  return [
    line(area.x, area.y, right, area.y, 'frame'),
    line(area.x, area.y, area.x, title.y, 'frame'),
    line(right, area.y, right, title.y, 'frame'),
  ];
}
