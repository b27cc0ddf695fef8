import { describe, expect, test } from 'vitest';
import { apply } from '../../../src/job/commands.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { Weather } from '../../../src/job/placing.ts';
import { weatherRulesOf } from '../../../src/job/placingDefaults.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { sayNote, sayQuantity } from '../../../src/sheet/words/say.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { setFactorAt } from '../../../src/takeoff/weather/weather.ts';
import { fromFahrenheit } from '../../../src/units/temperature.ts';
import { day } from './weatherJobs.ts';

function typed(weather: Weather) {
  const done = apply(demoJob(), { do: 'set-weather', weather });
  if (!done.ok) throw new Error('refused');
  const result = takeoff(done.value);
  return {
    job: done.value,
    result,
    codes: result.notes.map(({ code }) => code),
    figures: ticketOf(done.value, result, 'mix').figures,
  };
}

describe('the weather as it is typed', () => {
  test('none: said so, and nothing is figured of it', () => {
    const { codes, figures, result } = typed({});
    expect(codes).toContain('weather-not-given');
    expect(result.weather).toEqual({ setFactor: 1 });
    expect(figures.map(({ key }) => key)).not.toContain('evaporation');
  });

  test('a part of it: the set is shifted, and what isn’t known isn’t guessed', () => {
    const { codes, figures } = typed({ air: fromFahrenheit(90) });
    const keys = figures.map(({ key }) => key);
    expect(codes).toContain('weather-part-given');
    expect(codes).toContain('weather-hot');
    expect(keys).toContain('set-factor');
    expect(keys).not.toContain('evaporation');
  });

  // 90/90 °F, 30 %, 10 mph: 0.27 by one equation, 0.26 and 0.26 by the others.
  test('hot and dry: a band, over the limit by every equation', () => {
    const { codes, figures, result } = typed(day(90, 90, 30, 10));
    expect(codes).toEqual(expect.arrayContaining(['evaporation-over', 'weather-hot']));
    const value = figures.find(({ key }) => key === 'evaporation')!.value;
    expect(sayQuantity(en, value, 'feet-inches')).toBe('0.26 to 0.27 lb/ft²/h');
    expect(sayQuantity(en, value, 'metric')).toBe('1.26 to 1.31 kg/m²/h');
    const note = result.notes.find(({ code }) => code === 'evaporation-over')!;
    expect(sayNote(en, note, 'feet-inches')).toContain('over your limit of 0.20 lb/ft²/h');
  });

  test('within 40 % of the limit is near it; far from it only matters to mixes that bleed little', () => {
    expect(typed(day(75, 75, 50, 14)).codes).toContain('evaporation-near');
    expect(typed(day(70, 70, 60, 12)).codes).toContain('evaporation-low-bleed');
    const calm = typed(day(65, 65, 70, 3)).codes;
    expect(calm.filter((code) => /^evaporation-(over|near|low-bleed)$/.test(code))).toEqual([]);
  });

  test('the limits are settings', () => {
    const { job } = typed(day(70, 70, 60, 12));
    const weather = { ...weatherRulesOf(job.practices), evaporationMost: 0.3, coldBelow: 25 };
    const codes = takeoff({ ...job, practices: { ...job.practices, weather } }).notes.map(
      ({ code }) => code,
    );
    expect(codes).toEqual(expect.arrayContaining(['evaporation-over', 'weather-cold']));
  });

  test('cold, frost, sun and hot concrete are cautioned about', () => {
    expect(typed({ air: fromFahrenheit(38) }).codes).toContain('weather-cold');
    expect(typed({ air: fromFahrenheit(41) }).codes).not.toContain('weather-cold');
    expect(typed({ air: fromFahrenheit(41), frost: true }).codes).toContain('weather-frost');
    expect(typed({ air: 20, sky: 'sun' }).codes).toContain('weather-sun');
    expect(typed({ air: 20, concrete: 34 }).codes).toContain('concrete-hot');
  });

  test('a humidity of 130 % is refused, whoever sends it', () => {
    const refused = apply(demoJob(), { do: 'set-weather', weather: { humidity: 1.3 } });
    expect(refused).toMatchObject({
      ok: false,
      problems: { code: 'field-range', where: 'humidity', facts: { most: 1 } },
    });
    const { notes, weather } = takeoff({
      ...demoJob(),
      weather: { humidity: 1.3, air: 20, wind: 5 },
    });
    expect(weather).toBeUndefined();
    expect(notes.find(({ code }) => code === 'weather-wrong')?.weight).toBe('stop');
    expect(takeoff({ ...demoJob(), weather: { air: Number.NaN } }).weather).toBeUndefined();
  });
});

// A third longer for each 10 °F: 4/3 at 60, 16/9 at 50, 3/4 at 80.
test('the set follows the temperature by its rule of thumb', () => {
  const factor = (fahrenheit: number) => setFactorAt(fromFahrenheit(fahrenheit), 1 / 3);
  expect([70, 60, 50, 80].map(factor)).toEqual([
    expect.closeTo(1),
    expect.closeTo(4 / 3),
    expect.closeTo(16 / 9),
    expect.closeTo(3 / 4),
  ]);
  expect(setFactorAt(35, 0)).toBe(1);
});

test('every figure of the weather says how it was reached', () => {
  const { figures } = typed(day(90, 85, 30, 10));
  for (const key of ['evaporation', 'set-factor'] as const) {
    const working = figures.find((one) => one.key === key)!.working();
    expect(working.of).toBe(key);
    expect(working.inputs.every(({ from }) => from === 'typed' || from === 'practice')).toBe(true);
  }
});
