import { firstPlan } from './firstPlan.ts';
import type { BoardDemand, BoardProblem } from './plan.ts';
import { boardsOf, type LaidPiece, type UsedBoard } from './writePlan.ts';

/** A problem without splices whose plans are plans of another: some of its runs are divided once for all. */
export interface GivenPieces {
  readonly problem: BoardProblem;
  readonly start: readonly UsedBoard[];
  readonly back: (used: readonly UsedBoard[]) => readonly UsedBoard[];
}

/**
 * The problem with these runs divided as a plan divides them, each piece of its given length, and no other run spliced.
 * Undefined when that has no plan.
 */
export function givenPieces(
  problem: BoardProblem,
  used: readonly UsedBoard[],
  divided: (demand: number) => boolean,
): GivenPieces | undefined {
  const pieces = used.flatMap((board) => board.pieces);
  const demands: BoardDemand[] = [];
  const given: LaidPiece[] = [];
  for (const [at, demand] of problem.demands.entries()) {
    const own = pieces.filter((piece) => piece.demand === at);
    if (!divided(at) || own.length === 1) {
      demands.push({ ...demand, spliceOn: [] });
      given.push({ demand: at, from: 0, length: 0 });
      continue;
    }
    for (const [nth, piece] of own.entries()) {
      const end = { kind: 'stops', past: 0, room: 0 } as const;
      const { length } = piece;
      const run = `${demand.run} ${nth}`;
      demands.push({ run, start: end, end, need: length, most: length, spliceOn: [] });
      given.push(piece);
    }
  }
  const asked: BoardProblem = { ...problem, demands, splices: false };
  const first = firstPlan(asked);
  if ('none' in first) return undefined;
  return {
    problem: asked,
    start: boardsOf(asked, first.plan),
    back: (plan) =>
      plan.map(({ stock, pieces: cut }) => ({
        stock,
        pieces: cut.map((piece) => {
          const of = given[piece.demand]!;
          return of.length > 0 ? of : { ...piece, demand: of.demand };
        }),
      })),
  };
}
