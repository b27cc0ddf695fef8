/** A place on the page, mm from its upper left corner, y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export type Step =
  | { readonly go: 'move'; readonly to: Spot }
  | { readonly go: 'line'; readonly to: Spot }
  /** A cubic curve. */
  | { readonly go: 'curve'; readonly one: Spot; readonly two: Spot; readonly to: Spot }
  | { readonly go: 'close' };

export interface Stroke {
  /** mm */
  readonly width: number;
  /** mm on, off, on, off…; empty for a continuous line. */
  readonly dash: readonly number[];
  readonly colour: string;
}

export interface Letters {
  readonly text: string;
  readonly at: Spot;
  /** Font size, mm. */
  readonly size: number;
  /** Radians, counter-clockwise. */
  readonly angle: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly bold: boolean;
  readonly colour: string;
}

/** What a painter of pages must be able to do. Areas are filled even-odd, so that holes stay open. */
export interface Pen {
  readonly fill: (path: readonly Step[], colour: string) => void;
  readonly stroke: (path: readonly Step[], stroke: Stroke) => void;
  readonly letters: (letters: Letters) => void;
  /** Draws so that nothing outside the path shows. */
  readonly within: (path: readonly Step[], draw: () => void) => void;
}
