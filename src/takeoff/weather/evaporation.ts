import { POUND_KG, PSI, SQUARE_FOOT, SQUARE_METRE } from '../../units/grid.ts';
import { MILE_KM, toFahrenheit } from '../../units/temperature.ts';

/** What the published equations ask for. */
export interface EvaporationInputs {
  /** °C. */
  readonly air: number;
  readonly concrete: number;
  /** A share of one. */
  readonly humidity: number;
  /** km/h. */
  readonly wind: number;
}

/** kg/m² in one pound to the square foot. */
export const POUND_PER_SQUARE_FOOT = (POUND_KG * SQUARE_METRE) / SQUARE_FOOT;

/**
 * Water that leaves a wet surface, kg/m² in an hour. Never below nothing, when dew would settle instead.
 * @source evaporation-paper-1998
 */
export function paperSi({ air, concrete, humidity, wind }: EvaporationInputs): number {
  const drive = raised(concrete + 18) - humidity * raised(air + 18);
  return Math.max(0, 5e-6 * drive * (wind + 4));
}

/**
 * The same paper's equation in °F, mph and lb/ft², as kg/m² in an hour. From memory; it agrees with the other within 5 %.
 * @source evaporation-paper-1998
 */
export function paperUs({ air, concrete, humidity, wind }: EvaporationInputs): number {
  const drive = raised(toFahrenheit(concrete)) - humidity * raised(toFahrenheit(air));
  const pounds = 1e-6 * drive * (1 + (0.4 * wind) / MILE_KM);
  return Math.max(0, pounds * POUND_PER_SQUARE_FOOT);
}

/**
 * The equation behind the nomograph, vapour pressures in psi: lb/ft² in an hour, as kg/m². From memory; the reading in psi is
 * borne out by the published table, which one in inches of mercury is not.
 * @source evaporation-nomograph
 */
export function nomograph({ air, concrete, humidity, wind }: EvaporationInputs): number {
  const drive = vapourPsi(concrete) - humidity * vapourPsi(air);
  const pounds = 0.44 * drive * (0.253 + (0.096 * wind) / MILE_KM);
  return Math.max(0, pounds * POUND_PER_SQUARE_FOOT);
}

function raised(degrees: number): number {
  return Math.max(0, degrees) ** 2.5;
}

/** Saturated vapour over water, psi, at °C: the Tetens form, from memory. */
function vapourPsi(celsius: number): number {
  const kilopascals = 0.61078 * Math.exp((17.27 * celsius) / (celsius + 237.3));
  return kilopascals / (PSI / 1000);
}

/** What the equations say between them, and how far the truth may lie from that. kg/m² in an hour. */
export interface EvaporationBand {
  readonly low: number;
  readonly high: number;
  /** With the uncertainty of the method on either side. */
  readonly least: number;
  readonly most: number;
}

/**
 * Of the whole method, either way.
 * @source evaporation-uncertainty-2020
 */
export const UNCERTAIN = 0.4;

export function evaporationBand(inputs: EvaporationInputs): EvaporationBand {
  const models = [paperSi(inputs), paperUs(inputs), nomograph(inputs)];
  const low = Math.min(...models);
  const high = Math.max(...models);
  return { low, high, least: low * (1 - UNCERTAIN), most: high * (1 + UNCERTAIN) };
}
