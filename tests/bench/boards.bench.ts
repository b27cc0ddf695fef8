import { checkPlan } from '../../src/takeoff/boards/checkPlan.ts';
import { firstPlan } from '../../src/takeoff/boards/firstPlan.ts';
import type { BoardCost, BoardProblem } from '../../src/takeoff/boards/plan.ts';
import { searchPlan } from '../../src/takeoff/boards/searchPlan.ts';
import { cutting } from '../../src/takeoff/boards/writePlan.ts';
import { loadSolver } from '../../src/takeoff/solver/highs.ts';
import { FOOT, INCH } from '../../src/units/grid.ts';
import { chance } from '../random/chance.ts';
import { demand, problem, truck, yard } from '../takeoff/boards/problems.ts';

const PIECES = 60;
const SECONDS = 20;
const YARD = [
  [8, 598],
  [10, 812],
  [12, 974],
  [14, 1190],
  [16, 1360],
] as const;

/** Sixty runs of 2 to 7 ft, some with room to run long, and thirty boards on the truck that don't quite do. */
function sixty(splices: boolean): BoardProblem {
  const random = chance(60);
  const demands = Array.from({ length: PIECES }, (_, at) => {
    const need = random.whole(48, 168) * (INCH / 2);
    const end = random.likely(0.4) ? random.whole(2, 24) * INCH : 0;
    const on = { from: 16 * INCH, to: need - 16 * INCH };
    return demand(`r${at}`, need, { end, spliceOn: on.from <= on.to ? [on] : [] });
  });
  const trucks = [8, 10, 12, 9.25, 6.5].map((feet, at) => truck(`t${at}`, feet * FOOT, 6));
  const yards = YARD.map(([feet, price]) => yard(`y${feet}`, feet * FOOT, price));
  const kerf = INCH / 8;
  return problem(demands, [...trucks, ...yards], { kerf, shortest: 16 * INCH, splices });
}

/** The plain way: the longest run first, from the first board that it comes out of; else the cheapest of the yard. */
function firstFitDecreasing({ demands, stock, kerf }: BoardProblem): BoardCost {
  const racks = stock.flatMap((one) =>
    Array.from({ length: one.count ?? 0 }, () => ({
      stock: one,
      rest: one.length,
      pieces: [] as number[],
    })),
  );
  const yards = stock.filter(({ from }) => from === 'yard').sort((a, b) => a.price - b.price);
  for (const { need } of demands.toSorted((a, b) => b.need - a.need)) {
    let board = racks.find(({ rest }) => rest >= need);
    if (!board) {
      const bought = yards.find(({ length }) => length >= need)!;
      board = { stock: bought, rest: bought.length, pieces: [] };
      racks.push(board);
    }
    board.rest -= need + kerf;
    board.pieces.push(need);
  }
  const used = racks.filter(({ pieces }) => pieces.length > 0);
  return {
    price: used.reduce((sum, one) => sum + one.stock.price, 0),
    cuts: used.reduce((sum, one) => sum + cutting(one.stock.length, one.pieces, kerf).cuts, 0),
    splices: 0,
    waste:
      used.reduce((sum, one) => sum + one.stock.length, 0) -
      demands.reduce((sum, { need }) => sum + need, 0),
  };
}

/** The board plan: how soon there is an answer, how soon it is proved, and how it weighs against the plain way. */
export async function measureBoards(): Promise<void> {
  const solver = await loadSolver();
  for (const splices of [false, true]) {
    const asked = sixty(splices);
    const clock = () => performance.now() / 1000;
    firstPlan(asked);
    const begun = clock();
    const first = firstPlan(asked);
    const firstTook = clock() - begun;
    const found = searchPlan(asked, solver, { seconds: SECONDS, clock });
    if ('none' in first || 'none' in found) throw new Error('The bench has no plan.');
    if (checkPlan(asked, found.plan).length > 0) throw new Error('The plan has faults.');
    const plain = firstFitDecreasing(asked);
    const { proof, cost } = found.plan;
    const seconds = proof.is === 'first' ? 0 : proof.seconds;
    console.log(
      `${PIECES} runs, 30 boards on the truck, ${splices ? 'splices allowed' : 'no splices'}:`,
    );
    console.log(
      `  first answer in ${(firstTook * 1000).toFixed(0)} ms = ${(firstTook / seconds).toFixed(4)} of the search`,
    );
    const says =
      proof.is === 'gap'
        ? `${proof.of} ${cost[proof.of]}, no plan below ${proof.bound}`
        : 'best in all four';
    console.log(`  ${proof.is} after ${seconds.toFixed(1)} s: ${says}`);
    for (const of of ['price', 'cuts', 'splices', 'waste'] as const) {
      console.log(
        `  ${of.padEnd(8)} first-fit ${String(plain[of]).padStart(8)}   first ${ratio(first.plan.cost[of], plain[of])}   searched ${ratio(cost[of], plain[of])}`,
      );
    }
  }
}

function ratio(value: number, of: number): string {
  return of === 0 ? String(value) : `× ${(value / of).toFixed(3)}`;
}
