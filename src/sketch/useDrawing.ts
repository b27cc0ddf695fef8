import { useEffect, useMemo, useRef, useState } from 'react';
import type { Mark } from '../drawing/marks.ts';
import { drawPlan } from '../drawing/plan.ts';
import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { dimensionTexts } from './dimensionTexts.ts';
import { detailFor, UNKNOWN_COST, withCost } from './drawingPace.ts';
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

/** How long the hand rests before the whole drawing comes back. */
const REST_MS = 150;

/** The drawing at the zoom of a view. Looking aside draws nothing anew. */
export function useDrawing(
  { job, takeoff, station, selection, words }: Drawn,
  view: View | null,
): {
  readonly marks: readonly Mark[];
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
  const last = useRef<readonly Mark[]>([]);
  const detail = detailFor(jobRests && zoomRests, cost.current);

  const marks = useMemo(() => {
    if (gridPerPx === null) return [];
    if (detail === 'last') return last.current;
    const began = performance.now();
    last.current = drawPlan(job, takeoff, {
      station,
      scale: { gridPerMm: gridPerPx * PX_PER_MM },
      words: words.drawing,
      dimensions: detail === 'full',
      ...(selected === undefined ? {} : { selected }),
    });
    cost.current = withCost(cost.current, detail, performance.now() - began);
    return last.current;
  }, [detail, job, takeoff, station, gridPerPx, words, selected]);

  const known = useRef<{
    readonly marks: readonly Mark[];
    readonly texts: readonly DimensionText[];
  } | null>(null);
  return {
    marks,
    hasDimensions: detail === 'full',
    dimensions() {
      const before = known.current;
      if (before && before.marks === marks) return before.texts;
      const texts = gridPerPx === null ? [] : dimensionTexts(marks, gridPerPx);
      known.current = { marks, texts };
      return texts;
    },
  };
}

/** True once a value has stayed the same for a while. */
function useRests(value: unknown): boolean {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setRested(value), REST_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return rested === value;
}
