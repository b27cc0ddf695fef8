import { boxOf } from '../geometry/box.ts';
import { locate } from '../geometry/locate.ts';
import type { Point } from '../geometry/point.ts';
import type { Feature, Job } from '../job/job.ts';
import type { Place } from './clearance.ts';
import {
  type Board,
  type Lettered,
  readingAngle,
  toGridPoint,
  toMm,
  wayFrom,
  writeFirst,
  writeWithLeader,
} from './dimension/board.ts';
import { keep } from './dimension/keyed.ts';
import { pathPoints, shapePath } from './paths.ts';
import { textWidth } from './textSize.ts';

/** Letters of one name on a plan; what is longer is cut, the whole stands in the lists. */
const LONGEST = 26;

/** A name as it stands on the plan: its own, or its kind. */
export function labelOf(feature: Feature, board: Board): string {
  const text = wholeLabel(feature, board);
  const letters = [...text];
  return letters.length > LONGEST
    ? `${letters
        .slice(0, LONGEST - 1)
        .join('')
        .trimEnd()}…`
    : text;
}

/** What a buried line carries is said whatever its name is: somebody may be hurt. */
function wholeLabel(feature: Feature, { words }: Board): string {
  const name = feature.name.trim();
  if (feature.kind !== 'utility-line') return name || words.kinds[feature.kind];
  const service = words.services[feature.service].name;
  return name ? words.serviceAndName(service, name) : service;
}

/** The names that features were given, as they stand on the plan. */
export function namesOf(board: Board, { features }: Job): ReadonlyMap<string, string> {
  const given = features.filter(({ name }) => name.trim() !== '');
  return new Map(given.map((feature) => [feature.id, labelOf(feature, board)]));
}

/** The name of each feature: inside it, else with a line to it, else by a letter in the list. */
export function drawLabels(board: Board, { features }: Job): void {
  for (const feature of features) {
    // A joint has its letter in the line.
    if (feature.kind === 'joint' && feature.name.trim() === '') continue;
    if (!board.named.has(feature.id)) drawLabel(board, feature);
  }
}

function drawLabel(board: Board, feature: Feature): void {
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
  const places = function* (): Generator<readonly [Lettered]> {
    for (const { at, angle } of spots) {
      const [x, y] = [(height / 2) * Math.sin(angle), (height / 2) * Math.cos(angle)];
      const lettered: Lettered = {
        text,
        at: { x: at.x + x, y: at.y - y },
        angle,
        anchor: 'middle',
        height,
        style,
        layer: 'labels',
        feature: feature.id,
      };
      yield [lettered];
    }
  };
  if (writeFirst(board, places())) return;
  const { minX, minY, maxX, maxY } = boxOf(points);
  const centre = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  const target = toMm(board, nearestTo(points, centre, path.closed));
  if (isCutOff(board, target)) return;
  const toward = { x: Math.SQRT1_2, y: Math.SQRT1_2 };
  if (!board.keeps) return;
  if (
    writeWithLeader(board, {
      target,
      toward,
      text,
      arrow: false,
      overOutline: true,
      style,
      feature: feature.id,
    })
  )
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

/** Shares of a shape's box, those near its middle first. */
const GRID: readonly Place[] = SHARES.flatMap((x) => SHARES.map((y) => ({ x, y }))).sort(
  (a, b) => Math.hypot(a.x - 0.5, a.y - 0.5) - Math.hypot(b.x - 0.5, b.y - 0.5),
);

/** Places where the whole text lies inside the shape, those near its middle first; level, then upright. */
function* insideSpots(
  board: Board,
  points: readonly Point[],
  width: number,
  height: number,
): Generator<Spot> {
  const ring = points.map((point) => toMm(board, point));
  const { minX, minY, maxX, maxY } = boxOf(ring);
  const isIn = (x: number, y: number) => locate({ x, y }, ring) !== 'outside';
  for (const angle of [0, Math.PI / 2]) {
    const [wide, high] = angle === 0 ? [width / 2, height / 2] : [height / 2, width / 2];
    if (maxX - minX < 2 * wide || maxY - minY < 2 * high) continue;
    for (const share of GRID) {
      const at = { x: minX + share.x * (maxX - minX), y: minY + share.y * (maxY - minY) };
      const fits =
        isIn(at.x - wide, at.y - high) &&
        isIn(at.x + wide, at.y + high) &&
        isIn(at.x - wide, at.y + high) &&
        isIn(at.x + wide, at.y - high) &&
        isIn(at.x, at.y);
      if (fits) yield { at, angle };
    }
  }
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
  const angle = readingAngle(way);
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

/** Whether a place lies where it won't be seen. */
function isCutOff({ window }: Board, { x, y }: Place): boolean {
  if (!window) return false;
  return x < window.minX || x > window.maxX || y < window.minY || y > window.maxY;
}
