import { fieldProblems } from '../fields.ts';
import type { Job } from '../job.ts';
import type { Weather } from '../placing.ts';
import { weatherSchema } from '../placingSchema.ts';
import type { Outcome } from '../refusal.ts';

export interface SetWeather {
  readonly do: 'set-weather';
  readonly weather: Weather;
}

/** All that is known of it at once; nothing known takes it out of the job. A refusal's `where` is the field. */
export function setWeather(job: Job, { weather }: SetWeather): Outcome {
  const [problem] = fieldProblems(weatherSchema, weather, '');
  if (problem) return { ok: false, problems: problem };
  const { weather: _, ...rest } = job;
  return {
    ok: true,
    value: Object.keys(weather).length === 0 ? rest : { ...rest, weather },
  };
}
