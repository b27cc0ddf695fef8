import { useMemo, useRef } from 'react';
import type { Mark } from '../drawing/marks.ts';
import { drawPlan } from '../drawing/plan.ts';
import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { dimensionTexts } from './dimensionTexts.ts';
import type { DimensionText } from './hit.ts';
import { PX_PER_MM } from './paint/fontSize.ts';
import type { Selection } from './tools/tool.ts';
import type { View } from './view.ts';
import type { SketchWords } from './words/en.ts';

interface Drawn {
  readonly job: Job;
  readonly takeoff: Takeoff;
  readonly station: Station;
  readonly selection: Selection | null;
  readonly words: SketchWords;
}

/** The drawing at the zoom of a view. Looking aside draws nothing anew. */
export function useDrawing(
  { job, takeoff, station, selection, words }: Drawn,
  view: View | null,
): {
  readonly marks: readonly Mark[];
  /** Where dimension texts stand, worked out when a pointer asks. */
  readonly dimensions: () => readonly DimensionText[];
} {
  const gridPerPx = view?.gridPerPx ?? null;
  const selected = selection?.feature;
  const marks = useMemo(
    () =>
      gridPerPx === null
        ? []
        : drawPlan(job, takeoff, {
            station,
            scale: { gridPerMm: gridPerPx * PX_PER_MM },
            words: words.drawing,
            dimensions: true,
            ...(selected === undefined ? {} : { selected }),
          }),
    [job, takeoff, station, gridPerPx, words, selected],
  );
  const known = useRef<{
    readonly marks: readonly Mark[];
    readonly texts: readonly DimensionText[];
  } | null>(null);
  return {
    marks,
    dimensions() {
      const before = known.current;
      if (before && before.marks === marks) return before.texts;
      const texts = gridPerPx === null ? [] : dimensionTexts(marks, gridPerPx);
      known.current = { marks, texts };
      return texts;
    },
  };
}
