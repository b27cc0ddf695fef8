import type { Quantity } from '../../takeoff/figure.ts';
import { formatNumber } from '../../units/format.ts';
import { CUBIC_FOOT, CUBIC_METRE, POUND_KG, SQUARE_FOOT, SQUARE_METRE } from '../../units/grid.ts';
import { MILE_KM, toFahrenheit } from '../../units/temperature.ts';
import type { LengthStyle } from '../../units/writtenLength.ts';
import { filled } from './filled.ts';
import type { Words } from './words.ts';

type Measure = Extract<
  Quantity,
  { readonly of: 'temperature' | 'wind' | 'evaporation' | 'area-rate' | 'volume-rate' }
>;

const POUND_PER_SQUARE_FOOT = (POUND_KG * SQUARE_METRE) / SQUARE_FOOT;

/** A span of time as `45 min`, `2 h` or `2 h 5 min`. */
export function sayTime({ measures }: Words, minutes: number): string {
  const whole = Math.round(minutes);
  const facts = { hours: `${Math.floor(whole / 60)}`, minutes: `${whole % 60}` };
  if (whole < 60) return filled(measures.minutes, { minutes: `${whole}` });
  return filled(whole % 60 === 0 ? measures.hours : measures.hoursMinutes, facts);
}

/** Temperature, wind, evaporation and rates, with their units. */
export function sayMeasure({ measures }: Words, quantity: Measure, style: LengthStyle): string {
  const metric = style === 'metric';
  const unit = metric ? 'metric' : 'other';
  switch (quantity.of) {
    case 'temperature': {
      const degrees = metric ? quantity.celsius : toFahrenheit(quantity.celsius);
      return filled(measures.temperature[unit], { number: formatNumber(degrees, 0) });
    }
    case 'wind': {
      const speed = metric ? quantity.kmPerHour : quantity.kmPerHour / MILE_KM;
      return filled(measures.wind[unit], { number: formatNumber(speed, 0) });
    }
    case 'evaporation': {
      const write = (rate: number) => (metric ? rate : rate / POUND_PER_SQUARE_FOOT).toFixed(2);
      const [low, high] = [write(quantity.low), write(quantity.high)];
      const number = low === high ? low : filled(measures.band, { low, high });
      return filled(measures.evaporation[unit], { number });
    }
    case 'area-rate': {
      const rate = quantity.grid2PerHour / (metric ? SQUARE_METRE : SQUARE_FOOT);
      return filled(measures.areaRate[unit], { number: formatNumber(rate, metric ? 1 : 0) });
    }
    case 'volume-rate': {
      const rate = quantity.grid3PerHour / (metric ? CUBIC_METRE : CUBIC_FOOT);
      return filled(measures.volumeRate[unit], { number: formatNumber(rate, metric ? 2 : 1) });
    }
  }
}
