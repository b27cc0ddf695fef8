import type { ArcOf, Point } from '../../geometry/point.ts';
import { toScreen } from '../view.ts';
import type { Look } from './paintMarks.ts';

/** Adds an edge, straight or an arc, to the path under way. */
export function traceEdge(
  context: CanvasRenderingContext2D,
  { from, to, arc }: { readonly from: Point; readonly to: Point; readonly arc?: ArcOf | null },
  { view, size }: Look,
): void {
  const start = toScreen(view, size, from);
  context.moveTo(start.x, start.y);
  if (arc) {
    const center = toScreen(view, size, { x: arc.cx, y: arc.cy });
    const begin = -Math.atan2(from.y - arc.cy, from.x - arc.cx);
    const radius = arc.radius / view.gridPerPx;
    context.arc(center.x, center.y, radius, begin, begin - arc.sweep, arc.sweep > 0);
  } else {
    const end = toScreen(view, size, to);
    context.lineTo(end.x, end.y);
  }
}
