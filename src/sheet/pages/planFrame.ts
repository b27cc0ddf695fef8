import type { Takeoff } from '../../takeoff/result.ts';
import type { Rect } from '../page.ts';
import { type PaperName, paperSize, printArea, type Turn } from '../papers.ts';
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
}

const SIDE_WIDTH = 66;
const LEAST_SIDE_HEIGHT = 36;

/** The ways the page may be divided: upright with the lists under the plan; sideways with them beside or under it. */
export function planFrames(
  paper: PaperName,
  turn: Turn,
  legendHeight: number,
): readonly PlanFrame[] {
  return turn === 'upright'
    ? [planFrame(paper, turn, 'under', legendHeight)]
    : [
        planFrame(paper, turn, 'beside', legendHeight),
        planFrame(paper, turn, 'under', legendHeight),
      ];
}

function planFrame(
  paper: PaperName,
  turn: Turn,
  lists: PlanFrame['lists'],
  legendHeight: number,
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
  const sideHeight = Math.max(LEAST_SIDE_HEIGHT, legendHeight + 4);
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
