import type { Grid } from '../../units/grid.ts';

/** One bar as it is bought, and the lengths cut from it. */
export interface CutBar {
  readonly pieces: readonly Grid[];
  readonly left: Grid;
}

export interface BarCuts {
  readonly bars: readonly CutBar[];
  /** Bars that the lengths alone would need: no cutting does with fewer of them. */
  readonly least: number;
  /** Laps within lines longer than a bar. */
  readonly laps: number;
}

/**
 * Lengths that a line takes: whole bars lapped as far as they go, and one cut to what is left. A line no longer than a bar
 * takes one.
 * @param stock Longer than the lap.
 */
export function lappedLengths(line: Grid, stock: Grid, lap: Grid): readonly Grid[] {
  if (line <= stock) return [line];
  const whole = Math.ceil((line - stock) / (stock - lap));
  const last = line - whole * (stock - lap);
  return [...Array.from({ length: whole }, () => stock), last];
}

/** Cuts lengths out of bars: the longest first, each from the bar that it leaves the least of. */
export function cutBars(lines: readonly Grid[], stock: Grid, lap: Grid): BarCuts {
  const pieces = lines.flatMap((line) => lappedLengths(line, stock, lap));
  const bars: { pieces: Grid[]; left: Grid }[] = [];
  for (const piece of [...pieces].sort((a, b) => b - a)) {
    let best: (typeof bars)[number] | undefined;
    for (const bar of bars) {
      if (bar.left >= piece && (!best || bar.left < best.left)) best = bar;
    }
    if (best) {
      best.pieces.push(piece);
      best.left -= piece;
    } else bars.push({ pieces: [piece], left: stock - piece });
  }
  const sum = pieces.reduce((total, piece) => total + piece, 0);
  return { bars, least: Math.ceil(sum / stock), laps: pieces.length - lines.length };
}
