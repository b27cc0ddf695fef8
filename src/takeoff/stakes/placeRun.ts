import type { Point } from '../../geometry/point.ts';
import { samePoint } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Grid } from '../../units/grid.ts';
import { type FacePlace, placeAlong } from '../forms/along.ts';
import type { BrokenRule, FormRun, HeldPlace, Stake, StakedRun } from '../result.ts';
import { distanceTo, obstacleAt } from './blocked.ts';
import { brokenOn } from './broken.ts';
import type { HandPlace } from './byHand.ts';
import type { Ground } from './clearOf.ts';
import type { FormSite } from './formSite.ts';
import { holdAt } from './holds.ts';
import { leastStakes, leastStakesRound, onRun, type Stretch, type Support } from './leastStakes.ts';
import { HALF_STAKE, type Places, stakePlaces, stakePlacesRound } from './rules.ts';
import type { RunSpacing } from './spacing.ts';
import { spliceSides } from './splices.ts';

/** What is the same for every run of a job. */
export interface Site extends FormSite {
  /** How thick the form board is. */
  readonly board: Grid;
  readonly fromEnd: Grid;
  readonly closeness: Grid;
  /** The form stands so high that every stake is braced. */
  readonly kickers: boolean;
}

/** One run with its rules, before anything is placed. */
export interface RunToStake extends RunSpacing {
  readonly run: FormRun;
  readonly even: Places;
  readonly hand: readonly HandPlace[];
  readonly splices: readonly Grid[];
}

export interface PlacedRun {
  readonly staked: StakedRun;
  readonly stakes: readonly Stake[];
  readonly held: readonly HeldPlace[];
  readonly broken: readonly BrokenRule[];
}

/** Whether a run is a whole circle: it has no ends. */
export function closesOnItself({ edges }: FormRun): boolean {
  return samePoint(edges[0]!.from, edges.at(-1)!.to);
}

/** Places when evenly spaced, as if nothing were in the way. */
export function evenPlaces(run: FormRun, spacing: Grid, fromEnd: Grid, closeness: Grid): Places {
  return closesOnItself(run)
    ? stakePlacesRound(run.length, spacing, closeness)
    : stakePlaces(run.length, spacing, fromEnd, closeness);
}

/** Everything that holds one run. */
export function placeRun(toStake: RunToStake, site: Site): PlacedRun {
  const { run, even, spacing, governs, splices } = toStake;
  const { ground, standing, board, fromEnd, closeness } = site;
  const off = board + HALF_STAKE;
  const round = closesOnItself(run);
  const hand = toStake.hand.map((one) => ({
    ...one,
    along: round ? one.along % run.length : onRun(one.along, run.length, fromEnd),
  }));
  const clear = site.clear.get(run) ?? [];
  const removed = hand.filter(({ is }) => is === 'removed');
  const pinned = hand.filter(({ is }) => is === 'pinned');
  const all = supportsOf(toStake, hand, clear, round, site);
  const supports =
    removed.length === 0
      ? all
      : all.filter((one) => !removed.some(({ along }) => along === toGrid(one.along)));
  const stakes: Stake[] = [];
  const held: HeldPlace[] = [];
  const broken: BrokenRule[] = [];
  for (const support of supports) {
    const face = placeAlong(run.edges, support.along);
    const along = toGrid(support.along);
    const id = pinned.find((one) => one.along === along)?.id;
    const place = { at: outside(face, off), outward: face.outward, run: run.mark, along };
    if (support.blocked) {
      held.push({ ...place, ...holdAt(run, face, place.at, board, ground, standing) });
      continue;
    }
    stakes.push({
      ...place,
      ...(id === undefined ? {} : { hand: id }),
      ...(site.kickers ? { kicker: true } : {}),
    });
    if (id !== undefined && !isOn(clear, along)) broken.push(onBlocked(place, id, ground));
  }
  if (removed.length > 0 || splices.length > 0) {
    const places = supports.map(({ along }) => toGrid(along));
    const { mark, length } = run;
    broken.push(
      ...brokenOn(
        { run: mark, length, spacing, fromEnd, round, places, splices, removed, closeness },
        (along) => outside(placeAlong(run.edges, along), off),
      ),
    );
  }
  const staked = {
    run: run.mark,
    count: supports.length,
    held: held.length,
    gap: widestGap(supports, round ? run.length : undefined),
    spacing,
    governs,
    fromEnd: toGrid(even.fromEnd),
    evenly: even.count,
  };
  return { staked, stakes, held, broken };
}

/**
 * Evenly spaced where they can all be driven so and nothing else is asked of them, and along a wall, where none can be
 * driven; otherwise the fewest, on clear ground where there is any.
 */
function supportsOf(
  { run, even, spacing, splices }: RunToStake,
  hand: readonly HandPlace[],
  clear: readonly Stretch[],
  round: boolean,
  { fromEnd, closeness }: Site,
): readonly Support[] {
  if (hand.length === 0 && splices.length === 0) {
    const places = Array.from({ length: even.count }, (_, i) => even.fromEnd + i * even.gap);
    const blocked = run.kind !== 'free';
    if (blocked || places.every((along) => isOn(clear, toGrid(along)))) {
      return places.map((along) => ({ along, blocked }));
    }
  }
  const staking = {
    length: run.length,
    spacing,
    fromEnd,
    closeness,
    near: splices.flatMap((splice) => spliceSides(splice, fromEnd)),
    fixed: hand.map(({ along }) => along),
  };
  return round ? leastStakesRound(staking, clear) : leastStakes(staking, clear);
}

function isOn(clear: readonly Stretch[], along: Grid): boolean {
  return clear.some(({ from, to }) => from <= along && along <= to);
}

/** The middle of a stake behind a place on the face, on the grid. */
function outside({ x, y, outward }: FacePlace, off: Grid): Point {
  return { x: toGrid(x + off * Math.cos(outward)), y: toGrid(y + off * Math.sin(outward)) };
}

/** A stake set by hand where none can be driven: how near what is in the way is to its middle, and how near it may be. */
function onBlocked(
  { at, run }: Pick<Stake, 'at' | 'run'>,
  hand: string,
  { obstacles }: Ground,
): BrokenRule {
  const obstacle = obstacleAt(at, obstacles);
  return {
    run,
    rule: 'blocked',
    at,
    found: obstacle ? Math.floor(distanceTo(at, obstacle)) : 0,
    allowed: obstacle?.reach ?? HALF_STAKE,
    hand,
  };
}

/** The widest gap between two that follow each other, round the whole where there is a length; 0 for one alone. */
function widestGap(supports: readonly Support[], round: Grid | undefined): Grid {
  if (supports.length < 2) return 0;
  let widest = round === undefined ? 0 : supports[0]!.along + round - supports.at(-1)!.along;
  for (let i = 1; i < supports.length; i++) {
    widest = Math.max(widest, supports[i]!.along - supports[i - 1]!.along);
  }
  return toGrid(widest);
}
