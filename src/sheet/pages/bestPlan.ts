import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { TURNS } from '../papers.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { fitPlan, type ScaledPlan } from './fitPlan.ts';
import type { PadLayout } from './layoutPages.ts';
import { legendRows } from './legend.ts';
import { planFrames } from './planFrame.ts';
import { lettersLack } from './planPage.ts';

/** The plan with the paper turned so that its scale is the larger; upright when both are alike. */
export function bestPlan(
  job: Job,
  takeoff: Takeoff,
  options: SheetOptions,
  pads: readonly PadLayout[],
): ScaledPlan {
  // Two pads may have other lines and marks: those of one are drawn, the others are told by name.
  const layouts = pads.filter(({ meant }) => meant).map(({ layout }) => layout);
  const legend = legendRows(job, takeoff, options.words);
  const hasNotices = lettersLack(job) || options.scale !== undefined;
  const turns = options.turn ? [options.turn] : TURNS;
  const frames = turns.flatMap((turn) => planFrames(options.paper, turn, legend, hasNotices));
  return fitPlan(job, takeoff, frames, { ...options, station: 'sheet', layouts });
}
