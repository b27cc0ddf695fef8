import type { ArcOf, Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';

/** What an edge of the pour meets. Decides form, isolation strip and stakes. */
export type EdgeKind =
  | 'free'
  | 'existing-slab'
  | 'wall'
  /** A wall that can't be poured against: it gets a form. */
  | 'wall-formed'
  | 'steps'
  | 'block-out';

/** In the order in which they are listed and in which one wins over another where both touch (last wins over first). */
export const EDGE_KINDS: readonly EdgeKind[] = [
  'free',
  'block-out',
  'wall-formed',
  'wall',
  'steps',
  'existing-slab',
];

/** A stretch of the pour's boundary that meets one thing all along: one straight, or one arc. */
export interface PourEdge {
  readonly from: Point;
  readonly to: Point;
  /** Set when the stretch is an arc; the pour lies to the left of the direction of travel, as on straights. */
  readonly arc?: ArcOf;
  readonly kind: EdgeKind;
  /** True where the concrete inside this edge fills a patch (the edge of a missing piece). */
  readonly patch: boolean;
  /** The feature that this edge came from: the pad or patch for a free edge, else what it meets. */
  readonly feature: string;
  /** Length along the edge, rounded once to a whole grid unit, so that parts add up to the whole exactly. */
  readonly length: Grid;
}

/** One closed walk round the pour. Outer boundaries counter-clockwise, holes clockwise: pour on the left. */
export interface PourRing {
  readonly hole: boolean;
  readonly edges: readonly PourEdge[];
}

/** One connected piece of the pour. `rings[0]` is the outer boundary. */
export interface PourPiece {
  readonly rings: readonly PourRing[];
  /** Square grid units, arcs counted as arcs. */
  readonly area: number;
}

/** A leftover narrower than 'close enough' that was dissolved, so that the user can see it was. */
export interface Sliver {
  readonly at: Point;
  /** Square grid units. */
  readonly area: number;
  readonly length: Grid;
}

/** How the boolean was reached: shown when it was not the plain way. */
export interface ClipReport {
  readonly engine: 'polygon-clipping' | 'clipper2';
  /** Failed tries before this result (a coarser grid, then the second engine). */
  readonly retries: number;
}

/** pour = (pad ∪ patches) − existing slabs − building footprints − steps − block-outs. */
export interface NetPour {
  readonly pieces: readonly PourPiece[];
  /** Square grid units, all pieces. */
  readonly area: number;
  /** Area of the pads and patches before anything was cut out, square grid units. */
  readonly grossArea: number;
  /** Whole grid units: the sum of every edge's length, holes included. */
  readonly perimeter: Grid;
  readonly lengthByKind: Readonly<Record<EdgeKind, Grid>>;
  /** Length of patch edges (a subset of the above, not another kind). */
  readonly patchLength: Grid;
  readonly slivers: readonly Sliver[];
  readonly clip: ClipReport;
}
