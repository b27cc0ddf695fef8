import type { Grid } from '../../units/grid.ts';
import type { EdgeKind, PourEdge, PourPiece } from '../outline/pour.ts';
import { type Frame, toFrame } from './frame.ts';
import { SAME_LINE } from './rules.ts';

/** Where an edge of the pour faces, seen along the strips: to either side of them, or past either end. */
export type Facing = 'low' | 'high' | 'back' | 'front';

/** An edge of the outside of the pour in a frame. */
export interface FacedEdge {
  readonly kind: EdgeKind;
  readonly faces: Facing;
  readonly low: number;
  readonly high: number;
  readonly length: Grid;
  readonly edge: PourEdge;
}

/** Edges round a piece of the pour. Openings in it aren't what a board rides on, nor the way out. */
export function facedEdges(frame: Frame, piece: PourPiece): readonly FacedEdge[] {
  return piece.rings
    .filter(({ hole }) => !hole)
    .flatMap(({ edges }) =>
      edges.map((edge): FacedEdge => {
        const a = toFrame(frame, edge.from);
        const b = toFrame(frame, edge.to);
        // The pour lies to the left: outward is to the right.
        const out = { along: b.across - a.across, across: a.along - b.along };
        const sideways = Math.abs(out.across) >= Math.abs(out.along);
        return {
          kind: edge.kind,
          faces: sideways ? (out.across < 0 ? 'low' : 'high') : out.along < 0 ? 'back' : 'front',
          low: Math.min(a.across, b.across),
          high: Math.max(a.across, b.across),
          length: edge.length,
          edge,
        };
      }),
    );
}

/** Edges from which a crew can step out, and where it can stand to finish. A formed wall leaves no room behind the form. */
export function isWalkable(kind: EdgeKind): boolean {
  return kind === 'free' || kind === 'existing-slab' || kind === 'steps';
}

/** How much of an edge lies within a band across, as a length. */
export function lengthWithin(edge: FacedEdge, low: number, high: number): number {
  const wide = edge.high - edge.low;
  // An edge that runs along lies on the line between two bands as often as not: it belongs to the one that it bounds.
  const inward = edge.faces === 'low' ? SAME_LINE : edge.faces === 'high' ? -SAME_LINE : 0;
  const middle = (edge.low + edge.high) / 2 + inward;
  if (wide < SAME_LINE) return middle >= low && middle <= high ? edge.length : 0;
  const part = Math.min(edge.high, high) - Math.max(edge.low, low);
  return part > 0 ? (edge.length * part) / wide : 0;
}
