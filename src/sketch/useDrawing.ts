import { useMemo, useRef } from 'react';
import type { Mark } from '../drawing/marks.ts';
import { drawPlan } from '../drawing/plan.ts';
import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Layout } from '../takeoff/layout/layout.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { dimensionTexts } from './dimensionTexts.ts';
import { detailFor, UNKNOWN_COST, withCost } from './drawingPace.ts';
import type { DimensionText } from './hit.ts';
import { PX_PER_MM } from './paint/fontSize.ts';
import type { Selection } from './tools/tool.ts';
import { useRests } from './useRests.ts';
import type { View } from './view.ts';
import type { SketchWords } from './words/en.ts';

interface Drawn {
  readonly job: Job;
  readonly takeoff: Takeoff;
  /** The takeoff is of an earlier job; that of this one is being figured. */
  readonly figuring: boolean;
  readonly station: Station;
  readonly layout: Layout | null;
  readonly selection: Selection | null;
  readonly words: SketchWords;
}

/**
 * The drawing at the zoom of a view. Looking aside draws nothing anew. A drawing too large to be made within a frame waits
 * until the hand lets go and the figures are those of the job; until then its dimensions, which would be of the job
 * before, are left out.
 * @param inHand Whether the job is the preview of a gesture under way.
 */
export function useDrawing(
  { job, takeoff, figuring, station, layout, selection, words }: Drawn,
  view: View | null,
  inHand: boolean,
): {
  /** All but the dimensions. */
  readonly marks: readonly Mark[];
  readonly dimensionMarks: readonly Mark[];
  /** False while something moves that leaves no time for dimensions. */
  readonly hasDimensions: boolean;
  /** Where dimension texts stand, worked out when a pointer asks. */
  readonly dimensions: () => readonly DimensionText[];
} {
  const gridPerPx = view?.gridPerPx ?? null;
  const selected = selection?.feature;
  const jobRests = useRests(job);
  const zoomRests = useRests(gridPerPx);
  const cost = useRef(UNKNOWN_COST);
  const last = useRef(NO_MARKS);
  const settled = jobRests && zoomRests && !inHand && !figuring;
  const detail = detailFor(settled, cost.current, last.current.marks.length);
  const outdated = inHand || figuring || !jobRests;

  const drawn = useMemo(() => {
    if (gridPerPx === null) return NO_MARKS;
    if (detail === 'last') {
      if (outdated) last.current = { ...last.current, dimensionMarks: NO_MARKS.dimensionMarks };
      return last.current;
    }
    const began = performance.now();
    const all = drawPlan(job, takeoff, {
      station,
      scale: { gridPerMm: gridPerPx * PX_PER_MM },
      words: words.drawing,
      dimensions: detail === 'full',
      layouts: layout ? [layout] : [],
      ...(selected === undefined ? {} : { selected }),
    });
    // Without a pour there is little to draw: that says nothing of the next time.
    if (takeoff.pour) cost.current = withCost(cost.current, detail, performance.now() - began);
    last.current = {
      marks: all.filter(({ layer }) => layer !== 'dimensions'),
      dimensionMarks: all.filter(({ layer }) => layer === 'dimensions'),
    };
    return last.current;
  }, [detail, outdated, job, takeoff, station, layout, gridPerPx, words, selected]);
  const { dimensionMarks } = drawn;

  const known = useRef<{
    readonly marks: readonly Mark[];
    readonly texts: readonly DimensionText[];
  } | null>(null);
  return {
    ...drawn,
    hasDimensions: detail === 'full',
    dimensions() {
      const before = known.current;
      if (before && before.marks === dimensionMarks) return before.texts;
      const texts = gridPerPx === null ? [] : dimensionTexts(dimensionMarks, gridPerPx);
      known.current = { marks: dimensionMarks, texts };
      return texts;
    },
  };
}

const NO_MARKS: Readonly<Record<'marks' | 'dimensionMarks', readonly Mark[]>> = {
  marks: [],
  dimensionMarks: [],
};
