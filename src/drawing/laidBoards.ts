import type { Point } from '../geometry/point.ts';
import type { Practices } from '../job/job.ts';
import { piecesByRun } from '../takeoff/boards/piecesByRun.ts';
import type { EndKind } from '../takeoff/boards/plan.ts';
import { DRESSED } from '../takeoff/forms/rules.ts';
import type { BoardsResult, FormRun } from '../takeoff/result.ts';

/** A piece of form board as it lies along the inside face of its run. */
export interface LaidPiece {
  /** 'A1': the board, and its place on it. */
  readonly mark: string;
  readonly run: string;
  /** Along the face from the corner at which the run starts, grid units; negative before that corner. */
  readonly from: number;
  readonly to: number;
  /** What becomes of its ends: where another piece of the run follows, it is spliced to it. */
  readonly start: EndKind | 'spliced';
  readonly end: EndKind | 'spliced';
}

/** Every piece of a board plan where it lies, along each run in order. */
export function laidPieces({ problem, plan }: BoardsResult): readonly LaidPiece[] {
  const byRun = piecesByRun(plan);
  return problem.demands.flatMap(({ run, start, end }) => {
    const pieces = byRun.get(run) ?? [];
    return pieces.map(
      ({ mark, from, length }, i): LaidPiece => ({
        mark,
        run,
        from: from - start.past,
        to: from - start.past + length,
        start: i === 0 ? start.kind : 'spliced',
        end: i === pieces.length - 1 ? end.kind : 'spliced',
      }),
    );
  });
}

/** The straight line of a run's inside face. */
export interface Face {
  readonly origin: Point;
  /** Of length 1, along the face and out of it: the pour lies to the left. */
  readonly way: Point;
  readonly out: Point;
  readonly length: number;
}

export function faceOf({ edges }: Pick<FormRun, 'edges'>): Face {
  const origin = edges[0]!.from;
  const { to } = edges.at(-1)!;
  const length = Math.hypot(to.x - origin.x, to.y - origin.y);
  const way =
    length === 0
      ? { x: 1, y: 0 }
      : { x: (to.x - origin.x) / length, y: (to.y - origin.y) / length };
  return { origin, way, out: { x: way.y, y: -way.x }, length };
}

/** The place so far along a face and so far out of it, grid units. */
export function onFace({ origin, way, out }: Face, along: number, off: number): Point {
  return {
    x: origin.x + along * way.x + off * out.x,
    y: origin.y + along * way.y + off * out.y,
  };
}

/** Between which distances from the inside face boards are drawn, grid units. */
export interface BoardBand {
  readonly inner: number;
  readonly outer: number;
  /** To scale it would be too thin to be seen: drawn as a wide line a little off the face. */
  readonly thin: boolean;
}

/** Thinner than this on the output (mm), a board isn't drawn to scale. */
const THIN_MM = 0.7;
/** Where a board too thin for its scale is drawn, mm off the face: between the lines of the edge and the stakes. */
const THIN_BAND = { inner: 0.35, outer: 1.65 };

export function bandOf({ formBoard }: Practices, gridPerMm: number): BoardBand {
  const { thickness } = DRESSED[formBoard];
  return thickness < THIN_MM * gridPerMm
    ? { inner: THIN_BAND.inner * gridPerMm, outer: THIN_BAND.outer * gridPerMm, thin: true }
    : { inner: 0, outer: thickness, thin: false };
}
