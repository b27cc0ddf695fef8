import type { Point } from '../../geometry/point.ts';
import type { Feature, Job } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import type { Figured } from '../notes.ts';
import { text } from '../quantity.ts';
import type { Blocks } from './blocked.ts';
import { between, type LaidCorner, type LaidPad } from './corners.ts';
import { layoutNote } from './layoutNote.ts';
import { FLATTEST, MARKS_MOST, READING_ERROR, STEEPEST } from './rules.ts';

/** A corner by its feature and id. */
export interface MarkRef {
  readonly feature: string;
  readonly corner: string;
}

/** A place to hook the tape on. */
export interface TapeMark extends MarkRef {
  readonly kind: Feature['kind'];
  readonly letter: string;
  readonly at: Point;
}

/** How a corner is tied to two marks. Lengths are floats, grid units. */
export interface TapeTie {
  readonly corner: LaidCorner;
  readonly first: number;
  readonly second: number;
  /** Looking from the first mark to the second. Two arcs cross twice: the twin lies on the other side. */
  readonly side: 'left' | 'right' | 'in-line';
  /** Degrees between the two tapes where they cross. */
  readonly angle: number;
  readonly flat: boolean;
  /** How far off the corner may come when both tapes are read READING_ERROR wrong; absent where the arcs may not meet. */
  readonly error?: number;
  /** A mark is at the corner itself: nothing to tape. */
  readonly atMark: boolean;
  readonly blocked: boolean;
}

export interface TapeTies {
  readonly marks: readonly [TapeMark, TapeMark];
  readonly rows: readonly TapeTie[];
}

const STANDING: readonly Feature['kind'][] = ['existing-slab', 'building-line', 'steps'];

/** Places that stand already, by kind and feature; then the form's own corners, once they are set. */
export function marksOf(job: Job, { pad, corners }: LaidPad): readonly TapeMark[] {
  const standing = STANDING.flatMap((kind) => job.features.filter((one) => one.kind === kind));
  const own = corners.map(({ index, letter, at }): TapeMark => {
    const { id } = pad.shape.corners[index]!;
    return { feature: pad.id, corner: id, kind: 'pad', letter, at };
  });
  return [...standing.flatMap(cornerMarks), ...own];
}

function cornerMarks({ id, kind, shape }: Feature): readonly TapeMark[] {
  if (shape.form !== 'outline') return [];
  return shape.corners.map((corner, index) => ({
    feature: id,
    corner: corner.id,
    kind,
    letter: cornerLetter(index),
    at: { x: corner.x, y: corner.y },
  }));
}

/**
 * Two marks when none are chosen: of what stands already the pair that leaves the fewest corners blocked or tied too flat,
 * and of those the pair whose worst other corner comes out best when the tapes are misread. With fewer than two marks, the ends of the form's longest side.
 */
export function firstMarks(
  marks: readonly TapeMark[],
  { corners }: LaidPad,
  blocks: Blocks,
): readonly [TapeMark, TapeMark] | undefined {
  const standing = marks.filter(({ kind }) => kind !== 'pad').slice(0, MARKS_MOST);
  const own = marks.filter(({ kind }) => kind === 'pad');
  const from = standing.length >= 2 ? standing : own;
  const blocked = from.map((mark) => corners.map(({ at }) => blocks(mark.at, at)));
  let best: readonly [TapeMark, TapeMark] | undefined;
  let least = { unfit: Number.POSITIVE_INFINITY, error: Number.POSITIVE_INFINITY };
  from.forEach((one, i) => {
    from.slice(i + 1).forEach((other, k) => {
      if (between(one.at, other.at) === 0) return;
      const rows = corners.map((corner, at) =>
        tapeTie(corner, one.at, other.at, blocked[i]![at]! || blocked[i + 1 + k]![at]!),
      );
      const fit = rows.filter((row) => row.atMark || !(row.blocked || row.flat));
      const unfit = rows.length - fit.length;
      const error = Math.max(0, ...fit.map((row) => row.error ?? 0));
      if (unfit > least.unfit || (unfit === least.unfit && error >= least.error)) return;
      least = { unfit, error };
      best = [one, other];
    });
  });
  return best;
}

/** Two tapes to every corner of the form. */
export function tapeTies(
  { corners }: LaidPad,
  marks: readonly TapeMark[],
  chosen: readonly [MarkRef, MarkRef] | undefined,
  first: readonly [TapeMark, TapeMark] | undefined,
  blocks: Blocks,
): Figured<TapeTies> {
  const pair = chosen ? chosen.map((ref) => marks.find((mark) => isOf(mark, ref))) : (first ?? []);
  const [one, other] = pair;
  if (!one || !other) {
    return { notes: [layoutNote('stop', chosen ? 'layout-mark-gone' : 'layout-no-marks')] };
  }
  if (between(one.at, other.at) === 0) {
    return { notes: [layoutNote('stop', 'layout-marks-coincide')] };
  }
  const rows = corners.map((corner) =>
    tapeTie(corner, one.at, other.at, blocks(one.at, corner.at) || blocks(other.at, corner.at)),
  );
  const flat = rows.filter((row) => row.flat);
  const blocked = rows.filter((row) => row.blocked);
  return {
    figured: { marks: [one, other], rows },
    notes: [
      ...(flat.length > 0 ? [layoutNote('caution', 'layout-ties-flat', lettersOf(flat))] : []),
      ...(blocked.length > 0
        ? [layoutNote('caution', 'layout-tie-blocked', lettersOf(blocked))]
        : []),
      layoutNote('assumption', 'layout-pick-side'),
    ],
  };
}

function lettersOf(rows: readonly TapeTie[]) {
  return { corners: text(rows.map(({ corner }) => corner.letter).join(', ')) };
}

function isOf(mark: TapeMark, ref: MarkRef): boolean {
  return mark.feature === ref.feature && mark.corner === ref.corner;
}

/** One corner tied to two marks. */
export function tapeTie(corner: LaidCorner, one: Point, other: Point, blocked: boolean): TapeTie {
  const { at } = corner;
  const [first, second] = [between(one, at), between(other, at)];
  const atMark = first === 0 || second === 0;
  const turned = (other.x - one.x) * (at.y - one.y) - (other.y - one.y) * (at.x - one.x);
  const angle = atMark ? 0 : crossingAngle(at, one, other);
  const error = atMark ? undefined : tieError(first, second, between(one, other), READING_ERROR);
  return {
    corner,
    first,
    second,
    side: turned === 0 ? 'in-line' : turned > 0 ? 'left' : 'right',
    angle,
    flat: !atMark && (angle < FLATTEST || angle > STEEPEST),
    ...(error === undefined ? {} : { error }),
    atMark,
    blocked,
  };
}

/** The angle at `at` between the ways to two marks, degrees, 0 to 180. */
function crossingAngle(at: Point, one: Point, other: Point): number {
  const [ax, ay, bx, by] = [one.x - at.x, one.y - at.y, other.x - at.x, other.y - at.y];
  return (Math.atan2(Math.abs(ax * by - ay * bx), ax * bx + ay * by) * 180) / Math.PI;
}

/**
 * How far a place that is tied to two marks may come off when each tape may be read wrong by up to `e` either way: the
 * farthest of the four places where arcs of a ± e and b ± e cross. Where two of those arcs don't meet there is no bound,
 * and nothing is answered.
 *
 * For small e it is e ÷ min(sin γ/2, cos γ/2), γ the angle at which the tapes cross: readings off by δ and ε move the
 * crossing by √(δ² + ε² − 2δε cos γ) ÷ sin γ, which is greatest with both off by e, the same way where γ is over 90° and
 * contrary where it is under, and then comes to e √(2 + 2|cos γ|) ÷ sin γ. At 90° that is 1.41 e, at 30° 3.86 e.
 * Source: geometry.
 * @param a From the first mark, b from the second, c between the marks; one unit for all.
 */
export function tieError(a: number, b: number, c: number, e: number): number | undefined {
  const meant = crossing(a, b, c);
  if (!meant) return undefined;
  let most = 0;
  for (const [da, db] of [
    [e, e],
    [e, -e],
    [-e, e],
    [-e, -e],
  ] as const) {
    const off = crossing(a + da, b + db, c);
    if (!off) return undefined;
    most = Math.max(most, Math.hypot(off.x - meant.x, off.y - meant.y));
  }
  return most;
}

/**
 * Where arcs about (0, 0) and (c, 0) cross, above the line: x = (a² − b² + c²) ÷ 2c. Nothing where they don't meet.
 */
export function crossing(
  a: number,
  b: number,
  c: number,
): { readonly x: number; readonly y: number } | undefined {
  if (a < 0 || b < 0 || c <= 0) return undefined;
  // (a − x)(a + x) with x put in: four factors, none of which loses digits (Heron).
  const square = (a + b + c) * (a + b - c) * (a - b + c) * (b - a + c);
  if (square < 0) return undefined;
  return { x: ((a - b) * (a + b) + c * c) / (2 * c), y: Math.sqrt(square) / (2 * c) };
}
