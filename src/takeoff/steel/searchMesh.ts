import { leastCount, leastPrice, type MeshNeed, meshNeed } from './bound.ts';
import type { Filling } from './cutting.ts';
import { better, firstLaid, type Laid, stripsOf } from './firstMesh.ts';
import { kindsOf, type RowWay, rowWays, writePlan } from './layout.ts';
import type { MeshPlan, MeshProblem, MeshProof } from './plan.ts';
import { type RowSize, rowStarts, type Strip, type Turned, turned } from './rows.ts';

export interface MeshSearch {
  /** Ends the search after so many seconds of the clock. */
  readonly seconds?: number;
  /** Seconds, only ever subtracted. */
  readonly clock?: () => number;
  /** Each better plan as it is found. */
  readonly onBetter?: (plan: MeshPlan) => void;
}

const FILLINGS: readonly Filling[] = ['mixed', 'whole', 'offcuts'];
/** Places tried for the first row of one direction: those at which a row ends where the shape turns. */
const MOST_SHIFTS = 40;
/** Tries in a row that found nothing better before the search gives up. */
const PATIENCE = 3000;

/** A layout in the making: its direction, its shapes turned into it. */
interface Try {
  readonly way: RowWay;
  readonly shapes: readonly Turned[];
}

/**
 * Looks for the layout that takes the fewest sheets or the least of a roll, then the fewest cuts: every direction of the
 * pour's sides and square to it, rows begun at every place where one would end at a corner, then layouts and orders of
 * cutting changed at random (the same each time). Nothing when there isn't mesh enough.
 */
export function searchMesh(
  problem: MeshProblem,
  { seconds = Number.POSITIVE_INFINITY, clock = () => 0, onBetter }: MeshSearch = {},
): MeshPlan | undefined {
  const start = clock();
  const isOver = () => clock() - start >= seconds;
  const need = meshNeed(problem);
  const least = leastPrice(problem, need);
  const proof = (laid: Laid): MeshProof =>
    laid.cost.price <= least
      ? { is: 'least' }
      : { is: 'searched', seconds: Math.round((clock() - start) * 10) / 10 };
  let best = firstLaid(problem, need);
  const offer = (tried: Try, strips: readonly Strip[], filling: Filling): boolean => {
    const next = better(best, tried.way, strips, filling);
    if (next === best || !next) return false;
    best = next;
    onBetter?.(writePlan(best.way, best.strips, best.cut, proof(best)));
    return true;
  };

  const tries = triesOf(problem, need);
  for (const tried of tries) {
    const shifts = tried.shapes.map((shape) => shiftsOf(shape, tried.way.size));
    const most = Math.max(...shifts.map(({ length }) => length));
    for (let i = 0; i < most && !isOver(); i++) {
      if (best && tooDear(problem, need, tried.way, best)) break;
      const strips = stripsOf(tried.shapes, tried.way, (shape, at) =>
        rowStarts(shape, tried.way.size, shifts[at]![i % shifts[at]!.length]!),
      );
      for (const filling of FILLINGS) offer(tried, strips, filling);
    }
  }
  if (!best) return undefined;
  wander(tries, offer, isOver);
  return writePlan(best.way, best.strips, best.cut, proof(best));
}

function triesOf(problem: MeshProblem, need: MeshNeed): readonly Try[] {
  // The cheapest by the bound first: the others are often too dear to look at.
  const kinds = [...kindsOf(problem)].sort((a, b) =>
    a && b ? a.price * leastCount(problem, need, a) - b.price * leastCount(problem, need, b) : 0,
  );
  const angles = problem.ways.flatMap((way) =>
    [0, 1].map((quarter) => way + (quarter * Math.PI) / 2),
  );
  const shapes = angles.map((angle) => problem.polygons.map((one) => turned(one, angle)));
  return kinds.flatMap((kind) =>
    angles.flatMap((angle, i) =>
      rowWays(problem, angle, kind).map((way): Try => ({ way, shapes: shapes[i]! })),
    ),
  );
}

function tooDear(problem: MeshProblem, need: MeshNeed, { kind }: RowWay, best: Laid): boolean {
  return kind !== undefined && kind.price * leastCount(problem, need, kind) > best.cost.price;
}

/** How far below the shape the first row may begin so that some row ends where the shape has a corner. */
function shiftsOf(
  { ends, bottom, top }: Turned,
  { width, lap, closeness }: RowSize,
): readonly number[] {
  const adds = width - lap;
  const found = new Set<number>([0]);
  const put = (shift: number) => {
    const rest = ((shift % adds) + adds) % adds;
    found.add(Math.round(rest / closeness) * closeness);
  };
  put(bottom - (top - width));
  for (let i = 0; i < ends.length; i += 4) put(bottom - (ends[i + 1]! - width));
  const all = [...found].filter((shift) => shift < adds).sort((a, b) => a - b);
  if (all.length <= MOST_SHIFTS) return all;
  return Array.from(
    { length: MOST_SHIFTS },
    (_, i) => all[Math.floor((i * all.length) / MOST_SHIFTS)]!,
  );
}

/** Layouts and orders of cutting at random, until many in a row are no better. */
function wander(
  tries: readonly Try[],
  offer: (tried: Try, strips: readonly Strip[], filling: Filling) => boolean,
  isOver: () => boolean,
): void {
  const draw = chance(20_011);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(draw() * list.length)]!;
  for (let since = 0; since < PATIENCE && !isOver(); since++) {
    const tried = pick(tries);
    const strips = stripsOf(tried.shapes, tried.way, (shape) =>
      unevenStarts(shape, tried.way.size, draw),
    );
    let [order, filling] = [strips, pick(FILLINGS)];
    for (let turn = 0; turn < 4; turn++) {
      if (offer(tried, order, filling)) since = 0;
      order = swapped(order, draw);
      filling = pick(FILLINGS);
    }
  }
}

/** Rows that end here and there where the shape has a corner, so that the next ones begin lower than they might. */
function unevenStarts(shape: Turned, size: RowSize, draw: () => number): readonly number[] {
  const { width, lap, closeness } = size;
  const adds = width - lap;
  const starts = [shape.bottom - (draw() < 0.5 ? 0 : draw() * adds)];
  for (;;) {
    const low = starts[starts.length - 1]!;
    if (low + width >= shape.top - closeness) return starts;
    let next = low + adds;
    if (draw() < 0.3) {
      // Down to where its own upper edge meets a corner, when there is one.
      const corner = shape.ends[4 * Math.floor((draw() * shape.ends.length) / 4) + 1]!;
      const down = corner - width;
      if (down > low + closeness && down < next) next = down;
    }
    starts.push(next);
  }
}

function swapped(order: readonly Strip[], draw: () => number): readonly Strip[] {
  const next = [...order];
  for (let i = 0; i < 2; i++) {
    const [a, b] = [Math.floor(draw() * next.length), Math.floor(draw() * next.length)];
    [next[a], next[b]] = [next[b]!, next[a]!];
  }
  return next;
}

/** Numbers from 0 to 1, the same ones every time: a linear congruential generator. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
