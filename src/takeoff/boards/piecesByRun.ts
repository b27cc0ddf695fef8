import type { BoardPiece, BoardPlan } from './plan.ts';

/** The pieces of a plan run by run, each run's in the order in which they lie along it. */
export function piecesByRun({ boards }: BoardPlan): ReadonlyMap<string, readonly BoardPiece[]> {
  const byRun = new Map<string, BoardPiece[]>();
  for (const { pieces } of boards) {
    for (const piece of pieces) {
      const all = byRun.get(piece.run);
      if (all) all.push(piece);
      else byRun.set(piece.run, [piece]);
    }
  }
  for (const pieces of byRun.values()) pieces.sort((a, b) => a.from - b.from);
  return byRun;
}
