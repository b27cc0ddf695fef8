import type { SectionKind } from '../../drawing/sections/cut.ts';
import { cutOf, leastShown } from '../../drawing/sections/cutOf.ts';
import { placeCut } from '../../drawing/sections/placeCut.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { wrapped } from '../lettering.ts';
import type { SheetPage } from '../page.ts';
import { gridPerMmAt, sectionScalesFor } from '../scales.ts';
import type { PageWords } from '../sheetOptions.ts';
import { SECTION_SIDES } from './sectionPages.ts';

/** Clear paper round the section, mm. */
const CLEAR = 2;

/**
 * One section as a page of its own, as wide as was asked for and no higher than it needs: for a screen, where it is scaled to
 * fit. The largest scale at which it can be shown whole.
 */
export function oneSection(
  kind: SectionKind,
  job: Job,
  takeoff: Takeoff,
  width: number,
  { drawing }: PageWords,
): SheetPage {
  const { left, right } = leastShown(kind, job, takeoff);
  const beside = SECTION_SIDES.left + SECTION_SIDES.right + 2 * CLEAR;
  const scales = sectionScalesFor(job.units);
  const scale =
    scales.find((one) => beside + (left + right) / gridPerMmAt(one) <= width) ?? scales.at(-1)!;
  const gridPerMm = gridPerMmAt(scale);
  const edge = CLEAR + SECTION_SIDES.left + left / gridPerMm;
  const shown = {
    left,
    right: Math.max(right, (width - edge - SECTION_SIDES.right - CLEAR) * gridPerMm),
  };
  const { marks, bounds } = placeCut(cutOf(kind, job, takeoff, drawing, shown), {
    gridPerMm,
    units: job.units,
    words: drawing,
    rightMm: width - edge - CLEAR,
    lines: wrapped,
  });
  return {
    width,
    height: (bounds.maxY - bounds.minY) / gridPerMm + 2 * CLEAR,
    title: drawing.sections.titles[kind],
    parts: [{ marks, gridPerMm, from: { x: 0, y: bounds.maxY }, at: { x: edge, y: CLEAR } }],
  };
}
