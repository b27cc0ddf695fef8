import type { Point } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Grid } from '../../units/grid.ts';
import { placeAlong } from '../forms/along.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import type { FormRun, FormsResult } from '../result.ts';
import { FLAT_TURN } from './rules.ts';

/** Which end of a run. */
export type Which = 'start' | 'end';

/** A direction, of length 1. */
export interface Way {
  readonly x: number;
  readonly y: number;
}

/** Where a run ends and another begins. */
export interface RunCorner {
  readonly is: 'corner';
  readonly at: Point;
  readonly before: FormRun;
  readonly after: FormRun;
  /** Radians, left positive: an outside corner of the pour turns left, an inside one right. */
  readonly turn: number;
}

/** Where a run ends at an edge that needs no form. */
export interface FreeEnd {
  readonly is: 'end';
  readonly at: Point;
  readonly run: FormRun;
  readonly which: Which;
  /** The edge that goes on from there without a form. */
  readonly against: PourEdge;
}

export type RunEnd = RunCorner | FreeEnd;

/** The corners and ends of all runs, in the order of the runs; none where a run closes on itself. */
export function runEnds(pour: NetPour, { runs }: FormsResult): readonly RunEnd[] {
  const runOf = new Map(runs.flatMap((run) => run.edges.map((edge) => [edge, run] as const)));
  const neighbours = new Map<PourEdge, { readonly before: PourEdge; readonly after: PourEdge }>();
  for (const { edges } of pour.pieces.flatMap(({ rings }) => rings)) {
    edges.forEach((edge, i) => {
      neighbours.set(edge, { before: edges.at(i - 1)!, after: edges[(i + 1) % edges.length]! });
    });
  }
  return runs.flatMap((run): RunEnd[] => {
    const first = run.edges[0]!;
    const last = run.edges.at(-1)!;
    const { before } = neighbours.get(first)!;
    const { after } = neighbours.get(last)!;
    const ends: RunEnd[] = [];
    if (!runOf.has(before)) {
      ends.push({ is: 'end', at: first.from, run, which: 'start', against: before });
    }
    const next = runOf.get(after);
    if (!next) ends.push({ is: 'end', at: last.to, run, which: 'end', against: after });
    else if (next !== run) {
      const turn = turnBetween(wayAt(run, 'end'), wayAt(next, 'start'));
      ends.push({ is: 'corner', at: last.to, before: run, after: next, turn });
    }
    return ends;
  });
}

/** The way a run goes at one of its ends, start to end; a straight one as its board lies. */
export function wayAt(run: FormRun, which: Which): Way {
  if (run.curved) {
    const { outward } = placeAlong(run.edges, which === 'start' ? 0 : run.length);
    return { x: -Math.sin(outward), y: Math.cos(outward) };
  }
  const { from } = run.edges[0]!;
  const { to } = run.edges.at(-1)!;
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

function turnBetween(a: Way, b: Way): number {
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}

/** What the boards at a corner need past it, whole grid units; negative where one stops short of it. */
export type CornerNeed =
  | { readonly is: 'flat' }
  /** Either board can be the one that passes, by this; the other ends at the corner. */
  | { readonly is: 'outside'; readonly pass: Grid }
  | InsideNeed;

export interface InsideNeed {
  readonly is: 'inside';
  /** One board comes to the corner: its long point past it by this, where the corner is blunt. */
  readonly come: Grid;
  /** The other stops short of it. */
  readonly short: Grid;
}

/**
 * Boards stand outside the face, so at an outside corner one goes past by the other's thickness, t ÷ sin φ, and at an
 * inside corner, where they would lie in each other, one stops short by as much. Lengths are of the board's longer face.
 * Geometry, no source.
 */
export function cornerNeed(turn: number, thickness: Grid): CornerNeed {
  if (Math.abs(turn) < FLAT_TURN) return { is: 'flat' };
  const across = thickness / Math.sin(Math.abs(turn));
  if (turn > 0) return { is: 'outside', pass: toGrid(across) };
  const come = toGrid(Math.max(0, across * Math.cos(turn)));
  return { is: 'inside', come, short: toGrid(across) };
}
