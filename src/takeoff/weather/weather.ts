import type { Job } from '../../job/job.ts';
import type { Weather, WeatherPractices } from '../../job/placing.ts';
import { weatherRulesOf } from '../../job/placingDefaults.ts';
import { fromFahrenheit } from '../../units/temperature.ts';
import type { Note } from '../figure.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import { evaporation, number, temperature } from '../quantity.ts';
import { type EvaporationBand, type EvaporationInputs, evaporationBand } from './evaporation.ts';

/** What the weather does to the pour. */
export interface WeatherResult {
  /** Set times at 70 °F are multiplied by this: 1 while no temperature is known. */
  readonly setFactor: number;
  /** The temperature that it is for, °C: of the concrete, or of the air. */
  readonly setAt?: number;
  /** Absent until air, humidity and wind are known. */
  readonly drying?: EvaporationBand & { readonly inputs: EvaporationInputs };
}

/** Set times are said for this, °C. */
const USUAL = fromFahrenheit(70);
/** °C in 10 °F. */
const STEP = 50 / 9;
/** Concrete as it is placed, at most: a ready-mix standard's limit for heated concrete (90 °F). */
const HOTTEST = fromFahrenheit(90);
/** Kept at least so warm while it cures: a published specification (50 °F). */
const CURES_AT = fromFahrenheit(50);

/**
 * How much longer concrete takes to set than at 70 °F: so much more for each 10 °F that it is cooler, less for each that it is
 * warmer. A rule of thumb, no source.
 * @param shift As a share: 1/3 for a third longer.
 */
export function setFactorAt(celsius: number, shift: number): number {
  return (1 + shift) ** ((USUAL - celsius) / STEP);
}

/**
 * What is typed of the weather: its cautions, how fast the surface dries, and what it does to the set.
 * @source evaporation-limits
 */
export function weather({ weather: typed = {}, practices }: Job): Figured<WeatherResult> {
  const { air, concrete, humidity, wind } = typed;
  if (isWrong(typed)) return withheld(tradeNote('mix', 'stop', 'weather-wrong'));
  const rules = weatherRulesOf(practices);
  const setAt = concrete ?? air;
  const inputs =
    air === undefined || humidity === undefined || wind === undefined
      ? undefined
      : { air, humidity, wind, concrete: concrete ?? air };
  const drying = inputs && { ...evaporationBand(inputs), inputs };
  const figured: WeatherResult = {
    setFactor: setAt === undefined ? 1 : setFactorAt(setAt, rules.setShift),
    ...(setAt === undefined ? {} : { setAt }),
    ...(drying ? { drying } : {}),
  };
  return { figured, notes: weatherNotes(typed, rules, figured) };
}

/** The validator lets none of these in; a job that didn't come through it gives no figure. */
function isWrong({ air = 0, concrete = 0, humidity = 0, wind = 0 }: Weather): boolean {
  const within = (value: number, least: number, most: number) => value >= least && value <= most;
  return !(
    within(air, -40, 60) &&
    within(concrete, 0, 60) &&
    within(humidity, 0, 1) &&
    within(wind, 0, 200)
  );
}

function weatherNotes(
  typed: Weather,
  rules: WeatherPractices,
  { setAt, setFactor, drying }: WeatherResult,
): readonly Note[] {
  const { air, concrete, humidity, wind, sky, frost } = typed;
  const notes: Note[] = [];
  const say = (weight: Note['weight'], code: Parameters<typeof tradeNote>[2], facts = {}) =>
    notes.push(tradeNote('mix', weight, code, { facts }));
  const keep = temperature(CURES_AT);
  if (drying) {
    const code = dryingCode(drying, rules);
    const rate = evaporation(drying.low, drying.high);
    const limit =
      code === 'evaporation-low-bleed' ? rules.evaporationLowBleed : rules.evaporationMost;
    if (code) say('caution', code, { rate, limit: evaporation(limit, limit) });
  }
  if (frost) say('caution', 'weather-frost', { keep });
  if (air !== undefined && air < rules.coldBelow) {
    say('caution', 'weather-cold', { limit: temperature(rules.coldBelow), keep });
  }
  if (air !== undefined && air >= rules.hotFrom) {
    say('caution', 'weather-hot', { limit: temperature(rules.hotFrom) });
  }
  if (concrete !== undefined && concrete > HOTTEST) {
    say('caution', 'concrete-hot', { limit: temperature(HOTTEST) });
  }
  const known = [air, humidity, wind].filter((value) => value !== undefined).length;
  if (known === 0 && concrete === undefined) say('assumption', 'weather-not-given');
  else if (known < 3) say('assumption', 'weather-part-given');
  if (drying && concrete === undefined) say('assumption', 'weather-concrete-as-air');
  if (drying) {
    say('assumption', 'evaporation-honest', { rate: evaporation(drying.least, drying.most) });
  }
  if (setAt !== undefined) {
    const facts = { at: temperature(setAt), factor: number(setFactor) };
    say('assumption', 'set-rule', facts);
  }
  if (sky === 'sun') say('assumption', 'weather-sun');
  return notes;
}

/**
 * Over the limit by every equation; near it, when it lies within the band and its uncertainty; or enough to dry a mix that
 * bleeds little.
 */
function dryingCode(
  { low, most }: EvaporationBand,
  { evaporationMost, evaporationLowBleed }: WeatherPractices,
): 'evaporation-over' | 'evaporation-near' | 'evaporation-low-bleed' | undefined {
  if (low >= evaporationMost) return 'evaporation-over';
  if (most >= evaporationMost) return 'evaporation-near';
  return most >= evaporationLowBleed ? 'evaporation-low-bleed' : undefined;
}
