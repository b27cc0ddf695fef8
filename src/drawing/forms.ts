import type { Practices } from '../job/job.ts';
import type { BoardsResult, FormRun, FormsResult } from '../takeoff/result.ts';
import { drawPieces } from './boards.ts';
import { addBox, asBox, BOARD } from './clearance.ts';
import { type Board, toMm } from './dimension/board.ts';
import {
  type BoardBand,
  bandOf,
  type Face,
  faceOf,
  type LaidPiece,
  laidPieces,
} from './laidBoards.ts';
import type { Mark } from './marks.ts';
import { bandPath, edgePath, movedRight, pathPoints } from './paths.ts';

/** The forms as they are drawn, with what is written beside them later. */
export interface DrawnForms {
  readonly marks: readonly Mark[];
  readonly pieces: readonly LaidPiece[];
  /** The inside faces of straight runs, by run. */
  readonly faces: ReadonlyMap<string, Face>;
  readonly band: BoardBand;
}

/**
 * Form boards outside the edges that they hold: where there is a board plan, every piece as it lies; bent boards, and all
 * where there is none, as a band along their edges.
 */
export function drawForms(
  board: Board,
  { runs }: FormsResult,
  boards: BoardsResult | undefined,
  practices: Practices,
): DrawnForms {
  const band = bandOf(practices, board.gridPerMm);
  const pieces = boards ? laidPieces(boards) : [];
  const planned = new Set(pieces.map(({ run }) => run));
  const faces = new Map(runs.filter(({ curved }) => !curved).map((run) => [run.mark, faceOf(run)]));
  const bands = runs.flatMap((run) => (planned.has(run.mark) ? [] : edgeBands(board, run, band)));
  const cut = drawPieces(board, pieces, faces, band, practices.boards.cleatLength);
  return { marks: [...bands, ...cut], pieces, faces, band };
}

/** The edges of a run as bands of the board's thickness. */
function edgeBands(
  board: Board,
  { edges }: FormRun,
  { inner, outer, thin }: BoardBand,
): readonly Mark[] {
  return edges.flatMap((edge): readonly Mark[] => {
    const middle = movedRight(edge, (inner + outer) / 2);
    const points = pathPoints(edgePath(middle), 4).map((point) => toMm(board, point));
    for (let i = 1; i < points.length; i++) {
      const half = (outer - inner) / 2 / board.gridPerMm;
      addBox(board.clearance, BOARD, asBox(points[i - 1]!, points[i]!, half, 0));
    }
    if (thin) return [{ kind: 'line', layer: 'forms', style: 'form', path: edgePath(middle) }];
    const path = bandPath(edge, outer);
    return [
      { kind: 'area', layer: 'forms', material: 'lumber', paths: [path] },
      { kind: 'line', layer: 'forms', style: 'board', path },
    ];
  });
}
