import type { Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { type Figured, withheld } from '../notes.ts';
import { length, text } from '../quantity.ts';
import { between, type LaidCorner, type LaidPad } from './corners.ts';
import { layoutNote } from './layoutNote.ts';
import { begunAt, eachOf, type Four, linkage, type Sides } from './linkage.ts';
import { MISCLOSURE_MOST, passBand } from './rules.ts';

/** What the tape said of a form with four corners, in the order of its letters. Grid units. */
export interface TapeReadings {
  /** First to third corner, second to fourth. */
  readonly diagonals: readonly [Grid | null, Grid | null];
  /** The side that leaves each corner; null where it wasn't measured and is taken as drawn. */
  readonly sides: readonly [Grid | null, Grid | null, Grid | null, Grid | null];
  /** The side that stays where it is, 0 to 3. */
  readonly holds: number;
}

export const NO_READINGS: TapeReadings = {
  diagonals: [null, null],
  sides: [null, null, null, null],
  holds: 0,
};

/** How a corner has to move, from where it stands to where it should. Floats, grid units. */
export interface Move {
  readonly corner: LaidCorner;
  /** Along the side that stays, toward its end when above nothing. */
  readonly along: number;
  /** Square to that side, away from it when above nothing. */
  readonly out: number;
  readonly inAll: number;
}

export interface TapeSaid {
  readonly corners: Four<LaidCorner>;
  readonly holds: number;
  readonly drawn: readonly [number, number];
  readonly measured: readonly [number, number];
  /** How much more the second diagonal is over the first than it should be. */
  readonly difference: number;
  readonly band: number;
  /** How far each diagonal is from what these sides allow, the same for both: a tape or a side that isn't so. */
  readonly misclosure: number;
  readonly moves: readonly Move[];
}

/**
 * Which corners of a set form to move, which way and how far, so that it becomes what was drawn. One side stays; the
 * form as it stands is the linkage of its four sides that has the measured difference of its diagonals, found by its
 * true geometry and not by a small-angle rule. Source: geometry.
 *
 * The two diagonals are one reading more than a linkage of known sides needs: what they have in common is the misclosure.
 * Nothing for other shapes than four straight sides, convex: see tapeFit.
 * @source en0069-squaring
 */
export function tapeSaid(laid: LaidPad, readings: TapeReadings): Figured<TapeSaid> | undefined {
  const corners = fourOf(laid);
  if (!corners) return undefined;
  const drawnSides = sidesOf(corners);
  const drawn = diagonalsOf(eachOf(corners, ({ at }) => at));
  const [first, second] = readings.diagonals;
  if (first === null || second === null) return undefined;

  const sides = eachOf(drawnSides, (side, i) => readings.sides[i] ?? side);
  const open = openTriangle(corners, sides, [first, second]);
  if (open) return withheld(layoutNote('stop', 'tape-no-triangle', { tapes: text(open) }));

  const { holds } = readings;
  // Numbered from the side that stays, the diagonals change places with every step.
  const swapped = holds % 2 === 1;
  const difference = second - first;
  const stands = linkage(
    begunAt(sides, holds),
    swapped ? -difference : difference,
    begunAt(
      eachOf(corners, ({ at }) => at),
      holds,
    ),
  );
  if (!stands) return withheld(layoutNote('stop', 'tape-cannot-close'));
  const fitted = diagonalsOf(stands.stands);
  const misclosure = (first + second - fitted[0] - fitted[1]) / 2;
  const all = readings.sides.every((side) => side !== null);
  if (Math.abs(misclosure) > MISCLOSURE_MOST) {
    const facts = { off: length(Math.abs(misclosure)) };
    return withheld(
      layoutNote('stop', 'tape-misclosure', facts),
      ...(all ? [] : [layoutNote('caution', 'tape-sides-unmeasured')]),
    );
  }
  const [origin, end] = [stands.meant[0], stands.meant[1]];
  const reach = between(origin, end);
  const [ux, uy] = [(end.x - origin.x) / reach, (end.y - origin.y) / reach];
  const [, , far] = stands.meant;
  const way = Math.sign(ux * (far.y - origin.y) - uy * (far.x - origin.x));
  const moves = begunAt(corners, holds).map((corner, i): Move => {
    const [dx, dy] = [
      stands.meant[i]!.x - stands.stands[i]!.x,
      stands.meant[i]!.y - stands.stands[i]!.y,
    ];
    return {
      corner,
      along: ux * dx + uy * dy,
      out: way * (ux * dy - uy * dx),
      inAll: Math.hypot(dx, dy),
    };
  });
  const said: TapeSaid = {
    corners,
    holds,
    drawn,
    measured: [first, second],
    difference: difference - (drawn[1] - drawn[0]),
    band: passBand(Math.max(...drawn)),
    misclosure,
    moves,
  };
  return { figured: said, notes: notesOf(said, readings, drawnSides) };
}

function notesOf(
  { difference, band }: TapeSaid,
  readings: TapeReadings,
  drawnSides: Sides,
): readonly Note[] {
  const within = Math.abs(difference) <= band;
  const measured = readings.sides.map((side, i) => (side === null ? 0 : side - drawnSides[i]!));
  const worst = Math.max(...measured.map(Math.abs));
  const all = readings.sides.every((side) => side !== null);
  const facts = { off: length(Math.abs(difference)), band: length(band) };
  return [
    within
      ? layoutNote('assumption', 'tape-within-band', facts)
      : layoutNote('caution', 'tape-out-of-band', facts),
    ...(worst > band ? [layoutNote('caution', 'tape-sides-off', { off: length(worst) })] : []),
    ...(all
      ? []
      : [
          layoutNote('caution', 'tape-sides-unmeasured'),
          layoutNote('assumption', 'tape-sides-held'),
        ]),
  ];
}

/** The four corners of a form with four straight sides and no inside corner; nothing for any other. */
export function fourOf({ pad, corners }: LaidPad): Four<LaidCorner> | undefined {
  const [a, b, c, d, ...more] = corners;
  if (!a || !b || !c || !d || more.length > 0) return undefined;
  const straight =
    pad.shape.corners.length === 4 && pad.shape.corners.every(({ rise }) => rise === 0);
  return straight && isConvex([a, b, c, d]) ? [a, b, c, d] : undefined;
}

function sidesOf(corners: Four<LaidCorner>): Sides {
  return eachOf(corners, ({ at }, i) => between(at, corners[(i + 1) % 4]!.at));
}

function diagonalsOf([a, b, c, d]: Four<Point>): readonly [number, number] {
  return [between(a, c), between(b, d)];
}

/** Whether the outline turns the same way at every corner. */
function isConvex(corners: Four<LaidCorner>): boolean {
  const turns = corners.map(({ at }, i) => {
    const [next, after] = [corners[(i + 1) % 4]!.at, corners[(i + 2) % 4]!.at];
    return Math.sign((next.x - at.x) * (after.y - next.y) - (next.y - at.y) * (after.x - next.x));
  });
  return turns.every((turn) => turn !== 0 && turn === turns[0]);
}

/** The first three tapes that can't make a triangle, by their letters. */
function openTriangle(
  corners: Four<LaidCorner>,
  sides: Sides,
  [first, second]: readonly [number, number],
): string | undefined {
  const name = (i: number, j: number) => `${corners[i]!.letter}–${corners[j]!.letter}`;
  const triangles = [
    [sides[0], sides[1], first, [0, 1], [1, 2], [0, 2]],
    [sides[2], sides[3], first, [2, 3], [3, 0], [0, 2]],
    [sides[1], sides[2], second, [1, 2], [2, 3], [1, 3]],
    [sides[3], sides[0], second, [3, 0], [0, 1], [1, 3]],
  ] as const;
  for (const [a, b, c, ...ends] of triangles) {
    const longest = Math.max(a, b, c);
    if (Math.min(a, b, c) <= 0 || 2 * longest >= a + b + c) {
      return ends.map(([i, j]) => name(i, j)).join(', ');
    }
  }
  return undefined;
}
