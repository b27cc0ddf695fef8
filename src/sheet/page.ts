import type { Mark } from '../drawing/marks.ts';
import type { Point } from '../geometry/point.ts';

/** A rectangle on the page, mm from its upper left corner, y down. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Marks at one scale, put on the page. */
export interface SheetPart {
  readonly marks: readonly Mark[];
  readonly gridPerMm: number;
  /** This grid point of the drawing… */
  readonly from: Point;
  /** …lies here on the page, mm from its upper left corner, y down. */
  readonly at: { readonly x: number; readonly y: number };
  /** What lies outside of this isn't shown. */
  readonly clip?: Rect;
}

/** One page of paper, ready for any painter. Sizes in mm. */
export interface SheetPage {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly parts: readonly SheetPart[];
}
