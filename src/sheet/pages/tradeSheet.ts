import type { Mark } from '../../drawing/marks.ts';
import type { SheetPlan } from '../../drawing/plan.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { printable } from '../lettering.ts';
import type { Rect, SheetPart } from '../page.ts';
import { TURNS, type Turn } from '../papers.ts';
import { gridPerMmAt } from '../scales.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { type Block, flow, heading, paragraph } from './blocks.ts';
import { fitPlan } from './fitPlan.ts';
import { columnsOf, keyedBlocks, type Plain } from './jobBlocks.ts';
import type { LegendRow } from './legendRow.ts';
import { type PlanFrame, planFrames } from './planFrame.ts';
import { planPages, type UnmeasuredWords } from './planPage.ts';

/** The plan of a trade, the scale it is drawn at, and the tables that go with it. */
export interface TradeSheet {
  readonly frame: PlanFrame;
  readonly scaleName: string;
  /** The plan, page by page. */
  readonly plan: readonly (readonly SheetPart[])[];
  readonly tables: readonly (readonly Mark[])[];
}

/** What a trade puts on pages of its own. */
export interface Trade {
  readonly station: SheetPlan;
  readonly words: UnmeasuredWords & { readonly title: string; readonly from: string };
  readonly legend: (gridPerMm: number) => readonly LegendRow[];
  /** What stands under the words of the plan: tables, cautions. */
  readonly blocks: (width: number, plain: Plain) => readonly Block[];
  /** A column of its tables is at least this wide, mm. */
  readonly column: number;
}

/** How pages are turned, and where lists stand on them. */
export interface SheetSetting {
  /** As the paper of a plan before it is turned; when there is none, whichever way the scale is the larger. */
  readonly turn?: Turn | undefined;
  readonly listArea: (frame: PlanFrame) => Rect;
}

/** The pages of a trade: its plan to scale with a legend, then its tables and what to look out for. */
export function tradeSheet(
  job: Job,
  takeoff: Takeoff,
  { turn, listArea }: SheetSetting,
  options: SheetOptions,
  trade: Trade,
): TradeSheet {
  // Which rows there are hangs on the scale for what is too small to draw: the frame is made for all of them.
  const rows = trade.legend(0);
  const turns = turn ? [turn] : TURNS;
  const frames = turns.flatMap((one) => planFrames(options.paper, one, rows, true));
  const scaled = fitPlan(job, takeoff, frames, { ...options, station: trade.station });
  const legend = trade.legend(gridPerMmAt(scaled.scale));
  const { pages, left } = planPages(job, takeoff, scaled, legend, options, trade.words);
  const columns = columnsOf(listArea(scaled.frame), trade.column);
  const { width } = columns[0]!;
  let lacks = false;
  const plain: Plain = (said) => {
    const done = printable(said);
    if (done.lacks) lacks = true;
    return done.text;
  };
  const { unmeasured } = scaled.plan;
  const blocks = [
    ...keyedBlocks(job, left, width, options),
    heading(trade.words.title, width),
    ...paragraph(plain(trade.words.from), width),
    ...(unmeasured.length > 0
      ? paragraph(trade.words.unmeasured(unmeasured.join(', ')), width)
      : []),
    ...trade.blocks(width, plain),
  ];
  const lackWords = lacks ? paragraph(options.words.sheet.layout.lettersMissing, width) : [];
  return {
    frame: scaled.frame,
    scaleName: scaled.scale.name,
    plan: pages,
    tables: flow([...blocks, ...lackWords], columns),
  };
}
