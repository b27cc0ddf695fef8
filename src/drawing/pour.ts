import type { EdgeKind, NetPour, PourEdge } from '../takeoff/outline/pour.ts';
import { EVERYTHING } from './clearance.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  toMm,
  wayFrom,
  write,
} from './dimension/board.ts';
import type { LineStyle, Mark } from './marks.ts';
import { edgePath, ringPath } from './paths.ts';

export const EDGE_STYLES: Readonly<Record<EdgeKind, LineStyle>> = {
  free: 'outline-free',
  'existing-slab': 'outline-existing',
  wall: 'outline-wall',
  'wall-formed': 'outline-wall-formed',
  steps: 'outline-steps',
  'block-out': 'outline-block-out',
};

export function pourArea({ pieces }: NetPour): readonly Mark[] {
  return pieces.map(({ rings }) => ({
    kind: 'area',
    layer: 'pour',
    material: 'fresh-concrete',
    paths: rings.map(ringPath),
  }));
}

/** Each edge of the pour in the line of its kind. */
export function pourEdges({ pieces }: NetPour): readonly Mark[] {
  return pieces.flatMap(({ rings }) =>
    rings.flatMap(({ edges }) =>
      edges.map(
        (edge): Mark => ({
          kind: 'line',
          layer: 'edges',
          style: EDGE_STYLES[edge.kind],
          path: edgePath(edge),
          feature: edge.feature,
        }),
      ),
    ),
  );
}

/** An edge at least this long (mm of output) gets the letter of its kind. */
const LETTERED_MM = 9;
/** Letters on paper are no smaller than this (ISO 3098, from memory). */
const LEAST_MM = 2.5;
const SHARES = [0.5, 0.35, 0.65, 0.22, 0.78, 0.12, 0.88];

/** The letter of an edge's kind, just inside it, wherever there is room: the line tells it too. */
export function letterEdges(board: Board, { pieces }: NetPour): void {
  for (const { rings } of pieces) {
    for (const { hole, edges } of rings) {
      for (const edge of edges) if (!(hole && edge.kind === 'block-out')) letterEdge(board, edge);
    }
  }
}

function letterEdge(board: Board, { from, to, arc, kind }: PourEdge): void {
  const [a, b] = [toMm(board, from), toMm(board, to)];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length < LETTERED_MM) return;
  const way = wayFrom(a, b);
  const left = { x: -way.y, y: way.x };
  const height = Math.max(LEAST_MM, board.lettering.height * 0.85);
  for (const share of SHARES) {
    let foot = along(a, way, share * length);
    let into = left;
    if (arc) {
      const centre = toMm(board, { x: arc.cx, y: arc.cy });
      const angle = Math.atan2(a.y - centre.y, a.x - centre.x) + share * arc.sweep;
      const ray = { x: Math.cos(angle), y: Math.sin(angle) };
      foot = along(centre, ray, arc.radius / board.gridPerMm);
      into = arc.sweep > 0 ? { x: -ray.x, y: -ray.y } : ray;
    }
    const middle = along(foot, into, height / 2 + 1.3);
    const lettered: Lettered = {
      text: board.words.letters[kind],
      at: { x: middle.x, y: middle.y - height / 2 },
      angle: 0,
      anchor: 'middle',
      height,
      style: 'small',
      layer: 'labels',
    };
    if (!isRoomFor(board, lettered, EVERYTHING)) continue;
    write(board, lettered);
    return;
  }
}
