import type { Point } from '../geometry/point.ts';
import type { JointUse, Service } from '../job/job.ts';

/**
 * Marks: a renderer-neutral drawing. Places are in grid units (x east, y north); sizes of text, ticks and line widths
 * are in millimetres of the output, since a 2.5 mm letter is 2.5 mm at every scale. Painters only paint.
 */
export type Layer =
  | 'ground'
  | 'existing'
  | 'pour'
  | 'edges'
  | 'forms'
  | 'steel'
  | 'joints'
  | 'dimensions'
  | 'labels'
  | 'notes';

/** What a filled area is made of; each painter has its own colour and a black-and-white hatch for it. */
export type Material =
  | 'fresh-concrete'
  | 'old-concrete'
  | 'building'
  | 'steps'
  | 'block-out'
  | 'patch'
  | 'soil'
  | 'no-stake'
  /** Round a buried line. */
  | 'tolerance'
  | 'lumber'
  // Cut across, in sections.
  | 'cut-concrete'
  | 'cut-lumber'
  | 'earth'
  | 'stone'
  | 'steel'
  /** Of isolation strip, and of backer rod. */
  | 'filler'
  | 'sealant'
  | 'paper'
  /** Printed black: the modules of a code. */
  | 'ink';

/** Names of line kinds (ISO 128: continuous, dashed, chain; wide and narrow). Painters hold width and dash. */
export type LineStyle =
  | 'outline'
  | 'outline-free'
  | 'outline-existing'
  | 'outline-wall'
  | 'outline-wall-formed'
  | 'outline-steps'
  | 'outline-block-out'
  | 'outline-patch'
  | `utility-${Service}`
  | 'dimension'
  | 'extension'
  | 'hidden'
  | 'centre'
  | 'mesh'
  | 'mesh-under'
  | 'lap'
  | 'bar'
  | 'bar-corner'
  | 'dowel'
  | 'strip'
  | `joint-${JointUse}`
  | 'form'
  | 'board'
  | 'splice'
  | 'brace'
  | 'fault'
  | 'guide'
  | 'match'
  | 'frame'
  | 'hairline';

/** A run of straight and arc segments. */
export interface Path {
  readonly start: Point;
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}
export interface Segment {
  readonly to: Point;
  /** Present on arcs; `sweep` radians, counter-clockwise positive. */
  readonly arc?: {
    readonly cx: number;
    readonly cy: number;
    readonly radius: number;
    readonly sweep: number;
  };
}

/**
 * 'stake' (filled), 'stake-hand' (open, with a dot in it) and 'stake-inside' (open): a square about `at`. 'weight': a square
 * on its corner. 'end-bar': a stroke across `angle`. 'look-here': an upright triangle with a stroke and a dot in it.
 * 'origin': a small open circle. 'tick': a stroke at 45° to the dimension line. 'arrow': its tip at `at`, pointing along
 * `angle`. 'cross', 'dot' and 'north': about `at`.
 */
export type SymbolName =
  | 'stake'
  | 'stake-hand'
  | 'stake-inside'
  | 'weight'
  | 'end-bar'
  | 'look-here'
  | 'origin'
  | 'tick'
  | 'arrow'
  | 'cross'
  | 'dot'
  | 'north';

export type TextStyle = 'dimension' | 'label' | 'small' | 'title' | 'figure';

/** The edge of a feature, by the corner at which it starts, whose length a text gives as drawn (corner to corner). */
export interface Measured {
  readonly feature: string;
  readonly corner: string;
}

export type Mark =
  | {
      readonly kind: 'area';
      readonly layer: Layer;
      readonly material: Material;
      readonly paths: readonly Path[];
      readonly feature?: string;
    }
  | {
      readonly kind: 'line';
      readonly layer: Layer;
      readonly style: LineStyle;
      readonly path: Path;
      readonly feature?: string;
    }
  | {
      readonly kind: 'text';
      readonly layer: Layer;
      readonly style: TextStyle;
      readonly text: string;
      /** On the line that the letters stand on; `anchor` says which part of the text is there. */
      readonly at: Point;
      /** Height of capitals, mm of output. */
      readonly height: number;
      /** Radians, counter-clockwise. */
      readonly angle: number;
      readonly anchor: 'start' | 'middle' | 'end';
      /** A border of paper round the letters, so that they read over lines and hatches. */
      readonly halo: boolean;
      readonly feature?: string;
      /** Set on dimensions that can be typed anew. */
      readonly measures?: Measured;
    }
  | {
      readonly kind: 'symbol';
      readonly layer: Layer;
      readonly symbol: SymbolName;
      readonly at: Point;
      /** mm of output. */
      readonly size: number;
      readonly angle: number;
      readonly feature?: string;
    };

/** Grid units in one millimetre of output: the only thing a drawing needs to know of where it will be shown. */
export interface DrawingScale {
  readonly gridPerMm: number;
}
