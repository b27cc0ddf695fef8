import type { UnitStyle } from '../../job/job.ts';
import type { Weather } from '../../job/placing.ts';
import { formatNumber } from '../../units/format.ts';
import { parseNumber, parseShare } from '../../units/measure.ts';
import { fail, ok, type Result } from '../../units/result.ts';
import { fromFahrenheit, MILE_KM, toFahrenheit } from '../../units/temperature.ts';
import { ChooseField } from '../ChooseField.tsx';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';

type Measured = 'air' | 'concrete' | 'humidity' | 'wind';

/** How one of them is written and read in the units in use, and its bounds as it is kept. */
interface Scale {
  readonly write: (kept: number) => string;
  readonly read: (typed: string) => Result<number>;
  readonly unit: 'celsius' | 'fahrenheit' | 'percent' | 'kilometresAnHour' | 'milesAnHour';
  readonly least: number;
  readonly most: number;
}

/** The weather that this job is figured for. An empty field is what nobody has measured: nothing is guessed. */
export function WeatherPart() {
  const words = useWords();
  const says = words.app.weather;
  const session = useSession();
  const units = useAppState((state) => state.history.now.job.units);
  const weather = useAppState((state) => state.history.now.job.weather) ?? {};

  function put(next: Weather) {
    session.commit({ do: 'set-weather', weather: next });
  }

  return (
    <fieldset className="mix-card">
      <legend>{says.title}</legend>
      <p className="field-note">{says.intro}</p>
      {(['air', 'concrete', 'humidity', 'wind'] as const).map((key) => {
        const scale = scaleOf(key, units);
        const kept = weather[key];
        return (
          <TypedField<number | null>
            key={key}
            label={says.fields[key]}
            text={kept === undefined ? '' : scale.write(kept)}
            unit={says.units[scale.unit]}
            parse={(text) => readOrNothing(text, scale)}
            say={(problem) => sayReading(words, problem)}
            onValue={(value) => {
              const { [key]: _, ...others } = weather;
              put(value === null ? others : { ...others, [key]: value });
            }}
            inputMode="decimal"
          />
        );
      })}
      <ChooseField
        label={says.fields.sky}
        options={[
          ['', says.skies.unsaid],
          ['sun', says.skies.sun],
          ['shade', says.skies.shade],
        ]}
        value={weather.sky ?? ''}
        onChoose={(one) => {
          const { sky: _, ...others } = weather;
          put(one === 'sun' || one === 'shade' ? { ...others, sky: one } : others);
        }}
      />
      <label className="choice">
        <input
          type="checkbox"
          checked={weather.frost ?? false}
          onChange={(event) => {
            const { frost: _, ...others } = weather;
            put(event.currentTarget.checked ? { ...others, frost: true } : others);
          }}
        />
        {says.fields.frost}
      </label>
    </fieldset>
  );
}

function scaleOf(key: Measured, units: UnitStyle): Scale {
  const metric = units === 'metric';
  switch (key) {
    case 'air':
    case 'concrete':
      return {
        write: (kept) => formatNumber(metric ? kept : toFahrenheit(kept), 1),
        read: (typed) => changed(parseNumber(typed), metric ? same : fromFahrenheit),
        unit: metric ? 'celsius' : 'fahrenheit',
        least: key === 'air' ? -40 : 0,
        most: 60,
      };
    case 'humidity':
      return {
        write: (kept) => formatNumber(100 * kept, 0),
        read: parseShare,
        unit: 'percent',
        least: 0,
        most: 1,
      };
    case 'wind':
      return {
        write: (kept) => formatNumber(metric ? kept : kept / MILE_KM, 1),
        read: (typed) => changed(parseNumber(typed), metric ? same : (miles) => miles * MILE_KM),
        unit: metric ? 'kilometresAnHour' : 'milesAnHour',
        least: 0,
        most: 200,
      };
  }
}

function readOrNothing(typed: string, { read, write, least, most }: Scale): Result<number | null> {
  if (typed.trim() === '') return ok(null);
  const result = read(typed);
  if (!result.ok || (result.value >= least && result.value <= most)) return result;
  const facts = { least: write(least), most: write(most) };
  return fail({ code: 'out-of-range', where: typed, facts });
}

function same(value: number): number {
  return value;
}

function changed(result: Result<number>, change: (value: number) => number): Result<number> {
  return result.ok ? ok(change(result.value)) : result;
}
