import type { Takeoff } from '../../takeoff/result.ts';
import type { Rect } from '../page.ts';
import { type PaperName, paperSize, printArea, type Turn } from '../papers.ts';
import { type LegendRow, legendColumns, ROW_MM } from './legendRow.ts';
import { TITLE_HEIGHT } from './titleBlock.ts';

/** Where things stand on the layout page. */
export interface PlanFrame {
  readonly turn: Turn;
  /** Whether legend, bars and list stand in three columns under the plan, or in one beside it. */
  readonly lists: 'under' | 'beside';
  readonly area: Rect;
  readonly title: Rect;
  readonly plan: Rect;
  readonly side: Rect;
  /** Where a plan over several pages shows its parts; absent when all of it is on this page. */
  readonly keyPlan?: Rect;
}

const SIDE_WIDTH = 66;
/** Clear paper over and under what stands beside the plan. */
const SIDE_MARGINS = 4;
/** Room for the bars, and for so many lines of notices under them. */
const BARS_HEIGHT = 32;
export const NOTICE_LINES = 5;
export const NOTICE_MM = 4.4;

/** The ways the page may be divided: upright with the lists under the plan; sideways with them beside or under it. */
export function planFrames(
  paper: PaperName,
  turn: Turn,
  legend: readonly LegendRow[],
  hasNotices: boolean,
): readonly PlanFrame[] {
  const least = BARS_HEIGHT + (hasNotices ? NOTICE_LINES : 2) * NOTICE_MM;
  const rows = Math.max(...legendColumns(legend).map(({ length }) => length));
  const under = planFrame(paper, turn, 'under', Math.max(least, rows * ROW_MM + 4));
  if (turn === 'upright') return [under];
  const beside = planFrame(paper, turn, 'beside', 0);
  // In one column the bars and notices stand under the legend, and must not run into the title block.
  const column = legend.length * ROW_MM + 3 + least + SIDE_MARGINS;
  return column <= beside.side.height ? [beside, under] : [under];
}

function planFrame(
  paper: PaperName,
  turn: Turn,
  lists: PlanFrame['lists'],
  sideHeight: number,
): PlanFrame {
  const area = printArea(paperSize(paper, turn));
  const title = { ...area, y: area.y + area.height - TITLE_HEIGHT, height: TITLE_HEIGHT };
  const above = { ...area, height: area.height - TITLE_HEIGHT };
  if (lists === 'beside') {
    const width = above.width - SIDE_WIDTH;
    return {
      turn,
      lists,
      area,
      title,
      plan: { ...above, width },
      side: { ...above, x: above.x + width, width: SIDE_WIDTH },
    };
  }
  const height = above.height - sideHeight;
  return {
    turn,
    lists,
    area,
    title,
    plan: { ...above, height },
    side: { ...above, y: above.y + height, height: sideHeight },
  };
}

/** Room above the plan for the word that no figures are given. */
const WITHHELD_MM = 13;

/** Where the plan itself may be drawn. */
export function roomFor({ plan }: PlanFrame, { pour }: Takeoff): Rect {
  const top = pour ? 0 : WITHHELD_MM;
  return { ...plan, y: plan.y + top, height: plan.height - top };
}

/** Room for a plan of the parts, and for what is said of them. */
const KEY_PLAN_MM = 36;

/** A frame that has room for a plan of the parts: under the bars, or beside the plan at the bottom. */
export function withKeyPlan(frame: PlanFrame): PlanFrame {
  const { lists, plan, side } = frame;
  if (lists === 'beside') {
    const keyPlan = { ...side, y: side.y + side.height - KEY_PLAN_MM, height: KEY_PLAN_MM };
    return { ...frame, side: { ...side, height: side.height - KEY_PLAN_MM }, keyPlan };
  }
  const top = plan.y + plan.height - KEY_PLAN_MM;
  return {
    ...frame,
    plan: { ...plan, height: plan.height - KEY_PLAN_MM },
    keyPlan: { ...plan, y: top, height: KEY_PLAN_MM },
  };
}
