/** Names of what is said of the weather: see takeoff/keys.ts. */
export type WeatherFigureKey = 'evaporation' | 'set-factor';

export type WeatherInputKey =
  | 'air'
  | 'concrete-temperature'
  | 'humidity'
  | 'wind'
  | 'set-shift'
  | 'evaporation-most';

export const WEATHER_NOTE_CODES = [
  // stop
  'weather-wrong',
  // caution
  'evaporation-over',
  'evaporation-near',
  'evaporation-low-bleed',
  'weather-cold',
  'weather-frost',
  'weather-hot',
  'concrete-hot',
  // assumption
  'weather-not-given',
  'weather-part-given',
  'weather-concrete-as-air',
  'evaporation-honest',
  'set-rule',
  'weather-sun',
] as const;
export type WeatherNoteCode = (typeof WEATHER_NOTE_CODES)[number];
