import type { Mark } from '../drawing/marks.ts';
import type { Job } from '../job/job.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { furniture, line } from './furniture.ts';
import { printable } from './lettering.ts';
import type { Rect, SheetPage } from './page.ts';
import { fitPlan, type ScaledPlan } from './pages/fitPlan.ts';
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
 * The crew sheet: a dimensioned layout to scale, then lists (material, what was taken as so, cautions), as pages for any
 * painter. The same job, takeoff and options give the same pages.
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
  const plan = planParts(job, takeoff, scaled, options);
  const above = listArea(frame);
  const lists = listPages(job, takeoff, plan.left, above, options);
  const tables = [
    ...layoutPages(job, pads, above, options).map((marks) => ({ marks, called: layout.setOut })),
    ...lists.map((marks) => ({ marks, called: layout.lists })),
  ];
  const pages = 1 + tables.length;
  const name = printable(job.name).text || layout.noName;
  const block = (page: number, sheet: string, scaleName?: string) =>
    titleBlock(
      job,
      frame.title,
      { sheet, page, pages, ...(scaleName ? { scale: scaleName } : {}) },
      options,
    );
  return [
    {
      ...size,
      title: `${name}: ${layout.layout}, ${layout.page(1, pages)}`,
      parts: [...plan.parts, furniture([...block(1, layout.layout, scale.name)])],
    },
    ...tables.map(
      ({ marks, called }, i): SheetPage => ({
        ...size,
        title: `${name}: ${called}, ${layout.page(i + 2, pages)}`,
        parts: [furniture([...marks, ...outerFrame(frame), ...block(i + 2, called)])],
      }),
    ),
  ];
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
  return fitPlan(job, takeoff, frames, { ...options, layouts });
}
