import type { Point } from '../../geometry/point.ts';
import type { Command } from '../../job/commands.ts';
import type { Job } from '../../job/job.ts';
import type { FormLine, PickedStake } from '../formLine.ts';
import type { DimensionText } from '../hit.ts';
import type { Site } from '../site.ts';
import type { Size, Spot, View } from '../view.ts';

/** What the hand on the sketch does. */
export type ToolName =
  | 'pick'
  | 'pan'
  | 'draw-pad'
  | 'draw-existing-slab'
  | 'draw-building-line'
  | 'draw-steps'
  | 'draw-patch'
  | 'draw-no-stake-zone'
  | 'draw-utility-line'
  | 'draw-joint'
  | 'block-out-round'
  | 'block-out-square';

/** A feature, or one corner of it (and the edge that leaves that corner); or a stake of the forms. */
export type Selection = FeatureSelection | StakeSelection;

export interface FeatureSelection {
  readonly feature: string;
  readonly corner?: string;
  readonly stake?: undefined;
}

export interface StakeSelection {
  readonly stake: PickedStake;
  readonly feature?: undefined;
  readonly corner?: undefined;
}

/** A pointer on the stage: where on the screen, and which place of the site that is. */
export interface Pointer {
  readonly spot: Spot;
  readonly at: Point;
  readonly touch: boolean;
}

export type Key =
  | 'Enter'
  | 'Delete'
  | 'Backspace'
  | 'ArrowLeft'
  | 'ArrowRight'
  | 'ArrowUp'
  | 'ArrowDown';

/** Shift makes a key go this many times as far. */
export const FAR = 10;

/** How a typed angle is meant: from east (0 = right, 90 = up), or as a turn from the last edge. */
export type Heading = 'direction' | 'left' | 'right';

/** What was typed in the bar under the sketch. Lengths are on the grid, angles in degrees. */
export type Typed =
  /** The first corner, as offsets from the datum. */
  | { readonly what: 'start'; readonly across: number; readonly up: number }
  /** The next corner; without degrees it goes where the pointer aims. */
  | {
      readonly what: 'corner';
      readonly length: number;
      readonly heading: Heading;
      readonly degrees: number | null;
    }
  | { readonly what: 'diameter'; readonly diameter: number }
  /** Sizes of a square block-out from its first corner: to the right and up; negative the other way. */
  | { readonly what: 'sizes'; readonly across: number; readonly up: number }
  | { readonly what: 'close' }
  | { readonly what: 'take-back' }
  /** Ends an outline as an open line. */
  | { readonly what: 'end-open' };

export type ToolInput =
  | ({ readonly kind: 'press' } & Pointer)
  | ({ readonly kind: 'move' } & Pointer)
  | ({ readonly kind: 'release' } & Pointer)
  /** A finger held still, or a double click. */
  | ({ readonly kind: 'hold' } & Pointer)
  /** The gesture under way is void (second finger, pointer lost); corners already placed stay. */
  | { readonly kind: 'interrupt' }
  /** Everything begun is void. */
  | { readonly kind: 'cancel' }
  | { readonly kind: 'key'; readonly key: Key; readonly far: boolean }
  | { readonly kind: 'typed'; readonly typed: Typed };

/** What a tool can see. Nothing in it changes during a gesture, but for the view. */
export interface Scene {
  /** The job as it was when the gesture began. */
  readonly job: Job;
  readonly site: Site;
  readonly dimensions: readonly DimensionText[];
  /** The forms with their stakes, where they can be picked: at their own station. */
  readonly formLine: FormLine | null;
  readonly selection: Selection | null;
  readonly view: View;
  readonly size: Size;
  /** Where offsets are measured from. */
  readonly datum: Point;
}

/** What a tool wants done, as data. */
export type Effect =
  | { readonly do: 'preview'; readonly command: Command }
  | { readonly do: 'commit'; readonly command: Command }
  /** Drops the preview. */
  | { readonly do: 'discard' }
  | { readonly do: 'select'; readonly selection: Selection | null }
  | { readonly do: 'look'; readonly view: View }
  /** Opens the box for the length of the selected corner's edge, or for the place of the selected stake. */
  | { readonly do: 'ask-length' }
  /** The tool is done: back to picking. */
  | { readonly do: 'finish' };

export interface Step<S> {
  readonly state: S;
  readonly effects: readonly Effect[];
}

/** A press is not yet a drag until the pointer has gone this far, CSS pixels. */
const MOUSE_SLOP_PX = 4;
const TOUCH_SLOP_PX = 10;

export function beyondSlop(from: Spot, { spot, touch }: Pointer): boolean {
  const gone = Math.hypot(spot.x - from.x, spot.y - from.y);
  return gone > (touch ? TOUCH_SLOP_PX : MOUSE_SLOP_PX);
}

export function stay<S>(state: S): Step<S> {
  return { state, effects: [] };
}
