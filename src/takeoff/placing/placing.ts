import type { Polygon } from '../../geometry/point.ts';
import type { BagMix, Job, Practices } from '../../job/job.ts';
import type { PlacingPractices } from '../../job/placing.ts';
import { placingOf, weatherRulesOf } from '../../job/placingDefaults.ts';
import { mix as figureMix } from '../mix/mix.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { length } from '../quantity.ts';
import type { JointsResult, MixResult, VolumeResult } from '../result.ts';
import { setFactorAt, type WeatherResult } from '../weather/weather.ts';
import { batchVolumes } from './batchVolumes.ts';
import { type Means, offersFor } from './offers.ts';
import { batchWork, minutesABatch } from './pace.ts';
import { placingNotes } from './placingNotes.ts';
import type { PlacingResult } from './placingResult.ts';
import { type Given, isInTrouble, planPour } from './plan.ts';
import { reachOf } from './reach.ts';
import { MOST_BATCHES } from './rules.ts';
import { spanOf } from './strips.ts';

/** What placing is figured from, besides the job: what came before it in the day. */
interface Before {
  readonly pour: NetPour;
  /** One a piece of the pour, arcs as chords. */
  readonly polygons: readonly Polygon[];
  readonly slab: VolumeResult;
  readonly bags: MixResult;
  readonly joints: JointsResult | undefined;
  readonly weather: WeatherResult | undefined;
}

/**
 * The pour batch by batch and strip by strip, from the end that is hardest to get out of: every bag that is opened is taken
 * as poured, evenly deep. Where the clock doesn't allow it, what would help is figured in the same way.
 */
export function placing(
  { practices, weather: typed }: Job,
  before: Before,
): Figured<PlacingResult> {
  const rules = placingOf(practices);
  const { pour, polygons, bags, weather } = before;
  if (!areRates(rules)) return withheld(tradeNote('mix', 'stop', 'placing-rates-wrong'));
  const span = spanOf(rules);
  if (!(span > 0)) {
    const facts = { board: length(rules.board), bearing: length(rules.boardBearing) };
    return withheld(tradeNote('mix', 'stop', 'screed-board-short', { facts }));
  }
  const batches = batchVolumes(bags);
  if (!batches) return withheld(tradeNote('mix', 'caution', 'placing-no-batches'));
  if (batches.length > MOST_BATCHES)
    return withheld(tradeNote('mix', 'caution', 'placing-too-many'));
  const blended = mixesOf(practices);
  const set = {
    initial: Math.min(...blended.map((one) => one.set.initial)),
    final: Math.min(...blended.map((one) => one.set.final)),
    fastest: blended.length > 1,
  };
  const setFactor = weather?.setFactor ?? 1;
  const pieces = pour.pieces.map((piece, i) => ({ polygon: polygons[i]!, piece }));
  const given: Given = { pieces, batches, rules, set, setFactor };
  const plan = planPour(given);
  if (!plan) return withheld(tradeNote('mix', 'caution', 'placing-too-many'));
  const volume = batches[0]!;
  const area = (pour.area * volume) / batches.reduce((sum, one) => sum + one, 0);
  const work = batchWork(rules, volume, area);
  const figured: PlacingResult = {
    ...plan,
    set,
    setFactor,
    batch: { work, minutes: minutesABatch(rules, work, rules.crew), volume, area },
    span,
    reach: reachOf(pour, polygons, rules.handReach),
    offers: isInTrouble(plan)
      ? offersFor(given, plan, meansFor(practices, before, set.initial, typed?.air))
      : [],
  };
  return { figured, notes: placingNotes(practices, pour, figured) };
}

/** The validator lets none of these in; a job that didn't come through it gives no figure. */
function areRates(rules: PlacingPractices): boolean {
  const { crew, mixers, cycle, barrow, placeRate, strikeRate, floatRate, edgeRate } = rules;
  return [
    crew,
    mixers,
    cycle,
    barrow.load,
    barrow.speed,
    placeRate,
    strikeRate,
    floatRate,
    edgeRate,
    rules.trowelRate,
    rules.broomRate,
    rules.edgeWindow,
    rules.stripHours,
  ].every((one) => one > 0 && one < Number.POSITIVE_INFINITY);
}

/** The mixes of the blend. The bags were counted by them, so they are there. */
function mixesOf({ mix }: Practices): readonly BagMix[] {
  const { main, mainParts, other, otherParts } = mix.blend;
  return mix.mixes.filter(
    ({ id }) => (id === main && mainParts > 0) || (id === other && otherParts > 0),
  );
}

function meansFor(
  practices: Practices,
  { slab, joints, weather }: Before,
  initial: number,
  air: number | undefined,
): Means {
  const { mix } = practices;
  const slower = mix.mixes
    .filter(({ set }) => set.initial > initial)
    .flatMap((one) => {
      const blend = { main: one.id, mainParts: 1, otherParts: 0 };
      const { figured } = figureMix({ ...practices, mix: { ...mix, blend } }, slab);
      const batches = figured && batchVolumes(figured);
      return batches && batches.length <= MOST_BATCHES ? [{ mix: one, batches }] : [];
    });
  const cooled = cooledBy(practices, weather?.setAt, air);
  return { slower, ...(cooled ? { cooled } : {}), joints: joints?.layout?.joints ?? [] };
}

/** What cool water would do: the mix follows the water by a share. Water from the hose is taken as warm as the air. */
function cooledBy(
  practices: Practices,
  setAt: number | undefined,
  air: number | undefined,
): Means['cooled'] {
  const { coolWater, waterShare } = placingOf(practices);
  const { setShift } = weatherRulesOf(practices);
  if (setAt === undefined) return undefined;
  const cooler = ((air ?? setAt) - coolWater) * waterShare;
  if (!(cooler > 0)) return undefined;
  return { celsius: coolWater, setFactor: setFactorAt(setAt - cooler, setShift) };
}
