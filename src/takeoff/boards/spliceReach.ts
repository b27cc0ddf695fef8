import type { Grid } from '../../units/grid.ts';
import type { Stretch } from '../stakes/leastStakes.ts';
import type { BoardDemand, BoardProblem } from './plan.ts';

/** How far the boards of a run may start before, and end after, what it needs. */
export function longBy({ start, end }: BoardDemand): { readonly start: Grid; readonly end: Grid } {
  return { start: start.room - start.past, end: end.room - end.past };
}

/** The shortest piece that a run may have: one shorter than the shortest piece gets a piece of its own length. */
export function leastPiece({ shortest }: BoardProblem, { need }: BoardDemand): Grid {
  return Math.max(1, Math.min(shortest, need));
}

/** How many pieces a run can have at most. */
export function mostPieces(problem: BoardProblem, demand: BoardDemand): number {
  if (!problem.splices || demand.spliceOn.length === 0) return 1;
  return Math.max(1, Math.floor(demand.most / leastPiece(problem, demand)));
}

/**
 * Where the boards of a run start, meet and end, with as few as there can be of them, none longer than `longest` and as
 * many of that as it takes. Undefined when there is no way: no splice allowed, or none where the boards would meet.
 */
export function fewestJoints(
  problem: BoardProblem,
  demand: BoardDemand,
  longest: Grid,
): readonly Grid[] | undefined {
  const least = leastPiece(problem, demand);
  const long = longBy(demand);
  if (longest < least) return undefined;
  const ends: Stretch = { from: demand.need, to: demand.need + long.end };
  const reached: (readonly Stretch[])[] = [[{ from: -long.start, to: 0 }]];
  const meet = problem.splices ? demand.spliceOn : [];
  let all: readonly Stretch[] = [];
  for (;;) {
    const last = reached.at(-1)!;
    const next = last.map(({ from, to }) => ({ from: from + least, to: to + longest }));
    const done = common(next, [ends])[0];
    if (done) return back(reached, done.from, least, longest);
    const splices = merged(common(next, meet));
    const wider = merged([...all, ...splices]);
    // Nothing that fewer boards hadn't reached: more of them reach no more.
    if (same(wider, all)) return undefined;
    all = wider;
    reached.push(splices);
  }
}

/** The joints by which `end` was reached, each as near to the next as it may be left. */
function back(
  reached: readonly (readonly Stretch[])[],
  end: Grid,
  least: Grid,
  longest: Grid,
): readonly Grid[] {
  const joints = [end];
  for (const stretches of reached.toReversed()) {
    const from = [{ from: joints[0]! - longest, to: joints[0]! - least }];
    const at = common(stretches, from);
    // A start that need not run long doesn't.
    joints.unshift(stretches === reached[0] ? at.at(-1)!.to : at[0]!.from);
  }
  return joints;
}

function common(a: readonly Stretch[], b: readonly Stretch[]): readonly Stretch[] {
  return a
    .flatMap((one) =>
      b.map((other) => ({
        from: Math.max(one.from, other.from),
        to: Math.min(one.to, other.to),
      })),
    )
    .filter(({ from, to }) => from <= to)
    .sort((one, other) => one.from - other.from);
}

function same(a: readonly Stretch[], b: readonly Stretch[]): boolean {
  return (
    a.length === b.length && a.every(({ from, to }, at) => from === b[at]!.from && to === b[at]!.to)
  );
}

function merged(stretches: readonly Stretch[]): readonly Stretch[] {
  const all: Stretch[] = [];
  for (const one of stretches.toSorted((a, b) => a.from - b.from)) {
    const last = all.at(-1);
    if (!last || one.from > last.to) all.push(one);
    else all[all.length - 1] = { from: last.from, to: Math.max(last.to, one.to) };
  }
  return all;
}
