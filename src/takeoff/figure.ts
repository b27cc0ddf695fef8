import type { Grid } from '../units/grid.ts';
import type { Money } from '../units/money.ts';
import type { ColumnKey, FigureKey, InputKey, TableKey } from './keys.ts';

/** A value and what it measures. Formatting is the language's and the unit style's business. */
export type Quantity =
  /** `to`: feet-inches are rounded to one of this many parts of an inch; 16 when not said. */
  | { readonly of: 'length'; readonly grid: number; readonly to?: 8 | 16 | 32 | 64 }
  | { readonly of: 'angle'; readonly degrees: number }
  /** Square grid units. */
  | { readonly of: 'area'; readonly grid2: number }
  /** Cubic grid units. `as` bags: always in the small unit (ft³, L), so that the lines of a ticket can be added up; tube: as tubes are sold (fl oz, mL); water: as it is measured out (qt, gal, L). */
  | {
      readonly of: 'volume';
      readonly grid3: number;
      readonly as?: 'bags' | 'one-bag' | 'tube' | 'water';
    }
  | { readonly of: 'weight'; readonly kg: number }
  | { readonly of: 'weight-by-area'; readonly kgPerSquareMetre: number }
  | { readonly of: 'area-by-length'; readonly mm2PerMetre: number }
  | { readonly of: 'density'; readonly kgPerCubicMetre: number }
  /**
   * `as` wood or steel: what it bears, in psi, ksi or MPa; otherwise what lies or presses on something, in lb/ft² or kPa.
   */
  | { readonly of: 'pressure'; readonly pascals: number; readonly as?: 'wood' | 'steel' }
  | { readonly of: 'line-load'; readonly newtonsPerMetre: number }
  /** As hours and minutes, to the nearest minute. */
  | { readonly of: 'time'; readonly minutes: number }
  | { readonly of: 'temperature'; readonly celsius: number }
  | { readonly of: 'wind'; readonly kmPerHour: number }
  /** Water off a surface, kg/m² in an hour: from the one to the other. */
  | { readonly of: 'evaporation'; readonly low: number; readonly high: number }
  /** What is done in an hour, square or cubic grid units. */
  | { readonly of: 'area-rate'; readonly grid2PerHour: number }
  | { readonly of: 'volume-rate'; readonly grid3PerHour: number }
  /** Whole or half bags of a batch: a bare number, 1 1/2. */
  | { readonly of: 'half-bags'; readonly bags: number }
  /** Whole or fractional pieces; `unit` names a word in the language files ('bag', 'stake', 'sheet'…). */
  | { readonly of: 'count'; readonly count: number; readonly unit: string }
  /** Whole cents, with the sign that prices are written with. */
  | { readonly of: 'money'; readonly cents: Money; readonly currency: string }
  | { readonly of: 'share'; readonly share: number }
  | { readonly of: 'number'; readonly number: number }
  /** A word of the trade, by its key in the language files. */
  | { readonly of: 'words'; readonly word: string }
  /** A mark or a name that somebody gave: the same in every language. */
  | { readonly of: 'text'; readonly text: string }
  /** Several, one after another. */
  | { readonly of: 'list'; readonly items: readonly Quantity[] };

/** An input of a working: a setting, something measured on the sketch, another figure, or a step between. */
export interface WorkingInput {
  /** Names the words for it in the language files. */
  readonly key: InputKey | FigureKey;
  readonly value: Quantity;
  /** Where it comes from: the figure of that key, the sketch, a setting, typed for this job alone, a published constant, or worked out on the way. */
  readonly from: 'sketch' | 'practice' | 'figure' | 'published' | 'worked-out' | 'typed';
}

/** How a figure was reached. Words come from the language files under the figure's key. */
export interface Working {
  /** The figure that this is the working of: names its formula in words. */
  readonly of: FigureKey;
  /** Symbols, the same in every language: `V = A × t`. */
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  readonly rounding: 'none' | 'up' | 'up-each' | 'nearest' | 'cent';
  /** Ids from tests/references, or the two honest words. */
  readonly source: readonly (string | 'common-practice' | 'geometry' | 'user')[];
  /** Steps worth showing line by line, e.g. one per form run. */
  readonly steps?: readonly WorkingStep[];
}

export interface WorkingStep {
  readonly label: string;
  readonly value: Quantity;
  /** Symbols with numbers put in, e.g. `⌈12'-4" ÷ 3'-0"⌉ + 1`. Lengths are quantities, so: a template and values. */
  readonly template?: string;
  readonly values?: readonly Quantity[];
}

/** One number on a ticket. */
export interface Figure {
  /** Unique in the takeoff, stable over versions: `net-area`. */
  readonly key: FigureKey;
  readonly value: Quantity;
  /** Made only when somebody opens it. */
  readonly working: () => Working;
  /** A figure that must not be read as the net: an allowance, a rounding. */
  readonly role?: 'net' | 'allowance' | 'rounding' | 'order';
}

/** Stations of the day (vocabulary: only those built are listed). */
export type Station = 'ground' | 'forms' | 'steel' | 'joints' | 'mix' | 'order';

/** Figures of one station in reading order. */
export interface Ticket {
  readonly station: Station;
  readonly figures: readonly Figure[];
  readonly tables: readonly TicketTable[];
}

export interface TicketTable {
  readonly key: TableKey;
  /** Column keys, words in the language files. */
  readonly columns: readonly ColumnKey[];
  readonly rows: readonly (readonly Quantity[])[];
}

/** Something the user must know before they act on a figure. Words by code. */
export interface Note {
  readonly code: string;
  /** stop: figures withheld. caution: look before you build. assumption: what was taken as so. */
  readonly weight: 'stop' | 'caution' | 'assumption';
  readonly station: Station;
  readonly facts?: Readonly<Record<string, Quantity>>;
  /** Features and places it concerns, so that the sketch can point at them. */
  readonly features?: readonly string[];
  readonly at?: readonly { readonly x: Grid; readonly y: Grid }[];
}
