import {
  CUBIC_FOOT,
  CUBIC_YARD,
  FOOT,
  POUND_KG,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../units/grid.ts';
import { fromFahrenheit } from '../units/temperature.ts';
import type { Practices } from './job.ts';
import type { PlacingPractices, WeatherPractices } from './placing.ts';

/** kg/m² in one pound to the square foot. */
const POUND_PER_SQUARE_FOOT = (POUND_KG * SQUARE_METRE) / SQUARE_FOOT;

/** What a new job starts with of the weather. */
function defaultWeatherPractices(): WeatherPractices {
  return {
    // 0.2 lb/ft² in an hour is published; 0.1 to 0.15 for mixes that bleed little is from memory.
    evaporationMost: 0.2 * POUND_PER_SQUARE_FOOT,
    evaporationLowBleed: 0.1 * POUND_PER_SQUARE_FOOT,
    // Published specifications: protected below 40 °F, hot from 80 °F.
    coldBelow: fromFahrenheit(40),
    hotFrom: fromFahrenheit(80),
    // A rule of thumb, no source: about a third longer for each 10 °F.
    setShift: 1 / 3,
  };
}

/** What a new job starts with of crew, tools and rates: common practice without a source where nothing else is said. */
function defaultPlacing(): PlacingPractices {
  return {
    crew: 2,
    mixers: 1,
    // Two 80 lb bags a batch, about 5 min: a trade page.
    cycle: 5,
    barrow: {
      // 2 ft³ of wet concrete at most (a published book on concrete costs, 1908): 300 lb.
      load: 2 * CUBIC_FOOT,
      distance: 25 * FOOT,
      // 200 ft a minute, and 3/4 min a trip lost: the same book.
      speed: 200 * FOOT,
      lost: 0.75,
    },
    placeRate: CUBIC_YARD,
    strikeRate: 200 * SQUARE_FOOT,
    floatRate: 200 * SQUARE_FOOT,
    edgeRate: 150 * FOOT,
    trowel: false,
    trowelRate: 150 * SQUARE_FOOT,
    broomRate: 600 * SQUARE_FOOT,
    bleedShare: 0.5,
    floatShare: 0.6,
    trowelShare: 0.9,
    // A placement is kept within about an hour: a trade page.
    edgeWindow: 60,
    // 12 to 24 h: from memory.
    stripHours: 24,
    board: 12 * FOOT,
    // A board 2 ft longer than what it spans.
    boardBearing: 2 * FOOT,
    pulledBy: 'two',
    soloMost: 6 * FOOT,
    strips: 'proposed',
    handReach: 2.5 * FOOT,
    poleReach: 16 * FOOT,
    coolWater: fromFahrenheit(50),
    // Water 4° cooler makes the mix 1° cooler: from memory.
    waterShare: 0.25,
  };
}

const DEFAULT_WEATHER = defaultWeatherPractices();
const DEFAULT_PLACING = defaultPlacing();

/** From which weather on something is done: as set, or as it starts. */
export function weatherRulesOf({
  weather = DEFAULT_WEATHER,
}: Pick<Practices, 'weather'>): WeatherPractices {
  return weather;
}

/** The crew and its tools: as set, or as they start. */
export function placingOf({
  placing = DEFAULT_PLACING,
}: Pick<Practices, 'placing'>): PlacingPractices {
  return placing;
}
