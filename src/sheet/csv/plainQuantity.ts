import type { Quantity } from '../../takeoff/figure.ts';
import {
  CUBIC_FOOT,
  CUBIC_METRE,
  FLUID_OUNCE,
  FOOT,
  INCH,
  LITRE,
  MILLILITRE,
  MILLIMETRE,
  POUND_KG,
  POUND_PER_CUBIC_FOOT,
  PSI,
  QUART,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../../units/grid.ts';
import { MILE_KM, toFahrenheit } from '../../units/temperature.ts';
import type { LengthStyle } from '../../units/writtenLength.ts';
import type { Words } from '../words/words.ts';

/** A quantity as a number, and the unit it is in: '' for a bare number. */
export interface PlainQuantity {
  readonly number: number;
  readonly unit: string;
}

/** Square millimetres to the metre in one square inch to the foot. */
const SQUARE_INCH_PER_FOOT = 25.4 ** 2 / 0.3048;
const POUND_FORCE = POUND_KG * 9.80665;

/** A quantity as one number in one unit, whatever its size, so that a column can be added up; null for words. */
export function plainQuantity(
  words: Words,
  quantity: Quantity,
  style: LengthStyle,
): PlainQuantity | null {
  const metric = style === 'metric';
  const either = (inMetric: number, unit: string, other: number, otherUnit: string) =>
    metric ? { number: inMetric, unit } : { number: other, unit: otherUnit };
  switch (quantity.of) {
    case 'length': {
      const { grid } = quantity;
      if (style === 'decimal-feet') return { number: grid / FOOT, unit: 'ft' };
      return either(grid / MILLIMETRE, 'mm', grid / INCH, 'in');
    }
    case 'angle':
      return { number: quantity.degrees, unit: '°' };
    case 'area':
      return either(quantity.grid2 / SQUARE_METRE, 'm²', quantity.grid2 / SQUARE_FOOT, 'ft²');
    case 'volume':
      if (quantity.as === 'tube') {
        return either(quantity.grid3 / MILLILITRE, 'mL', quantity.grid3 / FLUID_OUNCE, 'fl oz');
      }
      if (quantity.as === 'water') {
        return either(quantity.grid3 / LITRE, 'L', quantity.grid3 / QUART, 'qt');
      }
      return either(quantity.grid3 / CUBIC_METRE, 'm³', quantity.grid3 / CUBIC_FOOT, 'ft³');
    case 'weight':
      return either(quantity.kg, 'kg', quantity.kg / POUND_KG, 'lb');
    case 'weight-by-area': {
      const { kgPerSquareMetre } = quantity;
      const perSquareFoot = ((kgPerSquareMetre / POUND_KG) * SQUARE_FOOT) / SQUARE_METRE;
      return either(kgPerSquareMetre, 'kg/m²', perSquareFoot, 'lb/ft²');
    }
    case 'area-by-length': {
      const { mm2PerMetre } = quantity;
      return either(mm2PerMetre, 'mm²/m', mm2PerMetre / SQUARE_INCH_PER_FOOT, 'in²/ft');
    }
    case 'density': {
      const { kgPerCubicMetre } = quantity;
      return either(kgPerCubicMetre, 'kg/m³', kgPerCubicMetre / POUND_PER_CUBIC_FOOT, 'lb/ft³');
    }
    case 'pressure': {
      const { pascals, as } = quantity;
      return as === undefined
        ? either(pascals / 1e3, 'kPa', pascals / (POUND_FORCE / 0.3048 ** 2), 'lb/ft²')
        : either(pascals / 1e6, 'MPa', pascals / PSI, 'psi');
    }
    case 'line-load': {
      const { newtonsPerMetre } = quantity;
      return either(newtonsPerMetre, 'N/m', newtonsPerMetre / (POUND_FORCE / 0.3048), 'lb/ft');
    }
    case 'time':
      return { number: quantity.minutes, unit: 'min' };
    case 'temperature': {
      const { celsius } = quantity;
      return either(celsius, '°C', toFahrenheit(celsius), '°F');
    }
    case 'wind':
      return either(quantity.kmPerHour, 'km/h', quantity.kmPerHour / MILE_KM, 'mph');
    case 'evaporation': {
      // A band is no one number: its upper end is what is acted on.
      const { high } = quantity;
      const pounds = ((high / POUND_KG) * SQUARE_FOOT) / SQUARE_METRE;
      return either(high, 'kg/m²/h', pounds, 'lb/ft²/h');
    }
    case 'area-rate': {
      const { grid2PerHour } = quantity;
      return either(grid2PerHour / SQUARE_METRE, 'm²/h', grid2PerHour / SQUARE_FOOT, 'ft²/h');
    }
    case 'volume-rate': {
      const { grid3PerHour } = quantity;
      return either(grid3PerHour / CUBIC_METRE, 'm³/h', grid3PerHour / CUBIC_FOOT, 'ft³/h');
    }
    case 'count':
      return { number: quantity.count, unit: words.csv.number };
    case 'half-bags':
      return { number: quantity.bags, unit: words.csv.number };
    case 'money':
      return { number: quantity.cents / 100, unit: quantity.currency.trim() };
    case 'share':
      return { number: quantity.share * 100, unit: '%' };
    case 'number':
      return { number: quantity.number, unit: words.csv.number };
    case 'words':
    case 'text':
    case 'list':
      return null;
    default:
      return quantity satisfies never;
  }
}
