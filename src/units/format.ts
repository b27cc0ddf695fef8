import {
  CUBIC_FOOT,
  CUBIC_METRE,
  CUBIC_YARD,
  GALLON,
  LITRE,
  POUND_KG,
  QUART,
  SQUARE_FOOT,
  SQUARE_METRE,
} from './grid.ts';
import type { LengthStyle } from './writtenLength.ts';

/** Writes a number with at most so many places, without trailing zeros, never as -0. No locale: a point for all. */
export function formatNumber(number: number, places = 2): string {
  const text = number.toFixed(places);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}

function fixed(number: number, places: number): string {
  const text = number.toFixed(places);
  return /^-[0.]+$/.test(text) ? text.slice(1) : text;
}

/** Square grid units as `152.3 ft²` (one place) or `14.15 m²` (two); two places more where only zeros would be seen. */
export function formatArea(grid2: number, style: LengthStyle): string {
  return style === 'metric'
    ? `${seen(grid2 / SQUARE_METRE, 2)} m²`
    : `${seen(grid2 / SQUARE_FOOT, 1)} ft²`;
}

/** A pipe's area must not read as nothing. */
function seen(number: number, places: number): string {
  const close = Number(number.toFixed(places)) === 0 && Number(number.toFixed(places + 2)) !== 0;
  return fixed(number, close ? places + 2 : places);
}

export type VolumeUnit = 'cubic-yard' | 'cubic-foot' | 'cubic-metre' | 'litre';

/**
 * Cubic grid units as `1.88 yd³` from one cubic yard up and `18.25 ft³` below; in metric as `1.437 m³` from a tenth
 * of a cubic metre up and `16.99 L` below. `unit` asks for one of them whatever the size.
 */
export function formatVolume(grid3: number, style: LengthStyle, unit?: VolumeUnit): string {
  const size = Math.abs(grid3);
  const chosen =
    unit ??
    (style === 'metric'
      ? size * 10 >= CUBIC_METRE
        ? 'cubic-metre'
        : 'litre'
      : size >= CUBIC_YARD
        ? 'cubic-yard'
        : 'cubic-foot');
  switch (chosen) {
    case 'cubic-yard':
      return `${fixed(grid3 / CUBIC_YARD, 2)} yd³`;
    case 'cubic-foot':
      return `${fixed(grid3 / CUBIC_FOOT, 2)} ft³`;
    case 'cubic-metre':
      return `${fixed(grid3 / CUBIC_METRE, 3)} m³`;
    case 'litre':
      return `${fixed((grid3 / CUBIC_METRE) * 1000, 2)} L`;
  }
}

/** Kilograms as `80 lb` or `36.29 kg`: whole from 100 up, two places at most below. */
export function formatWeight(kg: number, style: LengthStyle): string {
  const [number, unit] = style === 'metric' ? [kg, 'kg'] : [kg / POUND_KG, 'lb'];
  return `${formatNumber(number, Math.abs(number) < 100 ? 2 : 0)} ${unit}`;
}

/** A share of one as `10%`, one place at most. */
export function formatShare(share: number): string {
  return `${formatNumber(share * 100, 1)}%`;
}

/** Degrees as `90°`, two places at most. */
export function formatAngle(degrees: number): string {
  return `${formatNumber(degrees, 2)}°`;
}

/**
 * Cubic grid units of water as a crew measures it out: `6.5 qt` below four gallons, `44.2 gal` from there, `6.15 L` in metric.
 * `beside`: another amount that it is read beside, in the unit of the larger.
 */
export function formatWater(grid3: number, style: LengthStyle, beside = grid3): string {
  if (style === 'metric') return `${formatNumber(grid3 / LITRE, grid3 < 20 * LITRE ? 2 : 1)} L`;
  return Math.max(grid3, beside) < 4 * GALLON
    ? `${formatNumber(grid3 / QUART, 2)} qt`
    : `${formatNumber(grid3 / GALLON, 1)} gal`;
}
