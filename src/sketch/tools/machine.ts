import type { Point } from '../../geometry/point.ts';
import type { FormPlace } from '../formLine.ts';
import type { Snap } from '../snap.ts';
import type { Scene, Step, ToolInput } from './tool.ts';

/** What the tool has in hand, for the drawing above the drawing and for the bar under it. */
export interface Showing {
  /** Guides and the word at the cursor. */
  readonly snap: Snap | null;
  /** Corners placed so far and the one aimed at. */
  readonly path: readonly Point[];
  readonly closed: boolean;
  readonly round: { readonly center: Point; readonly diameter: number } | null;
  /** The corner that is dragged. */
  readonly moving: { readonly feature: string; readonly corner: string } | null;
  /** The stake that is dragged: where it is now, and the id that it has, or will have, as one set by hand. */
  readonly sliding: { readonly place: FormPlace; readonly hand: string } | null;
  readonly asks: Asks;
}

/** What may be typed now. */
export type Asks =
  | { readonly for: 'nothing' }
  | { readonly for: 'start' }
  | {
      readonly for: 'corner';
      readonly placed: number;
      readonly canClose: boolean;
      readonly canEndOpen: boolean;
    }
  | { readonly for: 'diameter' }
  | { readonly for: 'sizes' };

export const NOTHING: Showing = {
  snap: null,
  path: [],
  closed: false,
  round: null,
  moving: null,
  sliding: null,
  asks: { for: 'nothing' },
};

/** A tool: a pure state machine. */
export interface Machine<S> {
  readonly idle: S;
  readonly step: (state: S, input: ToolInput, scene: Scene) => Step<S>;
  readonly show: (state: S) => Showing;
}
