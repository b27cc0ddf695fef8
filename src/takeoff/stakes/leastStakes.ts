import type { Grid } from '../../units/grid.ts';
import { HALF_STAKE } from './rules.ts';
import { type Span, searchOf } from './stakeSearch.ts';

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

/** What a run is staked by. */
export interface Staking {
  readonly length: Grid;
  /** The widest gap between two supports. */
  readonly spacing: Grid;
  /** The first and the last are no farther than this from their ends. */
  readonly fromEnd: Grid;
  /** The last may stand farther from its end by this: rounding a slanting run adds no stake. */
  readonly closeness: Grid;
  /** Stretches that must each have a support on them: either side of a splice. */
  readonly near?: readonly Stretch[];
  /** Places where there is a support, whatever the ground: stakes set by hand. */
  readonly fixed?: readonly Grid[];
}

/**
 * The fewest supports of a run with two ends: as few blocked ones as there can be, and with those the fewest in all; then
 * moved as near to equal gaps as the ground allows. Tests hold it against an exact solver.
 * @param clear Where stakes can be driven, in order, none touching the next.
 */
export function leastStakes(staking: Staking, clear: readonly Stretch[]): readonly Support[] {
  const { length, spacing, fromEnd, closeness, near = [], fixed = [] } = staking;
  const first = endZone(length, fromEnd);
  const whole = wholeOf(length, fromEnd);
  const set = fixed.map((place) => onRun(place, length, fromEnd));
  const musts = [...spots(set), ...within(near, whole)];
  if (length <= fromEnd) {
    const middle = Math.round(length / 2);
    return searchOf({ spacing, musts: [...musts, whole], whole }, open(clear, whole, set)).evened(
      () => middle,
    );
  }
  const last = Math.max(length - first - closeness, first + 1);
  const ends = [
    { from: whole.from, to: first },
    { from: last, to: whole.to },
  ];
  const start = Math.min(fromEnd, length / 4);
  return searchOf({ spacing, musts: [...ends, ...musts], whole }, open(clear, whole, set)).evened(
    (before, left) =>
      before === undefined ? start : before + (whole.to + whole.from - start - before) / left,
  );
}

/**
 * The fewest supports round a run that closes on itself, three at least: as leastStakes, with no ends. Turned on until one
 * of them comes to the end of its clear ground, the best is still the best: so one of those ends is where to start.
 */
export function leastStakesRound(
  { length, spacing, near = [], fixed = [] }: Omit<Staking, 'fromEnd' | 'closeness'>,
  clear: readonly Stretch[],
): readonly Support[] {
  const most = Math.min(spacing, Math.ceil(length / 3));
  const starts = fixed.length > 0 ? fixed.slice(0, 1) : clear.map(({ to }) => to % length);
  const found = (starts.length > 0 ? starts : [0]).map((start) => {
    const turned = (place: Grid) => (((place - start) % length) + length) % length;
    const whole = { from: 0, to: length };
    const set = [0, length, ...fixed.map(turned)];
    const musts = [...spots(set), ...near.flatMap((one) => opened(one, turned, length))];
    const ground = clear.flatMap((one) => opened(one, turned, length)).sort(inOrder);
    return searchOf(
      { spacing: most, musts, whole },
      open(ground, whole, starts.length > 0 ? set : []),
    )
      .evened((before, left) => (before === undefined ? 0 : before + (length - before) / left))
      .slice(0, -1)
      .map(({ along, blocked }) => ({ along: (along + start) % length, blocked }))
      .sort((a, b) => a.along - b.along);
  });
  return found.reduce((best, other) => (weigh(other) < weigh(best) ? other : best));
}

/** A stretch of a run that closes on itself, turned to begin elsewhere: in two where it runs past that place. */
function opened(
  { from, to }: Stretch,
  turned: (place: Grid) => Grid,
  length: Grid,
): readonly Stretch[] {
  if (to - from >= length) return [{ from: 0, to: length }];
  const low = turned(from);
  const high = low + to - from;
  if (high < length) return [{ from: low, to: high }];
  return [
    { from: low, to: length },
    { from: 0, to: high - length },
  ];
}

/** Blocked ones weigh more than any number of others. */
function weigh(supports: readonly Support[]): number {
  return supports.reduce((sum, { blocked }) => sum + (blocked ? 1e6 : 1), 0);
}

function spots(places: readonly Grid[]): readonly Span[] {
  return places.map((place) => ({ from: place, to: place }));
}

/** The parts of stretches that lie on a run; those that lie off it are left out. */
function within(stretches: readonly Stretch[], whole: Span): readonly Stretch[] {
  return stretches
    .map(({ from, to }) => ({ from: Math.max(from, whole.from), to: Math.min(to, whole.to) }))
    .filter(({ from, to }) => from <= to);
}

/** Clear ground in order, with places where there is a support anyway. */
function open(clear: readonly Stretch[], whole: Span, fixed: readonly Grid[]): readonly Stretch[] {
  const all = within(clear, whole);
  const extra = fixed.filter((place) => !all.some(({ from, to }) => from <= place && place <= to));
  return extra.length === 0 ? all : [...all, ...spots([...new Set(extra)])].sort(inOrder);
}

function inOrder(a: Stretch, b: Stretch): number {
  return a.from - b.from;
}

/** Where stakes may stand along a run with two ends: none past the end of its board. */
function wholeOf(length: Grid, fromEnd: Grid): Span {
  const edge = Math.min(HALF_STAKE, endZone(length, fromEnd));
  return { from: edge, to: Math.ceil(length - edge) };
}

/** The place on a run that is nearest to one set by hand. */
export function onRun(place: Grid, length: Grid, fromEnd: Grid): Grid {
  const { from, to } = wholeOf(length, fromEnd);
  return Math.min(Math.max(place, from), to);
}

/** How far from an end its stake may stand: two stakes never in one place. */
function endZone(length: Grid, fromEnd: Grid): Grid {
  return Math.min(fromEnd, Math.max(0, Math.floor(length / 2 - HALF_STAKE)));
}
