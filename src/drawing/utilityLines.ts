import type { Job, Service, UtilityLine } from '../job/job.ts';
import type { Grid } from '../units/grid.ts';
import { addLine, UTILITY } from './clearance.ts';
import { type Board, toMm, wayFrom } from './dimension/board.ts';
import { writeInLine } from './inLine.ts';
import type { LineStyle, Mark, Path } from './marks.ts';
import { pathPoints, shapePath } from './paths.ts';

/**
 * Each service has a line of its own: coloured on a screen as its marks on the ground are, told apart by dashes and by
 * the word in it on black-and-white paper.
 */
export const UTILITY_STYLES: Readonly<Record<Service, LineStyle>> = {
  electric: 'utility-electric',
  gas: 'utility-gas',
  communication: 'utility-communication',
  water: 'utility-water',
  'reclaimed-water': 'utility-reclaimed-water',
  sewer: 'utility-sewer',
};

export function utilityLines({ features }: Job): readonly UtilityLine[] {
  return features.filter((feature) => feature.kind === 'utility-line');
}

/** The ground that nothing is driven in: all that lies nearer to the line than the tolerance. */
export function toleranceBand({ id, shape }: UtilityLine, tolerance: Grid): readonly Mark[] {
  const path = shapePath(shape);
  if (!path || tolerance <= 0) return [];
  const points = pathPoints(path, 4);
  return points.slice(1).map((to, i) => ({
    kind: 'area',
    layer: 'ground',
    material: 'tolerance',
    paths: [withRoundEnds(points[i]!, to, tolerance)],
    feature: id,
  }));
}

/** All within a distance of a straight line, its ends taken as round. */
function withRoundEnds(from: Place, to: Place, reach: Grid): Path {
  const way = wayFrom(from, to);
  const side = { x: -way.y * reach, y: way.x * reach };
  const beside = (end: Place, by: 1 | -1) => ({ x: end.x + by * side.x, y: end.y + by * side.y });
  const round = ({ x, y }: Place) => ({ cx: x, cy: y, radius: reach, sweep: Math.PI });
  return {
    start: beside(from, -1),
    segments: [
      { to: beside(to, -1) },
      { to: beside(to, 1), arc: round(to) },
      { to: beside(from, 1) },
      { to: beside(from, -1), arc: round(from) },
    ],
    closed: true,
  };
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** No word where the line is hardly longer than it. */
const LEAST_MM = 14;

/** Nothing else is written over the lines. */
export function keepServicesClear(board: Board, lines: readonly UtilityLine[]): void {
  for (const { shape } of lines) {
    const path = shapePath(shape);
    const points = path ? pathPoints(path, 4).map((point) => toMm(board, point)) : [];
    points.slice(1).forEach((to, i) => {
      addLine(board.clearance, UTILITY, points[i]!, to);
    });
  }
}

/** What each line carries, written in the line itself wherever there is room, as buried lines are drawn. */
export function writeServices(board: Board, lines: readonly UtilityLine[]): void {
  for (const line of lines) {
    const path = shapePath(line.shape);
    if (!path) continue;
    const corners = [path.start, ...path.segments.map(({ to }) => to)];
    path.segments.forEach(({ to, arc }, i) => {
      if (!arc) writeAlong(board, line, toMm(board, corners[i]!), toMm(board, to));
    });
  }
}

function writeAlong(board: Board, { id, service }: UtilityLine, a: Place, b: Place): void {
  if (Math.hypot(b.x - a.x, b.y - a.y) < LEAST_MM) return;
  const text = board.words.services[service].short;
  writeInLine(board, { text, from: a, to: b, own: UTILITY, layer: 'labels', feature: id });
}
