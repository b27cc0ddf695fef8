import type { Mark, Path } from '../../src/drawing/marks.ts';

/** A painter that measures instead of painting: lengths in grid units, areas in square grid units, arcs as arcs. */
export function pathLength({ start, segments, closed }: Path): number {
  let sum = 0;
  let from = start;
  for (const { to, arc } of segments) {
    sum += arc ? arc.radius * Math.abs(arc.sweep) : Math.hypot(to.x - from.x, to.y - from.y);
    from = to;
  }
  return closed ? sum + Math.hypot(start.x - from.x, start.y - from.y) : sum;
}

/** Positive when the path runs counter-clockwise. */
export function pathArea({ start, segments }: Path): number {
  let sum = 0;
  let from = start;
  const add = (a: { x: number; y: number }, b: { x: number; y: number }) => {
    sum += (a.x - start.x) * (b.y - start.y) - (b.x - start.x) * (a.y - start.y);
  };
  for (const { to, arc } of segments) {
    add(from, to);
    if (arc) sum += arc.radius * arc.radius * (arc.sweep - Math.sin(arc.sweep));
    from = to;
  }
  return sum / 2;
}

export function measuredLength(marks: readonly Mark[], drawn: (mark: Mark) => boolean): number {
  return marks.reduce(
    (sum, mark) => (mark.kind === 'line' && drawn(mark) ? sum + pathLength(mark.path) : sum),
    0,
  );
}

export function measuredArea(marks: readonly Mark[], drawn: (mark: Mark) => boolean): number {
  return marks.reduce(
    (sum, mark) =>
      mark.kind === 'area' && drawn(mark)
        ? sum + mark.paths.reduce((whole, path) => whole + pathArea(path), 0)
        : sum,
    0,
  );
}
