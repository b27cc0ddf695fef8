import type { ArcOf, Point } from '../../geometry/point.ts';
import { toScreen } from '../view.ts';
import type { Look } from './look.ts';

interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly arc?: ArcOf | null;
}

/** Adds an edge, straight or an arc, to the path under way, as a stretch of its own. */
export function traceEdge(context: CanvasRenderingContext2D, edge: Edge, look: Look): void {
  const start = toScreen(look.view, look.size, edge.from);
  context.moveTo(start.x, start.y);
  goAlong(context, edge, look);
}

/** Goes on along an edge from where the path has come to. */
export function goAlong(
  context: CanvasRenderingContext2D,
  { from, to, arc }: Edge,
  { view, size }: Look,
): void {
  if (arc) {
    const center = toScreen(view, size, { x: arc.cx, y: arc.cy });
    // The page's y runs up and the screen's runs down: angles change their sign.
    const begin = -Math.atan2(from.y - arc.cy, from.x - arc.cx);
    const radius = arc.radius / view.gridPerPx;
    context.arc(center.x, center.y, radius, begin, begin - arc.sweep, arc.sweep > 0);
  } else {
    const end = toScreen(view, size, to);
    context.lineTo(end.x, end.y);
  }
}
