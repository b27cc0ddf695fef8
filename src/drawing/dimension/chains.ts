import type { Point } from '../../geometry/point.ts';
import { PRINTED_STEP, printedSteps } from '../../units/printed.ts';
import type { Place } from '../clearance.ts';
import { type Board, dot, lengthText, toMm } from './board.ts';
import type { MeasuredSide } from './loops.ts';

/** One length of a chain: that of an edge, or the distance along the chain between the ends of two. */
export interface Bay {
  readonly from: Point;
  readonly to: Point;
  /** Along the chain, grid units. */
  readonly length: number;
  readonly text: string;
  /** The edge it is of; absent between edges. */
  readonly side?: MeasuredSide;
}

/** Ends nearer than this are one, mm of output. */
const SAME = 0.02;

interface Stretch {
  readonly from: Point;
  readonly to: Point;
  readonly low: number;
  readonly high: number;
  readonly side?: MeasuredSide;
}

/**
 * The bays of a chain along one side of an outline, from end to end: its edges, and between them what no edge of that side
 * takes up. Each is rounded once; what they lack to the rounded overall (or have too much) is put into the longest, which says
 * so by ± and how much. None where edges lie behind one another, so that they make no chain.
 * @param ends The outermost points of the outline along the chain.
 * @param whole From one to the other along the chain, grid units.
 */
export function baysOf(
  board: Board,
  sides: readonly MeasuredSide[],
  axis: Place,
  ends: readonly [Point, Point],
  whole: number,
): readonly Bay[] | undefined {
  const reach = (point: Point) => dot(toMm(board, point), axis);
  const stretches = sides
    .map((side): Stretch => {
      const [from, to] =
        reach(side.from) < reach(side.to) ? [side.from, side.to] : [side.to, side.from];
      return { from, to, low: reach(from), high: reach(to), side };
    })
    .sort((a, b) => a.low - b.low);
  const all: Stretch[] = [];
  let end = ends[0];
  for (const stretch of stretches) {
    const gap = { from: end, to: stretch.from, low: reach(end), high: stretch.low };
    if (gap.high < gap.low - SAME) return undefined;
    all.push(gap, stretch);
    end = stretch.to;
  }
  all.push({ from: end, to: ends[1], low: reach(end), high: reach(ends[1]) });
  const bays = all.flatMap(({ from, to, low, high, side }) => {
    const length = side?.length ?? (high - low) * board.gridPerMm;
    const steps = printedSteps(length, board.units);
    // A gap that would be printed as nothing is none.
    return side || steps > 0 ? [{ from, to, length, steps, ...(side ? { side } : {}) }] : [];
  });
  const lacking =
    printedSteps(whole, board.units) - bays.reduce((sum, { steps }) => sum + steps, 0);
  const longest = bays.reduce((best, bay) => (bay.length > best.length ? bay : best), bays[0]!);
  return bays.map(({ steps, ...bay }) => ({
    ...bay,
    text:
      bay.from === longest.from && bay.to === longest.to && lacking !== 0
        ? roundedText(board, steps, lacking)
        : lengthText(board, bay.length),
  }));
}

/** A length that carries the rounding of its chain. */
function roundedText(board: Board, steps: number, lacking: number): string {
  const step = PRINTED_STEP[board.units];
  return board.words.carries(
    lengthText(board, (steps + lacking) * step),
    lengthText(board, Math.abs(lacking) * step),
  );
}
