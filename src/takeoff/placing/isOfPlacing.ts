import type { Note } from '../figure.ts';
import { WEATHER_NOTE_CODES } from '../weather/keys.ts';
import { PLACING_NOTE_CODES } from './keys.ts';

const CODES: ReadonlySet<string> = new Set([...PLACING_NOTE_CODES, ...WEATHER_NOTE_CODES]);

/** Whether a note is about how the pour goes, or about its weather. */
export function isOfPlacing({ code }: Note): boolean {
  return CODES.has(code);
}
