import { turn } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import { onGrid } from '../edge.ts';
import { type EdgeOf, findEdge, withCorners } from '../find.ts';
import type { Corner, Job } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';
import { placedAt } from '../settle.ts';

export interface SetEdgeLength {
  readonly do: 'set-edge-length';
  readonly feature: string;
  /** The corner at which the edge starts. */
  readonly corner: string;
  /** Straight from corner to corner, also under an arc. */
  readonly length: Grid;
  readonly moves: 'start' | 'end';
  /**
   * 'side' (unless said): the neighbouring edge slides along, so that every edge keeps its direction and square stays
   * square. 'corner': one corner alone moves.
   */
  readonly carry?: 'corner' | 'side';
}

/** The edge grows along its own line; its direction is kept to the grid. */
export function setEdgeLength(job: Job, command: SetEdgeLength): Outcome {
  const found = findEdge(job, command.feature, command.corner);
  if (!found.ok) return found;
  const { length } = command;
  if (!Number.isSafeInteger(length)) return refuse('not-on-grid', command.feature);
  if (length <= 0) {
    return refuse('size-not-positive', command.feature, { facts: { seen: length } });
  }
  const walk = walkFrom(found.value, command.moves);
  const places = command.carry === 'corner' ? cornerMoved(walk, length) : sideSlid(walk, length);
  if (!places) {
    const { x, y } = walk.moves;
    return refuse('edge-turns-over', command.feature, { at: [{ x, y }] });
  }
  const corners = found.value.outline.corners.map((corner) => {
    const to = places.get(corner.id);
    return to ? placedAt(job, corner, to) : corner;
  });
  return { ok: true, value: withCorners(job, found.value, corners) };
}

/** Corners from the one that stays, over the one that moves, on round the outline (or to the end of an open line). */
interface Walk {
  readonly stays: Corner;
  readonly moves: Corner;
  /** After `moves`, in order. */
  readonly rest: readonly Corner[];
  readonly closed: boolean;
}

type Places = ReadonlyMap<string, Point>;

function walkFrom({ outline, index, endIndex }: EdgeOf, moves: 'start' | 'end'): Walk {
  const { corners, closed } = outline;
  const [stays, mover] = moves === 'end' ? [index, endIndex] : [endIndex, index];
  const round = [...corners.slice(mover + 1), ...corners.slice(0, mover)];
  const forward = closed ? round : corners.slice(mover + 1);
  const backward = closed ? round.toReversed() : corners.slice(0, mover).toReversed();
  return {
    stays: corners[stays] as Corner,
    moves: corners[mover] as Corner,
    rest: (moves === 'end' ? forward : backward).filter((corner) => corner !== corners[stays]),
    closed,
  };
}

/** How far the moving corner goes, along the edge. */
function shift({ stays, moves }: Walk, length: Grid): Point {
  const dx = moves.x - stays.x;
  const dy = moves.y - stays.y;
  const scale = length / Math.hypot(dx, dy);
  const to = onGrid(dx * scale, dy * scale);
  return { x: to.x - dx, y: to.y - dy };
}

function moved(corner: Corner, by: Point): Point {
  return { x: corner.x + by.x, y: corner.y + by.y };
}

function cornerMoved(walk: Walk, length: Grid): Places {
  return new Map([[walk.moves.id, moved(walk.moves, shift(walk, length))]]);
}

/**
 * Slides the neighbouring edge along: its near end with the edge's own end, its far end along the line of the edge
 * beyond it. Where the neighbour runs on straight over a corner, all of it is the side and slides. Null when an edge
 * would vanish or turn over.
 */
function sideSlid(walk: Walk, length: Grid): Places | null {
  const by = shift(walk, length);
  const places = new Map<string, Point>([[walk.moves.id, moved(walk.moves, by)]]);
  let near = walk.moves;
  for (const [n, far] of walk.rest.entries()) {
    const beyond = walk.rest[n + 1] ?? (walk.closed ? walk.stays : undefined);
    if (beyond && turn(near, far, beyond) !== 0) {
      const to = slidAlong(near, far, beyond, by);
      const start = places.get(near.id) ?? near;
      if (!sameWay(far, beyond, to, beyond) || !sameWay(near, far, start, to)) return null;
      return places.set(far.id, to);
    }
    // An outline that has run straight on all the way round has no side to slide.
    if (beyond === walk.stays) return null;
    places.set(far.id, moved(far, by));
    near = far;
  }
  return places;
}

/** Where the line near → far, moved by `by`, meets the line far → beyond. */
function slidAlong(near: Point, far: Point, beyond: Point, by: Point): Point {
  const side = { x: far.x - near.x, y: far.y - near.y };
  const next = { x: beyond.x - far.x, y: beyond.y - far.y };
  const share = (by.x * side.y - by.y * side.x) / (next.x * side.y - next.y * side.x);
  const along = onGrid(share * next.x, share * next.y);
  return { x: far.x + along.x, y: far.y + along.y };
}

/** Whether the edge a → b and the edge c → d run the same way, neither of them without length. */
function sameWay(a: Point, b: Point, c: Point, d: Point): boolean {
  return (b.x - a.x) * (d.x - c.x) + (b.y - a.y) * (d.y - c.y) > 0;
}
