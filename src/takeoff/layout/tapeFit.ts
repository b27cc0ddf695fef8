import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { type Figured, withheld } from '../notes.ts';
import { length, tapeLength, text } from '../quantity.ts';
import { between, type LaidPad } from './corners.ts';
import { longestTie, type Tie } from './diagonals.ts';
import { layoutNote } from './layoutNote.ts';
import { leastSquares } from './leastSquares.ts';
import { LEAN_MOST, MISCLOSURE_MOST, passBand } from './rules.ts';
import type { Move } from './tapeSaid.ts';

/** What the tape said of a form of any shape: lengths by their ties, and the side that stays. */
export interface FitReadings {
  readonly tapes: Readonly<Record<string, Grid>>;
  /** Name of a tie; by rule when not said. */
  readonly holds?: string;
}

export const NO_FIT: FitReadings = { tapes: {} };

/** A tape that the form was fitted to. */
export interface FittedTape {
  readonly tie: Tie;
  /** As measured, or as drawn where a side wasn't measured. Floats, grid units, like all here. */
  readonly taken: number;
  readonly isMeasured: boolean;
  /** What it is in the form as fitted. */
  readonly fitted: number;
}

export interface TapeFit {
  readonly holds: Tie;
  readonly tapes: readonly FittedTape[];
  /** The tape that is farthest from what the others leave it. */
  readonly worst: FittedTape;
  readonly moves: readonly Move[];
  readonly band: number;
}

/** 'A–C': a tie by the letters of its corners. */
export function tieName({ from, to }: Pick<Tie, 'from' | 'to'>): string {
  return `${from.letter}–${to.letter}`;
}

/** The sides that a form can be held by: straight, with a form along them. */
export function sidesToHold(ties: readonly Tie[]): readonly Tie[] {
  return ties.filter(({ kind }) => kind === 'side');
}

/**
 * Which corners of a set form to move, which way and how far, so that it becomes what was drawn: for a form of any shape.
 * One side stays; the form as it stands is the one whose ties come nearest to what was measured, by least squares. Sides
 * that set the form and weren't measured are taken as drawn; other ties that weren't are left out. Source: geometry.
 *
 * Nothing before something was measured. Withheld while the tapes leave a corner free, and when they don't agree.
 */
export function tapeFit(
  { corners }: LaidPad,
  ties: readonly Tie[],
  readings: FitReadings,
): Figured<TapeFit> | undefined {
  const known = ties.flatMap((tie) => {
    const measured = readings.tapes[tieName(tie)];
    if (measured !== undefined) return [{ tie, taken: measured, isMeasured: true }];
    const isForm = tie.kind === 'side' || tie.kind === 'chord';
    return isForm && tie.sets ? [{ tie, taken: tie.length, isMeasured: false }] : [];
  });
  if (!known.some(({ isMeasured }) => isMeasured)) return undefined;
  const sides = sidesToHold(ties);
  const holds =
    sides.find((tie) => tieName(tie) === readings.holds) ??
    [...(sides.length > 0 ? sides : ties)].sort((a, b) => b.length - a.length)[0]!;
  const place = new Map(corners.map((corner, i) => [corner, i]));
  const meant = corners.map(({ at }) => at);
  const held = [place.get(holds.from)!, place.get(holds.to)!] as const;
  const found = leastSquares(
    meant,
    known.map(({ tie, taken }) => ({
      from: place.get(tie.from)!,
      to: place.get(tie.to)!,
      length: taken,
    })),
    held,
  );
  if (found === 'free') {
    const open = ties.filter((tie) => !known.some((one) => one.tie === tie));
    const facts = { tapes: text(open.map(tieName).join(', ')) };
    return withheld(
      open.length > 0
        ? layoutNote('stop', 'tape-more-needed', facts)
        : layoutNote('stop', 'tape-fit-none'),
    );
  }
  if (found === 'unsettled') return withheld(layoutNote('stop', 'tape-fit-none'));
  const tapes = known.map((one): FittedTape => {
    const { from, to } = one.tie;
    return { ...one, fitted: between(found[place.get(from)!]!, found[place.get(to)!]!) };
  });
  const worst = tapes.reduce((most, one) => (offBy(one) > offBy(most) ? one : most));
  if (offBy(worst) > MISCLOSURE_MOST) {
    const facts = { off: length(Math.round(offBy(worst))), tape: text(tieName(worst.tie)) };
    return withheld(layoutNote('stop', 'tape-fit-misclosure', facts));
  }
  const longest = longestTie(ties);
  const moves = movesFrom(meant, found, held).map(
    (move, i): Move => ({ corner: corners[i]!, ...move }),
  );
  const farthest = Math.max(...moves.map(({ inAll }) => inAll));
  if (farthest > longest * Math.sin((LEAN_MOST * Math.PI) / 180)) {
    return withheld(layoutNote('stop', 'tape-fit-none'));
  }
  const fit: TapeFit = { holds, tapes, worst, moves, band: passBand(longest) };
  return { figured: fit, notes: notesOf(fit, farthest, corners.length) };
}

/** How far a tape is from what the others leave it. */
export function offBy({ taken, fitted }: FittedTape): number {
  return Math.abs(taken - fitted);
}

/** From where each place is to where it was meant to be, along the side that stays and away from it. */
function movesFrom(
  meant: TapePlaces,
  stands: TapePlaces,
  [first, second]: readonly [number, number],
): readonly Omit<Move, 'corner'>[] {
  const [origin, end] = [meant[first]!, meant[second]!];
  const reach = between(origin, end);
  const [ux, uy] = [(end.x - origin.x) / reach, (end.y - origin.y) / reach];
  const side = meant.reduce((sum, { x, y }) => sum + ux * (y - origin.y) - uy * (x - origin.x), 0);
  const way = side < 0 ? -1 : 1;
  return meant.map((at, i) => {
    const [dx, dy] = [at.x - stands[i]!.x, at.y - stands[i]!.y];
    return {
      along: ux * dx + uy * dy,
      out: way * (ux * dy - uy * dx),
      inAll: Math.hypot(dx, dy),
    };
  });
}

type TapePlaces = readonly { readonly x: number; readonly y: number }[];

function notesOf({ tapes, band }: TapeFit, farthest: number, corners: number): readonly Note[] {
  const facts = { off: tapeLength(farthest, 32), band: length(band) };
  const asDrawn = tapes.some(({ isMeasured }) => !isMeasured);
  return [
    farthest <= band
      ? layoutNote('assumption', 'tape-fit-within', facts)
      : layoutNote('caution', 'tape-fit-off', facts),
    // As many lengths as it takes and no more: any of them may be wrong without its being seen.
    ...(tapes.length <= 2 * corners - 3 ? [layoutNote('caution', 'tape-fit-unchecked')] : []),
    ...(asDrawn ? [layoutNote('assumption', 'tape-sides-held')] : []),
  ];
}
