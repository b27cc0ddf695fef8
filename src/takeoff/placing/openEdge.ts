import type { Strip } from './strips.ts';
import type { Timeline } from './timeline.ts';

/** How old an edge of fresh concrete gets before it is covered, minutes. */
export interface EdgeAge {
  readonly age: number;
  /** Of the strip whose edge it is. */
  readonly strip: number;
}

/**
 * The oldest that an open edge gets: along a strip until the next one comes by, and at the front of the pull from one batch to
 * the next. The sooner a strip is full, the younger its edge.
 */
export function oldestEdge(strips: readonly Strip[], { batches }: Timeline): EdgeAge {
  let oldest: EdgeAge = { age: 0, strip: 0 };
  const take = (age: number, strip: number) => {
    if (age > oldest.age) oldest = { age, strip };
  };
  let at = 0;
  const arrives = (area: number) => timeOf(batches, area);
  const starts = strips.map(({ area }) => {
    const start = at;
    at += area;
    return start;
  });
  strips.forEach((strip, i) => {
    const next = strips[i + 1];
    if (!next || next.piece !== strip.piece || strip.openEdge.length === 0) return;
    strip.profile.forEach((own, sample) => {
      const other = next.profile[sample]!;
      // No edge where the strip has no concrete: before its start, past its end.
      if (sample > 0 && own <= strip.profile[sample - 1]!) return;
      take(arrives(starts[i + 1]! + other) - arrives(starts[i]! + own), i);
    });
  });
  const ends = starts.map((start, i) => start + strips[i]!.area);
  batches.forEach(({ to, placed }, i) => {
    const before = batches[i - 1];
    if (!before) return;
    const strip = ends.findIndex((end) => placed <= end);
    take(to - before.to, Math.max(0, strip));
  });
  return oldest;
}

/** When the concrete of so much area lies. */
function timeOf(batches: Timeline['batches'], area: number): number {
  let low = 0;
  let high = batches.length - 1;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (batches[middle]!.placed >= area * (1 - 1e-9)) high = middle;
    else low = middle + 1;
  }
  return batches[low]?.to ?? 0;
}
