import { boxOf } from '../geometry/box.ts';
import { locate } from '../geometry/locate.ts';
import type { Point } from '../geometry/point.ts';
import type { Feature, Job } from '../job/job.ts';
import type { Place } from './clearance.ts';
import {
  type Board,
  isRoomFor,
  type Lettered,
  toGridPoint,
  toMm,
  wayFrom,
  write,
  writeWithLeader,
} from './dimension/board.ts';
import { keep } from './dimension/keyed.ts';
import { pathPoints, shapePath } from './paths.ts';
import { textWidth } from './textSize.ts';

/** Letters of one name on a plan; what is longer is cut, the whole stands in the lists. */
const LONGEST = 26;

/** A name as it stands on the plan: its own, or its kind. */
export function labelOf({ name, kind }: Feature, board: Board): string {
  const text = name.trim() || board.words.kinds[kind];
  const letters = [...text];
  return letters.length > LONGEST
    ? `${letters
        .slice(0, LONGEST - 1)
        .join('')
        .trimEnd()}…`
    : text;
}

/** The name of each feature: inside it, else with a line to it, else by a number in the list. */
export function drawLabels(
  board: Board,
  { features }: Job,
  window?: { readonly contains: (at: Point) => boolean },
): void {
  for (const feature of features) drawLabel(board, feature, window);
}

function drawLabel(
  board: Board,
  feature: Feature,
  window?: { readonly contains: (at: Point) => boolean },
): void {
  const path = shapePath(feature.shape);
  if (!path) return;
  const text = labelOf(feature, board);
  const height = board.lettering.label;
  const points = pathPoints(path);
  const style = feature.kind === 'pad' ? 'title' : 'label';
  const width = textWidth(text, height);
  const spots = path.closed
    ? insideSpots(board, points, width, height)
    : besideSpots(board, points);
  for (const { at, angle } of spots) {
    if (window && !window.contains(toGridPoint(board, at))) continue;
    const lettered: Lettered = {
      text,
      at: { x: at.x + (height / 2) * Math.sin(angle), y: at.y - (height / 2) * Math.cos(angle) },
      angle,
      anchor: 'middle',
      height,
      style,
      layer: 'labels',
      feature: feature.id,
    };
    if (!isRoomFor(board, lettered)) continue;
    write(board, lettered);
    return;
  }
  const { minX, minY, maxX, maxY } = boxOf(points);
  const centre = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  const target = toMm(board, nearestTo(points, centre, path.closed));
  if (window && !window.contains(toGridPoint(board, target))) return;
  const toward = { x: Math.SQRT1_2, y: Math.SQRT1_2 };
  if (!board.keeps) return;
  if (writeWithLeader(board, { target, toward, text, arrow: false, style, feature: feature.id }))
    return;
  const place = toGridPoint(board, target);
  keep(board, { what: 'name', text, from: place, to: place, target, toward });
}

/** A point of a shape to point at: its middle when that lies inside, else the corner nearest to it. */
function nearestTo(points: readonly Point[], centre: Point, closed: boolean): Point {
  if (closed && locate(centre, points) === 'inside') return centre;
  const away = ({ x, y }: Point) => Math.hypot(x - centre.x, y - centre.y);
  return points.reduce((best, point) => (away(point) < away(best) ? point : best));
}

const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88];

interface Spot {
  readonly at: Place;
  readonly angle: number;
}

/** Places in a grid over the shape where the whole text lies inside it, those near the middle first; level, then upright. */
function insideSpots(
  board: Board,
  points: readonly Point[],
  width: number,
  height: number,
): readonly Spot[] {
  const ring = points.map((point) => toMm(board, point));
  const box = boxOf(ring);
  const spots = SHARES.flatMap((sx) =>
    SHARES.map((sy) => ({
      x: box.minX + sx * (box.maxX - box.minX),
      y: box.minY + sy * (box.maxY - box.minY),
      rank: Math.hypot(sx - 0.5, sy - 0.5),
    })),
  ).sort((a, b) => a.rank - b.rank);
  const fits = (at: Place, halfWide: number, halfHigh: number) =>
    [-1, 0, 1].every((i) =>
      [-1, 1].every(
        (j) => locate({ x: at.x + i * halfWide, y: at.y + j * halfHigh }, ring) !== 'outside',
      ),
    );
  const level = spots.filter((at) => fits(at, width / 2, height / 2));
  const upright = spots.filter((at) => fits(at, height / 2, width / 2));
  return [
    ...level.map((at) => ({ at, angle: 0 })),
    ...upright.map((at) => ({ at, angle: Math.PI / 2 })),
  ];
}

/** Places along a line, to both sides of it. */
function besideSpots(board: Board, points: readonly Point[]): readonly Spot[] {
  const spots: Spot[] = [];
  const ends = points.slice(1).map((to, i) => [toMm(board, points[i]!), toMm(board, to)] as const);
  const longest = [...ends].sort(
    ([a, b], [c, d]) => Math.hypot(d.x - c.x, d.y - c.y) - Math.hypot(b.x - a.x, b.y - a.y),
  )[0];
  if (!longest) return spots;
  const [a, b] = longest;
  const way = wayFrom(a, b);
  const flip = way.x < -1e-9 || (Math.abs(way.x) <= 1e-9 && way.y < 0);
  const angle = Math.atan2(flip ? -way.y : way.y, flip ? -way.x : way.x);
  const { label } = board.lettering;
  for (const share of SHARES) {
    for (const reach of [4.2 + label, -4.2 - label, label, -label]) {
      spots.push({
        at: {
          x: a.x + share * (b.x - a.x) - reach * way.y,
          y: a.y + share * (b.y - a.y) + reach * way.x,
        },
        angle,
      });
    }
  }
  return spots;
}
