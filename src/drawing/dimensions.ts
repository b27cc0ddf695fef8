import type { Job } from '../job/job.ts';
import { axesAlong } from '../takeoff/layout/printedAcross.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { drawAngles } from './dimension/angles.ts';
import { drawArc, drawBeside } from './dimension/beside.ts';
import { drawHole } from './dimension/blockOuts.ts';
import type { Board } from './dimension/board.ts';
import {
  type Diagonal,
  diagonalsOf,
  drawDiagonals,
  letterDiagonals,
} from './dimension/diagonals.ts';
import {
  featureLoop,
  type Loop,
  type MeasuredSide,
  pourLoops,
  sideKey,
} from './dimension/loops.ts';
import { drawStrings } from './dimension/strings.ts';

export interface DimensionWishes {
  /** The selected feature: its own edges are measured first. */
  readonly selected?: string;
  /** Measure at most so many edges, the longest first. */
  readonly limit: number;
  /** Names of features that have one, by id. */
  readonly names: ReadonlyMap<string, string>;
  /** Diagonals and angles that aren't square, for building from. */
  readonly checks: boolean;
  /** Drawn already, to be lettered. */
  readonly diagonals: readonly Diagonal[];
}

/** The lines of every loop's diagonals, before all that is written. */
export function diagonalLines(board: Board, loops: readonly Loop[]): readonly Diagonal[] {
  const diagonals = loops
    .filter(({ hole }) => !hole)
    .flatMap((loop) => diagonalsOf(loop, axesAlong(loop.sides), board.units));
  drawDiagonals(board, diagonals);
  return diagonals;
}

/** The loops to measure: the selected feature's, then the pour's; without a pour, every pad's as drawn. */
export function loopsToMeasure(job: Job, takeoff: Takeoff, selected?: string): readonly Loop[] {
  const chosen = job.features.find(({ id }) => id === selected);
  const own = chosen && featureLoop(chosen);
  const rest = takeoff.pour
    ? pourLoops(takeoff.pour, job.features)
    : job.features.flatMap((feature) => {
        const loop =
          feature.kind === 'pad' && feature !== chosen ? featureLoop(feature) : undefined;
        return loop ? [loop] : [];
      });
  return own ? [own, ...rest] : rest;
}

/** Shorter on the output than this, an edge is measured only where a list keeps what finds no room. */
const LEAST_MM = 4;

/** Measures every loop, without overlap of texts, lines and symbols; each edge once. */
export function drawDimensions(
  board: Board,
  loops: readonly Loop[],
  { selected, limit, names, checks, diagonals }: DimensionWishes,
): void {
  const chosen = new Set(longest(board, loops, limit, selected));
  const seen = new Set<string>();
  const fresh = (sides: readonly MeasuredSide[]) =>
    sides.filter((side) => {
      if (!chosen.has(side) || seen.has(sideKey(side)) || side.length === 0) return false;
      seen.add(sideKey(side));
      return true;
    });
  const outers = loops.filter(({ hole }) => !hole);
  // First what has to be set out, then what is there already and only has to be found again.
  const rest: MeasuredSide[] = [];
  const arcs: MeasuredSide[] = [];
  for (const loop of outers) {
    const sides = fresh(loop.sides);
    const straight = sides.filter(({ arc }) => !arc);
    const left = drawStrings(board, loop, straight, axesAlong(loop.sides), checks && loop.closed);
    for (const side of left) if (side.laidOut) drawBeside(board, side);
    rest.push(...left.filter(({ laidOut }) => !laidOut));
    arcs.push(...sides.filter(({ arc }) => arc));
  }
  for (const hole of loops.filter((loop) => loop.hole)) {
    const sides = fresh(hole.sides);
    if (sides.length === 0) continue;
    const outer = outerOf(hole, loops);
    const name = names.get(hole.blockOut ?? '') ?? '';
    rest.push(...(outer ? drawHole(board, hole, outer, name) : sides));
  }
  for (const side of arcs) drawArc(board, side);
  letterDiagonals(board, diagonals);
  for (const side of rest) {
    if (side.arc) drawArc(board, side);
    else drawBeside(board, side);
  }
  if (checks) for (const loop of outers) drawAngles(board, loop);
}

/** The outer loop of the piece that a hole is in: the pour lists it before its holes. */
function outerOf(hole: Loop, loops: readonly Loop[]): Loop | undefined {
  return loops.slice(0, loops.indexOf(hole)).findLast((loop) => !loop.hole);
}

function longest(
  board: Board,
  loops: readonly Loop[],
  limit: number,
  selected: string | undefined,
): readonly MeasuredSide[] {
  const sides = loops.flatMap((loop) => loop.sides);
  const large = board.keeps
    ? sides
    : sides.filter(({ length }) => length >= LEAST_MM * board.gridPerMm);
  if (large.length <= limit) return large;
  const rank = (side: MeasuredSide) => (side.measures?.feature === selected && selected ? 1 : 0);
  return [...large].sort((a, b) => rank(b) - rank(a) || b.length - a.length).slice(0, limit);
}
