import type { Point } from '../geometry/point.ts';
import { BOARD_NOTE_CODES } from './boards/keys.ts';
import type { Note, Quantity, Station } from './figure.ts';
import { JOINT_NOTE_CODES } from './joints/keys.ts';
import { MIX_NOTE_CODES } from './mix/keys.ts';
import { ORDER_NOTE_CODES } from './order/keys.ts';
import { PLACING_NOTE_CODES } from './placing/keys.ts';
import { STAKE_NOTE_CODES } from './stakes/keys.ts';
import { STEEL_NOTE_CODES } from './steel/keys.ts';
import { WEATHER_NOTE_CODES } from './weather/keys.ts';

/** Every code that the trades after the outline can give; the words files hold a sentence for each. */
export const TRADE_NOTE_CODES = [
  ...STAKE_NOTE_CODES,
  // stop
  'thickness-zero',
  'thickened-not-deeper',
  'form-depth-zero',
  'waste-below-zero',
  'blend-no-parts',
  'mix-not-listed',
  'bag-yield-zero',
  'bag-weight-zero',
  'bags-too-many',
  // caution
  'form-gap',
  'form-cut',
  'form-proud',
  'trench-bank',
  'form-deeper',
  'form-shallower',
  'nominal-depth',
  'slab-thin',
  'cement-burns',
  'silica-dust',
  'heavy-bags',
  // assumption
  'local-code',
  'forms-inside-face',
  'form-none-against-old',
  'edges-not-thickened',
  'edges-thickened',
  'thickness-used',
  'thickened-used',
  'flat-ground',
  'allowance-used',
  'yield-nominal',
  'blend-whole-bags',
  ...JOINT_NOTE_CODES,
  ...MIX_NOTE_CODES,
  ...BOARD_NOTE_CODES,
  ...STEEL_NOTE_CODES,
  ...WEATHER_NOTE_CODES,
  ...ORDER_NOTE_CODES,
  ...PLACING_NOTE_CODES,
] as const;
export type TradeNoteCode = (typeof TRADE_NOTE_CODES)[number];

/** What is said of the depth bears on the forms as much as on the mix. */
const OF_THE_FORMS_TOO: readonly string[] = [
  'form-deeper',
  'form-shallower',
  'nominal-depth',
] satisfies TradeNoteCode[];

/** Whether a note belongs on a station's ticket. */
export function isOn(station: Station, note: Note): boolean {
  return note.station === station || (station === 'forms' && OF_THE_FORMS_TOO.includes(note.code));
}

interface About {
  readonly facts?: Readonly<Record<string, Quantity>>;
  readonly features?: readonly string[];
  readonly at?: readonly Point[];
}

/** More places than this don't make a note clearer. */
const PLACES = 12;

export function tradeNote(
  station: Station,
  weight: Note['weight'],
  code: TradeNoteCode,
  { facts, features, at }: About = {},
): Note {
  return {
    code,
    weight,
    station,
    ...(facts ? { facts } : {}),
    ...(features && features.length > 0 ? { features } : {}),
    ...(at && at.length > 0 ? { at: at.slice(0, PLACES) } : {}),
  };
}

/** What a trade comes to: its part of the takeoff when it can be figured, and what must be said of it. */
export interface Figured<T> {
  readonly figured?: T;
  readonly notes: readonly Note[];
}

export function withheld(...notes: readonly Note[]): { readonly notes: readonly Note[] } {
  return { notes };
}
