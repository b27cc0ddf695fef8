import type { Polygon } from '../../geometry/point.ts';
import { samePoint } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { placeAlong } from '../forms/along.ts';
import { DRESSED } from '../forms/rules.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import { count, length } from '../quantity.ts';
import type { FormRun, FormsResult, HeldPlace, Stake, StakedRun, StakesResult } from '../result.ts';
import { inPour, obstacleAt, obstacles } from './blocked.ts';
import { clearStretches, type Ground, groundOf } from './clearOf.ts';
import { fastening } from './fastening.ts';
import { leastStakes, type Staking, type Stretch, type Support } from './leastStakes.ts';
import {
  CURVE_SPACING,
  HALF_STAKE,
  MOST_STAKES,
  type Places,
  stakePlaces,
  stakePlacesRound,
} from './rules.ts';

/**
 * Stakes outside the forms, by spacing, each run with its own at both ends (so a corner is held by one on either side of
 * it), and the nails for them. Places are the middles of the stakes, on the grid. Evenly spaced where nothing is in
 * the way; where something is, the fewest that can be driven clear of no-stake zones, of what stands there already and of
 * the pour. Where no stake can go those that the form would need are kept apart: it must be held there by something else.
 * A form along a wall that can't be poured against has no room outside it, so none of its can be driven.
 * @param polygons The pour as polygons, arcs flattened.
 */
export function stakes(
  job: Job,
  forms: FormsResult,
  polygons: readonly Polygon[],
  closeness: Grid,
): Figured<StakesResult> {
  const { practices } = job;
  const { stakeFromEnd } = practices;
  const stakeSpacing = practices.stakeSpacings[practices.formBoard];
  if (!(stakeSpacing > 0 && stakeFromEnd >= 0)) {
    return withheld(tradeNote('forms', 'stop', 'stake-spacing-zero'));
  }
  const placed = forms.runs.map((run) => ({
    run,
    places: placesOf(run, stakeSpacing, stakeFromEnd, closeness),
  }));
  const all = placed.reduce((sum, { places }) => sum + places.count, 0);
  if (all > MOST_STAKES) {
    return withheld(
      tradeNote('forms', 'stop', 'stakes-too-many', { facts: { stakes: count(all, 'stake') } }),
    );
  }
  const off = DRESSED[practices.formBoard].thickness + HALF_STAKE;
  const ground = groundOf(obstacles(job), polygons);
  const driven: Stake[] = [];
  const held: HeldPlace[] = [];
  const byRun: StakedRun[] = [];
  for (const { run, places } of placed) {
    const before = held.length;
    const supports = supportsOf(run, places, off, ground, {
      length: run.length,
      spacing: spacingOn(run, stakeSpacing),
      fromEnd: stakeFromEnd,
      closeness,
    });
    for (const support of supports) {
      const { at, outward } = outside(run, support.along, off);
      const stake = { at, outward, run: run.mark, along: toGrid(support.along) };
      if (support.blocked) held.push(heldAt(run, stake, ground));
      else driven.push(stake);
    }
    byRun.push({
      run: run.mark,
      count: supports.length,
      held: held.length - before,
      gap: widestGap(supports),
      spacing: spacingOn(run, stakeSpacing),
      governs: spacingOn(run, stakeSpacing) < stakeSpacing ? 'curve' : 'practice',
      fromEnd: toGrid(places.fromEnd),
      evenly: places.count,
    });
  }
  const fastened = fastening(practices.fastening, driven.length, forms.corners, 0);
  if (!fastened) return withheld(tradeNote('forms', 'stop', 'nails-per-pound-zero'));
  return {
    figured: { stakes: driven, byRun, held, broken: [], fastening: fastened },
    notes: stakeNotes(forms, driven, held, stakeSpacing, stakeFromEnd),
  };
}

/** What holds a form where no stake can be driven: a strut to the wall along it; elsewhere, weight, which needs no ground. */
function heldAt(run: FormRun, stake: Stake, { obstacles: all }: Ground): HeldPlace {
  if (run.kind === 'wall-formed') return { ...stake, how: 'spreader', why: 'no-room' };
  const obstacle = obstacleAt(stake.at, all);
  return obstacle
    ? { ...stake, how: 'weight', why: obstacle.kind, feature: obstacle.feature }
    : { ...stake, how: 'weight', why: 'pour' };
}

/**
 * The supports of a run: evenly spaced where they can all be driven so, and where no others are looked for (on curves,
 * and along a wall, where there is no room for any); otherwise the fewest, on clear ground.
 */
function supportsOf(
  run: FormRun,
  places: Places,
  off: Grid,
  ground: Ground,
  staking: Staking,
): readonly Support[] {
  const even = Array.from({ length: places.count }, (_, i) => places.fromEnd + i * places.gap);
  if (run.kind !== 'free') return even.map((along) => ({ along, blocked: true }));
  if (run.curved) {
    return even.map((along) => {
      const { at } = outside(run, along, off);
      const blocked = !!obstacleAt(at, ground.obstacles) || inPour(at, ground.polygons);
      return { along, blocked };
    });
  }
  const clear = clearStretches(run, off, ground);
  return even.every((along) => isOn(clear, toGrid(along)))
    ? even.map((along) => ({ along, blocked: false }))
    : leastStakes(staking, clear);
}

function isOn(clear: readonly Stretch[], along: Grid): boolean {
  return clear.some(({ from, to }) => from <= along && along <= to);
}

/** The middle of a stake, on the grid, and the way out. */
function outside(run: FormRun, along: number, off: Grid): Pick<Stake, 'at' | 'outward'> {
  const { x, y, outward } = placeAlong(run.edges, along);
  return {
    at: { x: toGrid(x + off * Math.cos(outward)), y: toGrid(y + off * Math.sin(outward)) },
    outward,
  };
}

/** The widest gap between two that follow each other; 0 when there is one alone. */
function widestGap(supports: readonly Support[]): Grid {
  let widest = 0;
  for (let i = 1; i < supports.length; i++) {
    widest = Math.max(widest, supports[i]!.along - supports[i - 1]!.along);
  }
  return toGrid(widest);
}

function placesOf(run: FormRun, spacing: Grid, fromEnd: Grid, closeness: Grid): Places {
  const most = spacingOn(run, spacing);
  return closesOnItself(run)
    ? stakePlacesRound(run.length, most, closeness)
    : stakePlaces(run.length, most, fromEnd, closeness);
}

/** The widest gap between stakes on a run. */
export function spacingOn(run: FormRun, spacing: Grid): Grid {
  return run.curved ? Math.min(spacing, CURVE_SPACING) : spacing;
}

/** Whether a run is a whole circle: it has no ends. */
export function closesOnItself({ edges }: FormRun): boolean {
  return samePoint(edges[0]!.from, edges.at(-1)!.to);
}

function stakeNotes(
  forms: FormsResult,
  driven: readonly Stake[],
  held: readonly HeldPlace[],
  spacing: Grid,
  fromEnd: Grid,
): readonly Note[] {
  if (driven.length + held.length === 0) return [];
  const notes: Note[] = [
    tradeNote('forms', 'caution', 'call-before-digging'),
    tradeNote('forms', 'assumption', 'stakes-at-ends', {
      facts: { spacing: length(spacing), fromEnd: length(fromEnd) },
    }),
  ];
  if (held.length > 0) {
    notes.push(
      tradeNote('forms', 'caution', 'stakes-blocked', {
        facts: { blocked: count(held.length, 'stake') },
        features: [...new Set(held.flatMap(({ feature }) => feature ?? []))],
        at: held.map(({ at }) => at),
      }),
    );
  }
  if (forms.runs.some(({ curved }) => curved) && spacing > CURVE_SPACING) {
    notes.push(
      tradeNote('forms', 'assumption', 'stakes-on-curves', {
        facts: { spacing: length(CURVE_SPACING) },
      }),
    );
  }
  return notes;
}
