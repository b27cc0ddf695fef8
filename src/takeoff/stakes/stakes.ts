import type { Polygon } from '../../geometry/point.ts';
import { samePoint } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Job } from '../../job/job.ts';
import { type Grid, POUND_KG } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { placeAlong } from '../forms/along.ts';
import { DRESSED } from '../forms/rules.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import { count, length } from '../quantity.ts';
import type { FormRun, FormsResult, Stake, StakedRun, StakesResult } from '../result.ts';
import { inPour, obstacleAt, obstacles } from './blocked.ts';
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
 * it), and the nails for them. Places are the middles of the stakes, on the grid. Those that would be driven into a
 * no-stake zone, into what stands there already or into the pour are kept apart: they are no stakes until somebody finds
 * where they can go. A form along a wall that can't be poured against has no room outside it, so none of its can be driven.
 * @param polygons The pour as polygons, arcs flattened.
 */
export function stakes(
  job: Job,
  forms: FormsResult,
  polygons: readonly Polygon[],
  closeness: Grid,
): Figured<StakesResult> {
  const { practices } = job;
  const { stakeSpacing, stakeFromEnd, nailsPerStake, nailsPerCorner, nailsPerPound } = practices;
  if (!(stakeSpacing > 0 && stakeFromEnd >= 0)) {
    return withheld(tradeNote('forms', 'stop', 'stake-spacing-zero'));
  }
  if (!(nailsPerPound > 0)) return withheld(tradeNote('forms', 'stop', 'nails-per-pound-zero'));
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
  const inTheWay = obstacles(job);
  const driven: Stake[] = [];
  const blocked: Stake[] = [];
  const blocking = new Set<string>();
  const byRun: StakedRun[] = [];
  for (const { run, places } of placed) {
    const before = blocked.length;
    for (let i = 0; i < places.count; i++) {
      const along = places.fromEnd + i * places.gap;
      const { x, y, outward } = placeAlong(run.edges, along);
      const at = {
        x: toGrid(x + off * Math.cos(outward)),
        y: toGrid(y + off * Math.sin(outward)),
      };
      const stake = { at, outward, run: run.mark, along: toGrid(along) };
      const obstacle = obstacleAt(at, inTheWay);
      if (obstacle) blocking.add(obstacle.feature);
      const free = !obstacle && run.kind === 'free' && !inPour(at, polygons);
      (free ? driven : blocked).push(stake);
    }
    byRun.push({
      run: run.mark,
      count: places.count,
      blocked: blocked.length - before,
      gap: toGrid(places.gap),
      fromEnd: toGrid(places.fromEnd),
    });
  }
  const nails = nailsPerStake * driven.length + nailsPerCorner * forms.corners;
  return {
    figured: {
      stakes: driven,
      byRun,
      blocked,
      nails,
      nailWeight: (nails / nailsPerPound) * POUND_KG,
    },
    notes: stakeNotes(forms, driven, blocked, [...blocking], stakeSpacing, stakeFromEnd),
  };
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
  blocked: readonly Stake[],
  blocking: readonly string[],
  spacing: Grid,
  fromEnd: Grid,
): readonly Note[] {
  if (driven.length + blocked.length === 0) return [];
  const notes: Note[] = [
    tradeNote('forms', 'caution', 'call-before-digging'),
    tradeNote('forms', 'assumption', 'stakes-at-ends', {
      facts: { spacing: length(spacing), fromEnd: length(fromEnd) },
    }),
  ];
  if (blocked.length > 0) {
    notes.push(
      tradeNote('forms', 'caution', 'stakes-blocked', {
        facts: { blocked: count(blocked.length, 'stake') },
        features: blocking,
        at: blocked.map(({ at }) => at),
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
