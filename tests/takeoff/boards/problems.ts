import type { BoardDemand, BoardProblem, Stock } from '../../../src/takeoff/boards/plan.ts';
import type { Stretch } from '../../../src/takeoff/stakes/leastStakes.ts';
import type { Chance } from '../../random/chance.ts';

/** A run that needs so much, may run long by so much at either end, and may be spliced on these stretches. */
export function demand(
  run: string,
  need: number,
  { start = 0, end = 0, spliceOn = [] as readonly Stretch[] } = {},
): BoardDemand {
  return {
    run,
    start: { kind: start > 0 ? 'passes' : 'stops', past: 0, room: start },
    end: { kind: end > 0 ? 'passes' : 'stops', past: 0, room: end },
    need,
    most: need + start + end,
    spliceOn,
  };
}

export function truck(id: string, length: number, count: number): Stock {
  return { id, from: 'truck', length, count, price: 0 };
}

export function yard(id: string, length: number, price: number): Stock {
  return { id, from: 'yard', length, price };
}

export function problem(
  demands: readonly BoardDemand[],
  stock: readonly Stock[],
  { kerf = 0, shortest = 1, splices = false } = {},
): BoardProblem {
  return { size: '2x4', demands, stock, pricedBy: 'money', kerf, shortest, splices };
}

export interface Scale {
  readonly runs: readonly [least: number, most: number];
  readonly need: readonly [least: number, most: number];
  readonly long: number;
  readonly trucks: readonly [least: number, most: number];
  readonly count: number;
  readonly yards: readonly [least: number, most: number];
  readonly board: readonly [least: number, most: number];
  readonly kerf: readonly number[];
  readonly shortest: readonly number[];
}

/** A problem of this size by chance: some runs can run long, some are spliced anywhere, some at places, some nowhere. */
export function byChance(random: Chance, scale: Scale, splices: boolean): BoardProblem {
  const { whole, likely, oneOf } = random;
  const count = ([least, most]: readonly [number, number]) => whole(least, most);
  const demands = Array.from({ length: count(scale.runs) }, (_, at) => {
    const need = count(scale.need);
    const long = () => (likely(0.4) ? whole(0, scale.long) : 0);
    return demand(`run-${at}`, need, {
      start: long(),
      end: long(),
      spliceOn: places(random, need),
    });
  });
  const trucks = Array.from({ length: count(scale.trucks) }, (_, at) =>
    truck(`t${at}`, count(scale.board), whole(1, scale.count)),
  );
  const yards = Array.from({ length: count(scale.yards) }, (_, at) => {
    const length = count(scale.board);
    return yard(`y${at}`, length, length * whole(3, 5) + whole(0, 3));
  });
  return problem(demands, [...trucks, ...yards], {
    kerf: oneOf(scale.kerf),
    shortest: oneOf(scale.shortest),
    splices,
  });
}

function places({ whole, share }: Chance, need: number): readonly Stretch[] {
  const kind = share();
  if (kind < 0.2) return [];
  if (kind < 0.5) return [{ from: 1, to: Math.max(1, need - 1) }];
  const stretches: Stretch[] = [];
  for (let from = whole(1, Math.ceil(need / 3)); from < need; ) {
    const to = Math.min(need - 1, from + whole(0, Math.ceil(need / 4)));
    if (to >= from) stretches.push({ from, to });
    from = to + whole(1, Math.ceil(need / 3)) + 1;
  }
  return stretches;
}

/** Boards and runs in grid units as they are about a patio, whole inches. */
export const PATIO: Scale = {
  runs: [1, 14],
  need: [8128 * 10, 8128 * 260],
  long: 8128 * 24,
  trucks: [0, 5],
  count: 4,
  yards: [0, 4],
  board: [8128 * 24, 8128 * 192],
  kerf: [0, 1016],
  shortest: [8128 * 16, 8128 * 24, 8128],
};

/** Small enough to go through every plan that there is. */
export const TINY: Scale = {
  runs: [1, 3],
  need: [2, 7],
  long: 2,
  trucks: [0, 2],
  count: 2,
  yards: [0, 2],
  board: [2, 7],
  kerf: [0, 1],
  shortest: [1, 2, 3],
};
