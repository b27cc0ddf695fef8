/** °C of °F; exact but for the rounding of floats. */
export function fromFahrenheit(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

export function toFahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}

/** Kilometres in one international mile, exact by definition. */
export const MILE_KM = 1.609344;
