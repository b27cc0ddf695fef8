import { LEAST_OFFCUT } from './rules.ts';
import type { Strip } from './strips.ts';

/** A piece of a strip, and the sheet that it is cut from. */
export interface CutPiece {
  readonly strip: Strip;
  /** From the start of the strip. */
  readonly offset: number;
  readonly length: number;
  readonly sheet: number;
}

export interface CutPlan {
  readonly pieces: readonly CutPiece[];
  readonly sheets: number;
}

/** Sheets that a strip takes, laid end to end with laps: ⌈(L − lap) ÷ (l − lap)⌉, one at least. */
export function sheetsAlong(length: number, sheet: number, lap: number, closeness: number): number {
  return Math.max(1, Math.ceil((length - lap - closeness) / (sheet - lap)));
}

/**
 * Cuts strips out of sheets: whole sheets as far as they go, then one cut piece. Cut pieces are taken longest first, each
 * from the shortest offcut that holds it, or else from a new sheet; an offcut goes back to the pile while it is no shorter
 * than the least worth carrying. Strips ripped narrower leave nothing beside them that is used again.
 * @param sheet Length of a sheet, more than `lap`.
 */
export function cutStrips(
  strips: readonly Strip[],
  sheet: number,
  lap: number,
  closeness: number,
): CutPlan {
  const pieces: CutPiece[] = [];
  const ends: { strip: Strip; offset: number; length: number }[] = [];
  let sheets = 0;
  for (const strip of strips) {
    const whole = sheetsAlong(strip.to - strip.from, sheet, lap, closeness) - 1;
    for (let i = 0; i < whole; i++) {
      pieces.push({ strip, offset: i * (sheet - lap), length: sheet, sheet: sheets++ });
    }
    const offset = whole * (sheet - lap);
    ends.push({ strip, offset, length: Math.min(sheet, strip.to - strip.from - offset) });
  }
  ends.sort((a, b) => b.length - a.length);
  const pile: { sheet: number; length: number }[] = [];
  for (const { strip, offset, length } of ends) {
    const from = shortestThatHolds(pile, length - closeness);
    const taken = from === undefined ? { sheet: sheets++, length: sheet } : pile[from]!;
    if (from !== undefined) pile.splice(from, 1);
    pieces.push({ strip, offset, length, sheet: taken.sheet });
    const left = taken.length - length;
    if (left >= LEAST_OFFCUT) pile.push({ sheet: taken.sheet, length: left });
  }
  return { pieces, sheets };
}

function shortestThatHolds(
  pile: readonly { readonly length: number }[],
  length: number,
): number | undefined {
  let best: number | undefined;
  for (let i = 0; i < pile.length; i++) {
    const has = pile[i]!.length;
    if (has >= length && (best === undefined || has < pile[best]!.length)) best = i;
  }
  return best;
}
