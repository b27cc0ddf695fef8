import type { BoardSize, Practices } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Money } from '../../units/money.ts';
import type { practicesEn } from '../words/practicesEn.ts';

type Words = typeof practicesEn;

export type FieldKey = keyof Words['fields'];
export type NoteKey = keyof Words['notes'];
export type UnitKey = keyof Words['units'];
export type ChoiceKey = keyof Words['choices'];

interface Named {
  readonly key: FieldKey;
  /** What practitioners do differently, said under the field. */
  readonly note?: NoteKey;
  /** Absent: always. */
  readonly shown?: (practices: Practices) => boolean;
}

/** One practice that is typed: how to read it out of the practices and how to put it back. */
export type Field =
  | (Named & Kept<Grid> & { readonly kind: 'length'; readonly least: Grid; readonly most: Grid })
  | (Named &
      Kept<number> & { readonly kind: 'count'; readonly least: number; readonly most: number })
  | (Named &
      Kept<number> & { readonly kind: 'share'; readonly least: number; readonly most: number })
  /** One part of so many, typed as `1/360`. `least` and `most` are of the many. */
  | (Named &
      Kept<number> & {
        readonly kind: 'one-part-of';
        readonly least: number;
        readonly most: number;
      })
  /** Cubic grid units. */
  | (Named & Kept<number> & { readonly kind: 'volume' })
  /** kg. */
  | (Named &
      Kept<number> & { readonly kind: 'weight'; readonly least: number; readonly most: number })
  /** kg per square metre. */
  | (Named & Kept<number> & { readonly kind: 'area-weight' })
  /** A plain number of a unit that stands behind it. */
  | (Named &
      Kept<number> & {
        readonly kind: 'measured';
        readonly unit: MeasuredIn;
        readonly least: number;
        readonly most: number;
      })
  /** °C. */
  | (Named &
      Kept<number> & {
        readonly kind: 'temperature';
        readonly least: number;
        readonly most: number;
      })
  | (Named & Kept<boolean> & { readonly kind: 'yes-no' })
  | (Named & Kept<BoardSize> & { readonly kind: 'board' })
  | (Named & Kept<string> & { readonly kind: 'choice'; readonly choices: readonly ChoiceKey[] })
  | (Named & Kept<string> & { readonly kind: 'sign' })
  | AskedField
  /** null: not known. */
  | (Named & Kept<Money | null> & { readonly kind: 'price' });

/** A plain number of a unit that stands behind it, or null: not known, and not guessed. */
export type AskedField = Named &
  Kept<number | null> & {
    readonly kind: 'asked';
    readonly unit: MeasuredIn;
    readonly least: number;
    readonly most: number;
    readonly whole?: boolean;
  };

interface Kept<T> {
  readonly get: (practices: Practices) => T;
  readonly put: (practices: Practices, value: T) => Practices;
}

/** A unit by its name, and how much of what is kept makes one of it. */
export interface MeasuredIn {
  readonly metric: readonly [UnitKey, number];
  readonly other: readonly [UnitKey, number];
}

/** Fields that belong together under one heading. */
export interface FieldGroup {
  readonly key: keyof Words['groups'];
  readonly fields: readonly Field[];
}
