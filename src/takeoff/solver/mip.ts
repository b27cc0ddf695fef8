/** One unknown of a model, kept within its bounds; Infinity where it has none. */
export interface Column {
  readonly least: number;
  readonly most: number;
  /** Only whole numbers. */
  readonly whole: boolean;
}

/** A sum of columns times a factor, kept within its bounds. */
export interface Row {
  readonly least: number;
  readonly most: number;
  readonly terms: readonly Term[];
}

/** A column and what it is taken times, or the value that it has. */
export type Term = readonly [column: number, factor: number];

/** Unknowns and what must hold of them: plain data that knows no solver. */
export interface Mip {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** How long to look for the least, and where to start from. */
export interface Look {
  readonly seconds: number;
  /** Values of columns from which the others can be completed; left aside when they can't. */
  readonly start?: readonly Term[];
  /** Called with each better set of values as it is found. */
  readonly onBetter?: (values: readonly number[]) => void;
}

/**
 * What was found. least: no values cost less. some: the look ended before that was known; nothing costs less than `bound`.
 * none: no values satisfy the model. unknown: the look ended with nothing in hand.
 */
export type Found =
  | { readonly is: 'least'; readonly values: readonly number[]; readonly cost: number }
  | {
      readonly is: 'some';
      readonly values: readonly number[];
      readonly cost: number;
      readonly bound: number;
    }
  | { readonly is: 'none' }
  | { readonly is: 'unknown'; readonly bound: number };

/** What each row's bound is worth at the least cost of a model without whole columns. */
export interface Priced {
  readonly values: readonly number[];
  readonly cost: number;
  readonly worth: readonly number[];
}

/** Finds the values of least cost. */
export interface Solver {
  least(model: Mip, cost: readonly Term[], look: Look): Found;
  /** The same with no column held to whole numbers; undefined when nothing satisfies the model, or time ran out. */
  relaxed(model: Mip, cost: readonly Term[], seconds: number): Priced | undefined;
}

/** A model as it is written: each call gives the number of the column that it adds. */
export class MipWriter implements Mip {
  readonly columns: Column[] = [];
  readonly rows: Row[] = [];

  real(least: number, most: number): number {
    return this.columns.push({ least, most, whole: false }) - 1;
  }

  whole(least: number, most: number): number {
    return this.columns.push({ least, most, whole: true }) - 1;
  }

  row(least: number, terms: readonly Term[], most: number): void {
    this.rows.push({ least, most, terms });
  }

  atMost(terms: readonly Term[], most: number): void {
    this.row(Number.NEGATIVE_INFINITY, terms, most);
  }

  atLeast(terms: readonly Term[], least: number): void {
    this.row(least, terms, Number.POSITIVE_INFINITY);
  }
}
