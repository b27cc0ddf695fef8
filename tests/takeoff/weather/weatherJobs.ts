import type { Job } from '../../../src/job/job.ts';
import type { Weather } from '../../../src/job/placing.ts';
import { fromFahrenheit, MILE_KM } from '../../../src/units/temperature.ts';
import { evenly, pad, TEN_BY_TWELVE } from '../placing/placingJobs.ts';

/** A day in °F, percent and mph. */
export function day(air: number, concrete: number, humidity: number, mph: number): Weather {
  return {
    air: fromFahrenheit(air),
    concrete: fromFahrenheit(concrete),
    humidity: humidity / 100,
    wind: mph * MILE_KM,
  };
}

const sample = (weather: Weather): Job => ({ ...evenly([pad(...TEN_BY_TWELVE)]), weather });

/** A pad in all kinds of weather: between them every note of it is given. */
export const WEATHER_JOBS: Readonly<Record<string, Job>> = {
  'hot and dry': sample(day(90, 90, 30, 10)),
  breezy: sample(day(75, 75, 50, 14)),
  'low bleed': sample(day(70, 70, 60, 12)),
  'cold and frosty': sample({ air: 3, frost: true }),
  'no thermometer': sample({ air: 25, humidity: 0.4, wind: 10, sky: 'sun' }),
  'hot concrete': sample({ concrete: 35 }),
  'too damp': sample({ humidity: 1.3 }),
};
