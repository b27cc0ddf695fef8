import type { Point } from '../geometry/point.ts';

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
  | 'lumber'
  | 'paper';

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
  | 'dimension'
  | 'extension'
  | 'hidden'
  | 'centre'
  | 'mesh'
  | 'lap'
  | 'strip'
  | 'form'
  | 'stake'
  | 'stake-blocked'
  | 'fault'
  | 'guide'
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

export type TextStyle = 'dimension' | 'label' | 'small' | 'title' | 'figure';

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
      readonly at: Point /** Height of capitals, mm of output. */;
      readonly height: number /** Radians, counter-clockwise. */;
      readonly angle: number;
      readonly anchor: 'start' | 'middle' | 'end' /** Paper shows through behind it? */;
      readonly halo: boolean;
      readonly feature?: string;
    }
  | {
      readonly kind: 'symbol';
      readonly layer: Layer;
      readonly symbol: 'stake' | 'stake-blocked' | 'tick' | 'arrow' | 'cross' | 'dot' | 'north';
      readonly at: Point /** mm of output. */;
      readonly size: number;
      readonly angle: number;
      readonly feature?: string;
    };

/** Grid units in one millimetre of output: the only thing a drawing needs to know of where it will be shown. */
export interface DrawingScale {
  readonly gridPerMm: number;
}
