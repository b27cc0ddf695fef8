import type { Point } from '../../geometry/point.ts';
import type { Blocks } from './blocked.ts';
import { between, cornerAfter, type LaidCorner, type LaidPad } from './corners.ts';

/** A length to tape between two corners of the form. */
export interface Tie {
  readonly from: LaidCorner;
  readonly to: LaidCorner;
  /** Grid units, a float. */
  readonly length: number;
  /** As it is printed: one across the form figured from its printed sides. Grid units, a float. */
  readonly printed: number;
  /** A straight side of the pad; the chord of a curved one; between neighbours with no side of the pad; or across. */
  readonly kind: 'side' | 'chord' | 'between' | 'diagonal';
  /** True for the lengths that set the form out; the rest are checks. */
  readonly sets: boolean;
  /** A building or steps stand between. */
  readonly blocked: boolean;
}

/** How long what lies across a form between two places is as printed. */
export type Across = (from: Point, to: Point) => number;

/**
 * Every side of a form, and the ties across that fix its shape: n corners need 2n − 3 independent lengths, and one more
 * is a check. Of four corners these are the four sides and both diagonals.
 *
 * The first two corners are the ends of the longest side; each corner after is tied to two that stand already, where
 * the two tapes cross nearest to square, so the lengths can't depend on each other, and each can be taped in turn.
 * Source: geometry (counting of independent lengths).
 */
export function formTies(laid: LaidPad, blocks: Blocks, printed: Across): readonly Tie[] {
  const { corners } = laid;
  const kinds = sideKinds(laid);
  const tie = (i: number, j: number, sets: boolean): Tie => {
    const [from, to] = [corners[Math.min(i, j)]!, corners[Math.max(i, j)]!];
    const kind = kinds.get(pairKey(i, j)) ?? 'diagonal';
    const length = between(from.at, to.at);
    return {
      from,
      to,
      length,
      printed: kind === 'side' ? length : printed(from.at, to.at),
      kind,
      sets,
      blocked: blocks(from.at, to.at),
    };
  };
  const setting = settingPairs(corners, kinds, blocks);
  const keys = new Set(setting.map(([i, j]) => pairKey(i, j)));
  const sides = corners.flatMap((_, i): Tie[] => {
    const j = (i + 1) % corners.length;
    // Of two corners the way back is the way there.
    return corners.length === 2 && i === 1 ? [] : [tie(i, j, keys.has(pairKey(i, j)))];
  });
  const across = setting.filter(([i, j]) => !kinds.has(pairKey(i, j)));
  const rest = corners.flatMap((_, i) =>
    corners.slice(i + 1).flatMap((__, k): Tie[] => {
      const j = i + 1 + k;
      return keys.has(pairKey(i, j)) || kinds.has(pairKey(i, j)) ? [] : [tie(i, j, false)];
    }),
  );
  const free = rest.filter(({ blocked }) => !blocked);
  const check = (free.length > 0 ? free : rest).reduce<Tie | undefined>(
    (best, one) => (best && best.length >= one.length ? best : one),
    undefined,
  );
  return [...sides, ...across.map(([i, j]) => tie(i, j, true)), ...(check ? [check] : [])];
}

type Pair = readonly [number, number];

function pairKey(i: number, j: number): string {
  return `${Math.min(i, j)} ${Math.max(i, j)}`;
}

/** What lies between corners that follow each other. */
function sideKinds({ pad, corners }: LaidPad): ReadonlyMap<string, 'side' | 'chord' | 'between'> {
  const { shape } = pad;
  return new Map(
    corners.map((corner, i) => {
      const j = (i + 1) % corners.length;
      const start = shape.corners[corner.index]!;
      const isSide = cornerAfter(shape, corner.index) === shape.corners[corners[j]!.index];
      return [pairKey(i, j), isSide ? (start.rise === 0 ? 'side' : 'chord') : 'between'] as const;
    }),
  );
}

/** A pair that is a side is worth this much of a sine: its length has to be right anyway. */
const SIDE_WORTH = 0.05;

/** 2n − 3 pairs that fix the corners one after the other. */
function settingPairs(
  corners: readonly LaidCorner[],
  kinds: ReadonlyMap<string, unknown>,
  blocks: Blocks,
): readonly Pair[] {
  const count = corners.length;
  const blocked = corners.map((a, i) => corners.map((b, j) => i !== j && blocks(a.at, b.at)));
  const base = longestPair(corners, kinds, blocked);
  const pairs: Pair[] = [base];
  const placed: number[] = [...base];
  const best = new Map<number, { readonly score: number; readonly by: Pair }>();
  const weigh = (corner: number, p: number, q: number) => {
    const score =
      crossingSine(corners[corner]!, corners[p]!, corners[q]!) +
      (kinds.has(pairKey(corner, p)) ? SIDE_WORTH : 0) +
      (kinds.has(pairKey(corner, q)) ? SIDE_WORTH : 0) -
      (blocked[corner]![p] ? 2 : 0) -
      (blocked[corner]![q] ? 2 : 0);
    const before = best.get(corner);
    if (!before || score > before.score) best.set(corner, { score, by: [p, q] });
  };
  const waiting = new Set(corners.map((_, i) => i).filter((i) => !placed.includes(i)));
  for (const corner of waiting) weigh(corner, base[0], base[1]);
  while (placed.length < count) {
    const next = [...waiting].reduce((a, b) => (best.get(b)!.score > best.get(a)!.score ? b : a));
    const [p, q] = best.get(next)!.by;
    pairs.push([p, next], [q, next]);
    waiting.delete(next);
    for (const corner of waiting) for (const other of placed) weigh(corner, other, next);
    placed.push(next);
  }
  return pairs;
}

/** The longest side that a tape can be stretched along. */
function longestPair(
  corners: readonly LaidCorner[],
  kinds: ReadonlyMap<string, unknown>,
  blocked: readonly (readonly boolean[])[],
): Pair {
  const all = corners.map((_, i): Pair => [i, (i + 1) % corners.length]);
  const worth = ([i, j]: Pair) =>
    between(corners[i]!.at, corners[j]!.at) *
    (kinds.get(pairKey(i, j)) === 'side' && !blocked[i]![j] ? 1 : 0.001);
  return all.reduce((best, one) => (worth(one) > worth(best) ? one : best));
}

/** Sine of the angle at which tapes from two places cross at a third; 0 where they lie in line. */
function crossingSine({ at }: LaidCorner, one: LaidCorner, other: LaidCorner): number {
  const [a, b] = [between(at, one.at), between(at, other.at)];
  if (a === 0 || b === 0) return 0;
  const cross = (one.at.x - at.x) * (other.at.y - at.y) - (one.at.y - at.y) * (other.at.x - at.x);
  return Math.abs(cross) / (a * b);
}

/** The longest length across a form as printed, or the longest of all where it has none. Grid units. */
export function longestTie(ties: readonly Tie[]): number {
  const across = ties.filter(({ kind }) => kind === 'diagonal');
  return Math.max(...(across.length > 0 ? across : ties).map(({ printed }) => printed));
}
