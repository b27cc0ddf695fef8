import { type Point, samePoint } from '../geometry/point.ts';
import type { Attachment } from '../job/job.ts';
import type { Grid } from '../units/grid.ts';
import { type Bearing, bearingsFor, type Neighbour } from './bearings.ts';
import { nearestOn } from './nearest.ts';
import type { Site, SiteEdge } from './site.ts';

/** Why a point lies where it does; each has its word at the cursor. */
export type SnapReason =
  | 'first-corner'
  | 'corner'
  | 'middle'
  | 'edge'
  | 'square'
  | 'straight-on'
  | 'parallel'
  | 'extension'
  | 'across'
  | 'up'
  | 'step';

/** A thin line that shows what a point was lined up with. */
export interface Guide {
  readonly from: Point;
  readonly to: Point;
}

export interface Snap {
  /** On the grid. */
  readonly point: Point;
  /** Strongest first; two where the point is lined up with two things. */
  readonly reasons: readonly SnapReason[];
  /** Set when the point was put on another feature's edge, so that it stays there. */
  readonly on?: Attachment;
  readonly guides: readonly Guide[];
}

export interface SnapQuery {
  readonly at: Point;
  readonly site: Site;
  /** How near counts, grid units. */
  readonly reach: Grid;
  /** Free points and lengths fall on whole steps. */
  readonly step: number;
  /** Where steps are counted from when nothing is nearer: a corner of the job. */
  readonly datum: Point;
  /** Corners just before and after the one being placed, nearest first; each with the corner beyond it. */
  readonly neighbours: readonly Neighbour[];
  /** The first corner of an outline that may be closed. */
  readonly closeAt: Point | null;
  /** What is being moved never snaps to its own feature's corners and edges. */
  readonly moving: { readonly feature: string; readonly corner?: string } | null;
}

/**
 * Where a point goes, in this order of strength:
 * 1. the first corner, to close an outline; 2. another corner; 3. the middle of an edge; 4. an edge, and on it the place
 * where a bearing (square, straight on, parallel…) crosses it; 5. the crossing of two bearings; 6. one bearing, at a
 * whole step from where it starts; 7. whole steps across and up from the corner before, or from the datum.
 */
export function snap(query: SnapQuery): Snap {
  return (
    onFirst(query) ??
    onCorner(query) ??
    onMiddle(query) ??
    onEdge(query) ??
    onBearings(query) ??
    onSteps(query)
  );
}

function onFirst({ at, closeAt, reach }: SnapQuery): Snap | null {
  if (!closeAt || distance(at, closeAt) > reach) return null;
  return { point: closeAt, reasons: ['first-corner'], guides: [] };
}

function onCorner(query: SnapQuery): Snap | null {
  const { at, site, reach, moving } = query;
  let found: Point | null = null;
  let least = reach;
  for (const { feature, corner } of site.corners) {
    if (feature === moving?.feature) continue;
    const away = distance(at, corner);
    if (away > least) continue;
    found = corner;
    least = away;
  }
  if (!found) return null;
  const { x, y } = found;
  return withAttachment(query, { point: { x, y }, reasons: ['corner'], guides: [] });
}

/** A corner put on another feature's corner is kept at that end of its edge. */
function withAttachment({ site, moving }: SnapQuery, snapped: Snap): Snap {
  const straight = site.edges.filter(({ feature, arc }) => !arc && feature !== moving?.feature);
  const leaving = straight.find(({ from }) => samePoint(from, snapped.point));
  const coming = straight.find(({ to }) => samePoint(to, snapped.point));
  const edge = leaving ?? coming;
  if (!edge) return snapped;
  return {
    ...snapped,
    on: { feature: edge.feature, corner: edge.from.id, t: edge === leaving ? 0 : 1 },
  };
}

function onMiddle(query: SnapQuery): Snap | null {
  const reach = query.reach / 2;
  const edge = closestEdge(query, ({ middle }) => distance(query.at, middle), reach);
  if (!edge) return null;
  const { from, to, middle, feature, arc } = edge;
  return {
    point: middle,
    reasons: ['middle'],
    guides: arc ? [] : [{ from, to }],
    ...(arc ? {} : { on: { feature, corner: from.id, t: 0.5 } }),
  };
}

function onEdge(query: SnapQuery): Snap | null {
  const edge = closestEdge(query, (one) => nearestOn(one, query.at).distance, query.reach);
  if (!edge) return null;
  if (edge.arc) {
    const near = nearestOn(edge, query.at);
    return { point: onGrid(near), reasons: ['edge'], guides: [] };
  }
  const crossing = crossingWithBearing(query, edge);
  const near = crossing?.point ?? stepAlong(edge, query);
  const on = { feature: edge.feature, corner: edge.from.id, t: nearestOn(edge, near).t };
  return {
    point: near,
    reasons: crossing ? ['edge', crossing.bearing.reason] : ['edge'],
    on,
    guides: [
      { from: edge.from, to: edge.to },
      ...(crossing ? [{ from: crossing.bearing.through, to: near }] : []),
    ],
  };
}

function crossingWithBearing(
  query: SnapQuery,
  edge: SiteEdge,
): { readonly point: Point; readonly bearing: Bearing } | null {
  const line = { through: edge.from, dx: edge.to.x - edge.from.x, dy: edge.to.y - edge.from.y };
  let found: { readonly point: Point; readonly bearing: Bearing } | null = null;
  let least = query.reach;
  for (const bearing of bearingsFor(query)) {
    const crossing = crossingOf(line, bearing);
    if (!crossing || crossing.t < 0 || crossing.t > 1) continue;
    const away = distance(query.at, crossing.point);
    if (away > least) continue;
    found = { point: crossing.point, bearing };
    least = away;
  }
  return found;
}

/** On an edge, a whole step from the nearer of its ends. */
function stepAlong({ from, to }: SiteEdge, { at, step }: SnapQuery): Point {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.hypot(dx, dy);
  const along = ((at.x - from.x) * dx + (at.y - from.y) * dy) / length;
  const fromStart = along <= length / 2;
  const whole = toStep(fromStart ? along : length - along, step);
  const t = Math.min(length, Math.max(0, fromStart ? whole : length - whole)) / length;
  return onGrid({ x: from.x + t * dx, y: from.y + t * dy });
}

function onBearings(query: SnapQuery): Snap | null {
  const { at, reach, step } = query;
  const near = bearingsFor(query)
    .map((bearing) => ({ bearing, away: awayFrom(bearing, at) }))
    .filter(({ away }) => away <= reach)
    .sort((a, b) => a.bearing.rank - b.bearing.rank || a.away - b.away);
  const first = near[0]?.bearing;
  if (!first) return null;
  for (const { bearing } of near.slice(1)) {
    const crossing = crossingOf(first, bearing);
    if (crossing && !samePoint(first.through, bearing.through)) {
      const { point } = crossing;
      if (distance(at, point) <= reach && !samePoint(point, first.through)) {
        return {
          point,
          reasons:
            first.reason === bearing.reason ? [first.reason] : [first.reason, bearing.reason],
          guides: [guide(first, point), guide(bearing, point)],
        };
      }
    }
  }
  const along = alongOf(first, at);
  const whole = toStep(along, step);
  const point = onGrid(placeAlong(first, whole));
  return { point, reasons: [first.reason], guides: [guide(first, point)] };
}

function onSteps({ at, step, neighbours, datum }: SnapQuery): Snap {
  const from = neighbours[0]?.at ?? datum;
  const point = {
    x: from.x + Math.round(toStep(at.x - from.x, step)),
    y: from.y + Math.round(toStep(at.y - from.y, step)),
  };
  return { point, reasons: ['step'], guides: [] };
}

function guide(bearing: Bearing, to: Point): Guide {
  return { from: bearing.through, to };
}

function closestEdge(
  query: SnapQuery,
  away: (edge: SiteEdge) => number,
  reach: number,
): SiteEdge | null {
  let found: SiteEdge | null = null;
  let least = reach;
  for (const edge of query.site.edges) {
    if (edge.feature === query.moving?.feature) continue;
    const here = away(edge);
    if (here > least) continue;
    found = edge;
    least = here;
  }
  return found;
}

interface Line {
  readonly through: Point;
  readonly dx: number;
  readonly dy: number;
}

/** Where two lines cross, on the grid, and how far along the first (in its own length). */
function crossingOf(a: Line, b: Line): { readonly point: Point; readonly t: number } | null {
  const [sizeA, sizeB] = [Math.hypot(a.dx, a.dy), Math.hypot(b.dx, b.dy)];
  const cross = a.dx * b.dy - a.dy * b.dx;
  // Nearly parallel lines cross nowhere that a person means.
  if (Math.abs(cross) < sizeA * sizeB * SLIGHT) return null;
  const wx = b.through.x - a.through.x;
  const wy = b.through.y - a.through.y;
  const t = (wx * b.dy - wy * b.dx) / cross;
  return { point: onGrid({ x: a.through.x + t * a.dx, y: a.through.y + t * a.dy }), t };
}

/** Sine of 3°. */
const SLIGHT = 0.0523;

function awayFrom({ through, dx, dy }: Line, at: Point): number {
  return Math.abs((at.x - through.x) * dy - (at.y - through.y) * dx) / Math.hypot(dx, dy);
}

function alongOf({ through, dx, dy }: Line, at: Point): number {
  return ((at.x - through.x) * dx + (at.y - through.y) * dy) / Math.hypot(dx, dy);
}

function placeAlong({ through, dx, dy }: Line, along: number): Point {
  const size = Math.hypot(dx, dy);
  return { x: through.x + (along * dx) / size, y: through.y + (along * dy) / size };
}

function toStep(value: number, step: number): number {
  return Math.round(value / step) * step;
}

function onGrid({ x, y }: Point): Point {
  return { x: Math.round(x), y: Math.round(y) };
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
