import type { Grid } from '../../units/grid.ts';

/** A stretch along a run, its ends included. */
export interface Span {
  readonly from: Grid;
  readonly to: Grid;
}

interface Rules {
  /** The widest from one support to the next. */
  readonly spacing: Grid;
  /** Each has a support on it. The one that ends last ends the run. */
  readonly musts: readonly Span[];
  readonly whole: Span;
}

interface Placed {
  readonly along: Grid;
  readonly blocked: boolean;
}

interface Search {
  /**
   * The supports, each as near as may be to where `aim` would have it.
   * @param aim From the support before, and how many are left with this one.
   */
  readonly evened: (aim: (before: Grid | undefined, left: number) => number) => readonly Placed[];
}

/** Before the first support. */
const START = Number.NEGATIVE_INFINITY;

/**
 * The least supports along a line: fewest on blocked ground first, then fewest in all.
 *
 * Of two ways to stand so many supports, so many of them blocked, that keep all rules so far, the one that reaches
 * farther can be gone on with at least as well: the next may stand farther on, and what must still be met is no more. So
 * for every pair of counts the farthest reach alone has to be known, and each comes from two others: one more on clear
 * ground, or one more blocked. That is every way there is, so the least found is the least.
 * @param clear Ground where stakes can be driven, in order.
 */
export function searchOf({ spacing, musts, whole }: Rules, clear: readonly Span[]): Search {
  const byFrom = musts.toSorted((a, b) => a.from - b.from);
  // The nearest end among the musts from here on.
  const nearestTo: Grid[] = [];
  for (let i = byFrom.length - 1; i >= 0; i--) {
    nearestTo[i] = Math.min(byFrom[i]!.to, nearestTo[i + 1] ?? Number.POSITIVE_INFINITY);
  }
  const byTo = musts.toSorted((a, b) => a.to - b.to);
  const farthestFrom: Grid[] = [];
  for (let i = 0; i < byTo.length; i++) {
    farthestFrom[i] = Math.max(byTo[i]!.from, farthestFrom[i - 1] ?? START);
  }

  /** Number of the first must that starts after a place. */
  const nextMust = (place: Grid) => firstIndex(byFrom.length, (i) => byFrom[i]!.from > place);
  const isDone = (place: Grid) => nextMust(place) === byFrom.length;
  /** The farthest that the support after one at `place` may stand. */
  const limit = (place: Grid): Grid => {
    const must = Math.min(nearestTo[nextMust(place)] ?? whole.to, whole.to);
    return place === START ? must : Math.min(place + spacing, must);
  };
  /** The farthest clear ground for it; START when there is none. */
  const clearReach = (place: Grid): Grid => {
    const most = limit(place);
    const at = firstIndex(clear.length, (i) => clear[i]!.from > most) - 1;
    if (at < 0) return START;
    const reach = Math.min(clear[at]!.to, most);
    return reach > place ? reach : START;
  };
  /** The nearest that the support before one at `place` may stand. */
  const limitBack = (place: Grid): Grid => {
    const must = farthestFrom[firstIndex(byTo.length, (i) => byTo[i]!.to >= place) - 1];
    return Math.max(place - spacing, must ?? whole.from, whole.from);
  };
  const firstClear = (least: Grid): Grid => {
    const stretch = clear[firstIndex(clear.length, (i) => clear[i]!.to >= least)];
    return stretch ? Math.max(stretch.from, least) : Number.POSITIVE_INFINITY;
  };

  return {
    evened: (aim) => {
      const farthest = leastOf(isDone, limit, clearReach);
      const n = farthest.length;
      // No nearer than this to the start, or those after it can't reach the end.
      const nearest: Grid[] = [];
      let least = Math.max(farthestFrom.at(-1) ?? whole.from, whole.from);
      for (let k = n - 1; k >= 0; k--) {
        nearest[k] = farthest[k]!.blocked ? least : firstClear(least);
        least = limitBack(nearest[k]!);
      }
      const placed: Placed[] = [];
      let before: Grid | undefined;
      // The next that can't be moved, which those before it are evened out to.
      let held = -1;
      for (let k = 0; k < n; k++) {
        const { along, blocked } = farthest[k]!;
        if (held < k) {
          held = k;
          while (held < n && nearest[held] !== farthest[held]!.along) held++;
        }
        const low = Math.max(nearest[k]!, before === undefined ? whole.from : before + 1);
        const high = Math.min(along, limit(before ?? START));
        const wish = Math.round(
          held < n && before !== undefined
            ? before + (nearest[held]! - before) / (held - k + 1)
            : aim(before, n - k),
        );
        const place = blocked
          ? Math.min(high, Math.max(low, wish))
          : (nearestOn(clear, wish, low, high) ?? high);
        placed.push({ along: place, blocked });
        before = place;
      }
      return placed;
    },
  };
}

/** The least supports, each as far on as it may be. */
function leastOf(
  isDone: (place: Grid) => boolean,
  limit: (place: Grid) => Grid,
  clearReach: (place: Grid) => Grid,
): readonly Placed[] {
  // rows[b][n]: how far n supports reach, b of them blocked; START where they can't stand so.
  const rows: Grid[][] = [];
  for (let b = 0; ; b++) {
    const before = rows[b - 1];
    const row: Grid[] = b === 0 ? [START] : new Array<Grid>(b).fill(Number.NaN);
    rows.push(row);
    for (let n = Math.max(b, 1); ; n++) {
      let reach = n - 1 < b ? START : ahead(row[n - 1]!, b === 0 && n === 1, clearReach);
      const from = before?.[n - 1];
      if (from !== undefined && !Number.isNaN(from) && (from !== START || n === 1)) {
        reach = Math.max(reach, limit(from));
      }
      // Neither leads on: this row is at its end, unless the one before goes on.
      if (reach === START && (before === undefined || n - 1 >= before.length)) break;
      row[n] = reach;
      if (reach !== START && isDone(reach)) return traced(rows, b, n, clearReach);
    }
  }
}

function ahead(from: Grid, isFirst: boolean, clearReach: (place: Grid) => Grid): Grid {
  return from === START && !isFirst ? START : clearReach(from);
}

function traced(
  rows: readonly (readonly Grid[])[],
  blocked: number,
  count: number,
  clearReach: (place: Grid) => Grid,
): readonly Placed[] {
  const placed: Placed[] = [];
  let b = blocked;
  for (let n = count; n > 0; n--) {
    const along = rows[b]![n]!;
    const onClear = n - 1 >= b && ahead(rows[b]![n - 1]!, b === 0 && n === 1, clearReach) === along;
    placed.push({ along, blocked: !onClear });
    if (!onClear) b--;
  }
  return placed.reverse();
}

/** The first whole number below `count` for which something holds, that holds for all after it too; else `count`. */
function firstIndex(count: number, holds: (i: number) => boolean): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The place on some stretches, between two limits, that is nearest to `aim`. */
function nearestOn(on: readonly Span[], aim: Grid, low: Grid, high: Grid): Grid | undefined {
  let best: Grid | undefined;
  for (let i = firstIndex(on.length, (at) => on[at]!.to >= low); i < on.length; i++) {
    const { from, to } = on[i]!;
    if (from > high) break;
    const place = Math.min(to, high, Math.max(from, low, aim));
    if (best === undefined || Math.abs(place - aim) < Math.abs(best - aim)) best = place;
  }
  return best;
}
