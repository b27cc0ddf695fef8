import type { Grid } from '../../units/grid.ts';
import { HALF_STAKE, stakePlaces } from './rules.ts';

/** A stretch of a run, its ends included, whole grid units along it. */
export interface Stretch {
  readonly from: Grid;
  readonly to: Grid;
}

/** One support of a form: where a stake can be driven, or where something else must hold it. */
export interface Support {
  readonly along: Grid;
  readonly blocked: boolean;
}

/** A support with the ground that it may be moved about on. */
interface Movable extends Support {
  readonly on: readonly Stretch[];
}

/** What a run is staked by. */
export interface Staking {
  readonly length: Grid;
  /** The widest gap between two supports. */
  readonly spacing: Grid;
  /** The first and the last are no farther than this from their ends. */
  readonly fromEnd: Grid;
  /** The last may stand farther from its end by this: rounding a slanting run adds no stake. */
  readonly closeness: Grid;
}

/**
 * The fewest supports of a straight run with ground on it where nothing can be driven: as few blocked ones as there can
 * be, and with those the fewest in all; then moved as near to equal gaps as the ground allows. None is blocked unless a
 * blocked stretch is longer than the spacing, or takes up all the ground near an end.
 *
 * From one end every next support stands as far on as it may. No choice reaches farther with as many, so none is less
 * (tests hold it against an exact solver).
 * @param clear Where stakes can be driven, in order, none touching the next.
 */
export function leastStakes(staking: Staking, clear: readonly Stretch[]): readonly Support[] {
  const { length, spacing, fromEnd, closeness } = staking;
  const first = endZone(length, fromEnd);
  // No stake past the end of its board.
  const edge = Math.min(HALF_STAKE, first);
  const whole = { from: edge, to: Math.ceil(length - edge) };
  const open = clear
    .map(({ from, to }) => ({ from: Math.max(from, whole.from), to: Math.min(to, whole.to) }))
    .filter(({ from, to }) => from <= to);
  if (length <= fromEnd) {
    const middle = Math.round(length / 2);
    const along = nearestOn(open, middle, whole.from, whole.to);
    return [{ along: along ?? middle, blocked: along === undefined }];
  }
  const last = Math.max(length - first - closeness, first + 1);
  const farthest = reach(open, first - spacing, last + spacing, spacing);
  return evened(farthest, whole, spacing, last, stakePlaces(length, spacing, fromEnd, closeness));
}

/** How far from an end its stake may stand: two stakes never in one place. */
function endZone(length: Grid, fromEnd: Grid): Grid {
  return Math.min(fromEnd, Math.max(0, Math.floor(length / 2 - HALF_STAKE)));
}

/**
 * Supports between two that are thought of one spacing before the first may stand and one after the last, each as far on
 * as it may be.
 */
function reach(
  open: readonly Stretch[],
  before: Grid,
  after: Grid,
  spacing: Grid,
): readonly Movable[] {
  const found: Movable[] = [];
  let at = before;
  // The first stretch that goes on beyond where we are.
  let i = 0;
  while (after - at > spacing) {
    while (i < open.length && open[i]!.to <= at) i++;
    const limit = at + spacing;
    // The clear stretch that holds or comes last before the limit, if any, and the next one on.
    let k = i - 1;
    while (k + 1 < open.length && open[k + 1]!.from <= limit) k++;
    const ends = k >= i ? Math.min(open[k]!.to, limit) : at;
    const start = k >= 0 ? Math.max(open[k]!.to, before) : before;
    const next = open[k + 1]?.from ?? after;
    // Past the last clear place that has to be reached, a blocked stretch may be the end of it.
    const steps = (to: Grid) => Math.ceil((to - start) / spacing);
    const beyond = steps(next) < steps(after) ? next : after;
    // In a stretch too long to pass, no more than it needs from its own beginning to its end; and where those reach
    // over it from here already, none at its beginning.
    const tooLong = ends < limit && beyond - start > spacing;
    const missing = steps(beyond) - 1;
    if (ends === at || (tooLong && at + (missing + 1) * spacing >= beyond)) {
      const on = [{ from: start + 1, to: next - 1 }];
      for (let n = 1; n <= missing; n++) {
        found.push({ along: at + n * spacing, blocked: true, on });
      }
      at += missing * spacing;
      i = k + 1;
      continue;
    }
    found.push({ along: ends, blocked: false, on: groundAt(open, k, spacing) });
    at = ends;
  }
  return found;
}

/** The clear stretches about open[k] that can be walked from one to the next without a gap over the spacing. */
function groundAt(open: readonly Stretch[], k: number, spacing: Grid): readonly Stretch[] {
  let low = k;
  let high = k;
  while (low > 0 && open[low]!.from - open[low - 1]!.to <= spacing) low--;
  while (high + 1 < open.length && open[high + 1]!.from - open[high]!.to <= spacing) high++;
  return open.slice(low, high + 1);
}

/** The same supports, each moved back towards where equal gaps would have it. */
function evened(
  farthest: readonly Movable[],
  whole: Stretch,
  spacing: Grid,
  last: Grid,
  even: { readonly fromEnd: Grid; readonly gap: Grid },
): readonly Support[] {
  const n = farthest.length;
  // No nearer than this to the start, or those after it can't reach the end.
  const nearest: Grid[] = [];
  for (let k = n - 1, least = last; k >= 0; k--) {
    const { on, along } = farthest[k]!;
    const place = Math.min(firstOn(on, Math.max(least, whole.from)) ?? along, along);
    nearest[k] = place;
    least = place - spacing;
  }
  const end = whole.to + whole.from - even.fromEnd;
  const moved: Support[] = [];
  let before = farthest[0]!.along - spacing;
  farthest.forEach(({ along, blocked, on }, k) => {
    const aim = k === 0 ? even.fromEnd : before + (end - before) / (n - k);
    const low = Math.max(nearest[k]!, before + 1);
    const high = Math.min(along, before + spacing, whole.to);
    before = nearestOn(on, Math.round(aim), low, high) ?? Math.min(along, high);
    moved.push({ along: before, blocked });
  });
  return moved;
}

/** The first place on some stretches that is no less than `least`. */
function firstOn(on: readonly Stretch[], least: Grid): Grid | undefined {
  const stretch = on.find(({ to }) => to >= least);
  return stretch && Math.max(stretch.from, least);
}

/** The place on some stretches, between two limits, that is nearest to `aim`. */
function nearestOn(on: readonly Stretch[], aim: Grid, low: Grid, high: Grid): Grid | undefined {
  let best: Grid | undefined;
  for (const { from, to } of on) {
    const least = Math.max(from, low);
    const most = Math.min(to, high);
    if (least > most) continue;
    const place = Math.min(most, Math.max(least, aim));
    if (best === undefined || Math.abs(place - aim) < Math.abs(best - aim)) best = place;
  }
  return best;
}
