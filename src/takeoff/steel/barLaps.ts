import type { Point } from '../../geometry/point.ts';
import type { BarsResult } from '../result.ts';
import { lappedLengths } from './barCutting.ts';

/** Where two bars of one line lie beside each other. */
export interface BarLap {
  readonly from: Point;
  readonly to: Point;
}

/** Every lap: bars of a line are laid whole from its start on, the last one cut to what is left. */
export function barLaps({ lines, lap, cuts }: BarsResult): readonly BarLap[] {
  const stock = cuts.problem.stock[0]!.length;
  return lines.flatMap(({ from, to, length }) => {
    const pieces = lappedLengths(length, stock, lap);
    const at = (along: number): Point => ({
      x: from.x + ((to.x - from.x) * along) / length,
      y: from.y + ((to.y - from.y) * along) / length,
    });
    return pieces.slice(1).map((_, i) => {
      const start = (i + 1) * (stock - lap);
      return { from: at(start), to: at(start + lap) };
    });
  });
}
