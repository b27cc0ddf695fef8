import type { Point } from '../geometry/point.ts';
import type { Grid } from '../units/grid.ts';
import type { BoardPlan, BoardProblem } from './boards/plan.ts';
import type { Note } from './figure.ts';
import type { EdgeKind, NetPour, PourEdge } from './outline/pour.ts';

export interface VolumeResult {
  readonly thickness: Grid;
  /** Form board's dressed depth + gap under it. */
  readonly formDepth: Grid;
  /** Cubic grid units, net, at `thickness`. */
  readonly net: number;
  /** Cubic grid units if the forms set the depth instead. */
  readonly atFormDepth: number;
}

/** A straight or curved length of form between corners, along free (or formed-wall) edges. */
export interface FormRun {
  /** 'R1', 'R2'… counter-clockwise from the first corner of the outline. */
  readonly mark: string;
  readonly kind: Extract<EdgeKind, 'free' | 'wall-formed'>;
  readonly edges: readonly PourEdge[];
  readonly length: Grid;
  readonly curved: boolean;
  readonly piece: number;
  readonly ring: number;
}

export interface FormsResult {
  readonly runs: readonly FormRun[];
  readonly total: Grid;
  /** Places where two runs meet and their boards are nailed to each other. */
  readonly corners: number;
}

export interface Stake {
  readonly at: Point;
  /** Direction from the form face outward, radians. */
  readonly outward: number;
  readonly run: string;
  /** Along the run from its start. */
  readonly along: Grid;
  /** Set by hand: the id of what was pinned. */
  readonly hand?: string;
  /** Braced by a kicker as well, as the form stands high. */
  readonly kicker?: boolean;
}

/** How one run is staked. */
export interface StakedRun {
  readonly run: string;
  /** Places for stakes: those that can be driven and those that can't. */
  readonly count: number;
  readonly blocked: number;
  /** The widest from one to the next; 0 when there is one alone. */
  readonly gap: Grid;
  /** From either end of the run to the first and last when evenly spaced. */
  readonly fromEnd: Grid;
  /** Places when evenly spaced: `count` is another where something is in the way. */
  readonly evenly: number;
}

export interface StakesResult {
  /** Stakes that can be driven. */
  readonly stakes: readonly Stake[];
  readonly byRun: readonly StakedRun[];
  /** Stakes that fall where nothing may be driven; counted, drawn, and named in a caution. */
  readonly blocked: readonly Stake[];
  readonly nails: number;
  /** kg. */
  readonly nailWeight: number;
}

/** What the straight runs need of boards, and how they are cut. */
export interface BoardsResult {
  readonly problem: BoardProblem;
  /** The key that a search is asked and answered by. */
  readonly key: string;
  readonly plan: BoardPlan;
  /** Curved runs: bent from something thinner than the boards, so no part of the plan. */
  readonly curved: readonly { readonly run: string; readonly length: Grid }[];
}

/** One cut piece of mesh as it lies: a rectangle turned by `angle` about its own corner. */
export interface MeshPiece {
  readonly row: number;
  readonly corner: Point;
  readonly angle: number;
  readonly length: Grid;
  readonly width: Grid;
  readonly sheet: number;
}

export interface SteelResult {
  readonly pieces: readonly MeshPiece[];
  readonly sheets: number;
  readonly rows: number;
  /** Sheets that the inset area alone would need, with no laps: a bound to hold the count against. */
  readonly leastByArea: number;
  /** Area inside the cover, square grid units. */
  readonly insetArea: number;
  /** kg of the sheets bought. */
  readonly weight: number;
}

export interface IsolationRun {
  readonly kind: EdgeKind;
  readonly edges: readonly PourEdge[];
  readonly length: Grid;
}
export interface JointsResult {
  readonly isolation: readonly IsolationRun[];
  readonly total: Grid;
  readonly pieces: number;
}

export interface BagCount {
  readonly mix: string;
  readonly parts: number;
  readonly bags: number;
}

/** How the bags go through the mixer. */
export interface Batching {
  readonly batches: number;
  /** What one full batch holds; part bags where the mixer is too small for a set of parts. */
  readonly full: readonly BagCount[];
  /** What the last batch holds: as much as a full one, or less. */
  readonly last: readonly BagCount[];
  /** A full batch takes part bags. */
  readonly partBags: boolean;
  /** Concrete that the last batch makes, cubic grid units. */
  readonly lastVolume: number;
}

/** Volumes here are cubic grid units that come to whole cubic millimetres, so that the lines add up exactly. */
export interface MixResult {
  readonly net: number;
  /** What is added to the net: never mixed into it. */
  readonly allowance: number;
  readonly allowanceBy: 'share' | 'minimum-bags' | 'none';
  /** net + allowance. */
  readonly needed: number;
  readonly bags: readonly BagCount[];
  readonly totalBags: number;
  /** Concrete that those bags make, cubic grid units. */
  readonly made: number;
  /** made − needed: what rounding up to whole bags adds. */
  readonly rounding: number;
  /** kg. */
  readonly weight: number;
  /** Absent when the mixer doesn't hold a quarter of a bag, or of a set of parts. */
  readonly batching?: Batching;
}

/**
 * Everything that is counted, as plain data (it crosses to a worker and back). A part is absent when it can't be
 * figured; `notes` then says why and how to mend it. No figure is ever there that isn't true.
 */
export interface Takeoff {
  readonly pour?: NetPour;
  readonly volume?: VolumeResult;
  readonly forms?: FormsResult;
  readonly stakes?: StakesResult;
  readonly steel?: SteelResult;
  readonly boards?: BoardsResult;
  readonly joints?: JointsResult;
  readonly mix?: MixResult;
  readonly notes: readonly Note[];
}
