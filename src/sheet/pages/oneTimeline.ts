import { drawTimeline } from '../../drawing/timeline.ts';
import type { PlacingResult } from '../../takeoff/placing/placingResult.ts';
import { furniture } from '../furniture.ts';
import type { SheetPage } from '../page.ts';
import type { PageWords } from '../sheetOptions.ts';

/** The day of the pour as a page of its own, as wide as was asked for and no higher than it needs: for a screen. */
export function oneTimeline(
  placing: PlacingResult,
  width: number,
  { drawing, sheet }: PageWords,
): SheetPage {
  const setting = { x: 1, y: 1, width: width - 2, words: drawing.timeline };
  const { marks, height } = drawTimeline(placing, setting);
  return {
    width,
    height: height + 2,
    title: sheet.layout.howItGoes,
    parts: [furniture(marks)],
  };
}
