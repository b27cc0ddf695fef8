import type { Mark } from '../drawing/marks.ts';
import type { Job } from '../job/job.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { furniture, line } from './furniture.ts';
import { printable } from './lettering.ts';
import type { Rect, SheetPage, SheetPart } from './page.ts';
import { fitPlan, type ScaledPlan } from './pages/fitPlan.ts';
import { formsSheet } from './pages/formsPages.ts';
import { layoutPages, type PadLayout } from './pages/layoutPages.ts';
import { legendRows, ROW_MM } from './pages/legend.ts';
import { listPages } from './pages/listPages.ts';
import { padLayouts } from './pages/padLayouts.ts';
import { type PlanFrame, planFrames } from './pages/planFrame.ts';
import { lettersLack, planParts } from './pages/planPage.ts';
import { TITLE_HEIGHT, titleBlock } from './pages/titleBlock.ts';
import { paperSize, type Turn } from './papers.ts';
import type { SheetOptions } from './sheetOptions.ts';

/**
 * The crew sheet: a dimensioned layout to scale, the forms and stakes to scale with their tables, what to tape, then lists
 * (material, what was taken as so, cautions), as pages for any painter. The same job, takeoff and options give the same pages.
 */
export function layoutSheet(
  job: Job,
  takeoff: Takeoff,
  options: SheetOptions,
): readonly SheetPage[] {
  const { layout } = options.words.sheet;
  const pads = padLayouts(job, takeoff, options);
  const scaled = bestPlan(job, takeoff, options, pads);
  const { frame, scale } = scaled;
  const size = paperSize(options.paper, frame.turn);
  const legend = legendRows(job, takeoff, options.words);
  const plan = planParts(job, takeoff, scaled, legend, options);
  const forms = formsSheet(job, takeoff, frame.turn, listArea, options);
  const above = listArea(frame);
  const lists = listPages(job, takeoff, plan.left, forms ? ['forms'] : [], above, options);
  const listed =
    (called: string) =>
    (marks: readonly Mark[]): Drawn => ({
      called,
      frame,
      parts: [furniture([...marks, ...outerFrame(frame)])],
    });
  const drawn: readonly Drawn[] = [
    { called: layout.layout, frame, parts: plan.parts, scaleName: scale.name },
    ...(forms
      ? [
          {
            called: layout.forms.title,
            frame: forms.frame,
            parts: forms.plan,
            scaleName: forms.scaleName,
          },
          ...forms.tables.map(listed(layout.forms.title)),
        ]
      : []),
    ...layoutPages(job, pads, above, options).map(listed(layout.setOut)),
    ...lists.map(listed(layout.lists)),
  ];
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

const TURNS: readonly Turn[] = ['upright', 'sideways'];

/** The plan with the paper turned so that its scale is the larger; upright when both are alike. */
function bestPlan(
  job: Job,
  takeoff: Takeoff,
  options: SheetOptions,
  pads: readonly PadLayout[],
): ScaledPlan {
  // Two pads may have other lines and marks: those of one are drawn, the others are told by name.
  const layouts = pads.filter(({ meant }) => meant).map(({ layout }) => layout);
  const legend = legendRows(job, takeoff, options.words).length * ROW_MM;
  const hasNotices = lettersLack(job) || options.scale !== undefined;
  const turns = options.turn ? [options.turn] : TURNS;
  const frames = turns.flatMap((turn) => planFrames(options.paper, turn, legend, hasNotices));
  return fitPlan(job, takeoff, frames, { ...options, station: 'sheet', layouts });
}
