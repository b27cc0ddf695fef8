import type { Job } from '../../job/job.ts';
import { weatherRulesOf } from '../../job/placingDefaults.ts';
import type { Figure } from '../figure.ts';
import { evaporation, number, share, temperature, wind } from '../quantity.ts';
import { nomograph, paperSi, paperUs } from './evaporation.ts';
import type { WeatherResult } from './weather.ts';

/** How fast the surface dries, and how the set is shifted: each once its weather is typed. */
export function weatherFigures(
  practices: Job['practices'],
  { drying, setAt, setFactor }: WeatherResult,
): readonly Figure[] {
  const rules = weatherRulesOf(practices);
  const figures: Figure[] = [];
  if (drying) {
    const { low, high, inputs } = drying;
    figures.push({
      key: 'evaporation',
      value: evaporation(low, high),
      working: () => ({
        of: 'evaporation',
        formula: '5([Tc+18]^2.5 − r[Ta+18]^2.5)(V+4) · 10⁻⁶ … 0.44(e₀ − r·eₐ)(0.253 + 0.096V)',
        inputs: [
          { key: 'air', value: temperature(inputs.air), from: 'typed' },
          { key: 'concrete-temperature', value: temperature(inputs.concrete), from: 'typed' },
          { key: 'humidity', value: share(inputs.humidity), from: 'typed' },
          { key: 'wind', value: wind(inputs.wind), from: 'typed' },
        ],
        rounding: 'none',
        source: ['evaporation-paper-1998', 'evaporation-nomograph', 'evaporation-uncertainty-2020'],
        steps: [paperSi, paperUs, nomograph].map((model, i) => ({
          label: `${i + 1}`,
          value: evaporation(model(inputs), model(inputs)),
        })),
      }),
    });
  }
  if (setAt !== undefined) {
    figures.push({
      key: 'set-factor',
      value: number(setFactor),
      working: () => ({
        of: 'set-factor',
        formula: 'f = (1 + s)^((70 °F − T) ÷ 10 °F)',
        inputs: [
          { key: 'concrete-temperature', value: temperature(setAt), from: 'typed' },
          { key: 'set-shift', value: share(rules.setShift), from: 'practice' },
        ],
        rounding: 'none',
        source: ['common-practice', 'user'],
      }),
    });
  }
  return figures;
}
