import type { Point, Polygon } from '../geometry/point.ts';
import type { BarSize, FeatureKind, GroundSaid, Practices } from '../job/job.ts';
import type { Grid } from '../units/grid.ts';
import type { BoardPlan, BoardProblem } from './boards/plan.ts';
import type { Note } from './figure.ts';
import type {
  BrokenJointRule,
  JointLine,
  JointProblem,
  JointProof,
  Panel,
} from './joints/layout.ts';
import type { OrderResult } from './order/orderResult.ts';
import type { EdgeKind, NetPour, PourEdge } from './outline/pour.ts';
import type { PlacingResult } from './placing/placingResult.ts';
import type { BarCuts } from './steel/barCutting.ts';
import type { BarLine, BarRange } from './steel/barLines.ts';
import type { MeshNeed } from './steel/bound.ts';
import type { DowelSeam, DowelSize } from './steel/dowels.ts';
import type { DragInputs } from './steel/drag.ts';
import type { MeshPlan, MeshProblem, MeshSupply } from './steel/plan.ts';
import type { Wire } from './steel/styles.ts';
import type { WeatherResult } from './weather/weather.ts';

/** What ground readings say of the depth. Lengths are floats, grid units. */
export interface GroundDepth {
  readonly readings: readonly { readonly depth: Grid; readonly weight: number }[];
  /** By the ground that lies nearest each reading, or all alike where one has no place. */
  readonly weighed: 'by-area' | 'alike';
  readonly mean: number;
  /** Standard deviation of one reading, and of the mean. */
  readonly deviation: number;
  readonly error: number;
  /** Of four readings that bound a quadrilateral: the means of the two ways of parting it into triangles. */
  readonly twist?: { readonly low: number; readonly high: number };
}

/** What the thickened edge takes below the slab. */
export interface ThickenedResult {
  /** From the finish down; at the bottom; from there in to where the slab is as thick as elsewhere. */
  readonly depth: Grid;
  readonly width: Grid;
  readonly taper: Grid;
  /** How far it goes below the slab. */
  readonly below: Grid;
  /** Of the free edges. */
  readonly length: Grid;
  /** Square grid units within the width of a free edge, and within width and taper together. */
  readonly flatArea: number;
  readonly wholeArea: number;
  /** What would hold as much if it went as deep all over. */
  readonly meanArea: number;
  /** Cubic grid units: below × meanArea. */
  readonly volume: number;
}

export interface VolumeResult {
  /** That the volume is figured with: of the practices, or the mean of the taped depths. */
  readonly thickness: Grid;
  readonly depthBy: GroundSaid['depthBy'];
  /** Square grid units. */
  readonly area: number;
  /** What the depth of the whole may be off by: of the taped depths, or as the practices say. */
  readonly spread: Grid;
  /** Taped depths, whether the volume is figured with their mean or not. */
  readonly ground?: GroundDepth;
  /** Form board's dressed depth + gap under it. */
  readonly formDepth: Grid;
  /** Cubic grid units, area × `thickness`. */
  readonly slab: number;
  readonly thickened?: ThickenedResult;
  /** Cubic grid units: the slab and its thickened edge. */
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

/**
 * What holds a form where no stake can be driven behind it. inside-stake: driven on the pour's side, pulled as the
 * concrete stiffens, its hole packed. kicker: a brace to a stake farther out. spreader: a strut to the wall or slab that
 * stands opposite. weight: bags or blocks on what is there.
 */
export type Hold = 'inside-stake' | 'kicker' | 'spreader' | 'weight';

/** A place on a form where it must be held, and no stake can be driven behind it. */
export interface HeldPlace {
  /** Where the stake would have stood, outside the form. */
  readonly at: Point;
  /** Direction from the form face outward, radians. */
  readonly outward: number;
  readonly run: string;
  /** Along the run from its start. */
  readonly along: Grid;
  readonly how: Hold;
  /** What is in the way: a feature, the pour itself across a slot, or a wall that leaves no room. */
  readonly why: FeatureKind | 'pour' | 'no-room';
  /** The feature's id, when one is in the way. */
  readonly feature?: string;
  /** The stake inside the form; the far end of a kicker's brace or of a spreader. */
  readonly to?: Point;
}

/** A rule that stakes set by hand, or splices, leave broken. */
export interface BrokenRule {
  readonly run: string;
  /** spacing: a gap too wide. from-end: none near the end. splice: none on one side. blocked: driven where it can't be. */
  readonly rule: 'spacing' | 'from-end' | 'splice' | 'blocked';
  readonly at: Point;
  /** The distance that there is, and the most (with 'blocked', the least) that there may be. */
  readonly found: Grid;
  readonly allowed: Grid;
  /** The id of the stake set by hand that broke it. */
  readonly hand?: string;
}

/** What sets the widest gap between stakes: the practice, or what the board bears; on curves, the arc. */
export type Governs = 'practice' | 'deflection' | 'deflection-share' | 'bending' | 'curve';

/** How one run is staked. */
export interface StakedRun {
  readonly run: string;
  /** Places where the form is held: by stakes, and by other means. */
  readonly count: number;
  /** Of these, those without a stake behind the form. */
  readonly held: number;
  /** The widest from one to the next; 0 when there is one alone. */
  readonly gap: Grid;
  /** The widest that it may be, and why. */
  readonly spacing: Grid;
  readonly governs: Governs;
  /** From either end of the run to the first and last when evenly spaced. */
  readonly fromEnd: Grid;
  /** Places when evenly spaced: `count` is another where something is in the way. */
  readonly evenly: number;
}

/** Nails or screws for stakes, corners and cleats. */
export interface Fastening {
  readonly by: Practices['fastening']['by'];
  readonly count: number;
  /** kg; of nails, which are bought by weight. */
  readonly weight?: number;
  readonly boxes: number;
  /** One a splice. */
  readonly cleats: number;
}

export interface StakesResult {
  /** Stakes driven behind the forms. */
  readonly stakes: readonly Stake[];
  readonly byRun: readonly StakedRun[];
  /** Where no stake can be driven behind the form, and what holds it there instead: counted apart. */
  readonly held: readonly HeldPlace[];
  readonly broken: readonly BrokenRule[];
  readonly fastening: Fastening;
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

/** Mesh as it is laid and cut. */
export interface MeshResult {
  readonly problem: MeshProblem;
  /** The key that a search is asked and answered by. */
  readonly key: string;
  readonly plan: MeshPlan;
  /** What area and lap alone ask for. */
  readonly need: MeshNeed;
  /** Of the kind that the plan buys, how many no layout does without; nothing when the truck's mesh is enough. */
  readonly least: { readonly kind: MeshSupply; readonly count: number } | undefined;
  readonly wire: Wire;
  /** kg of what is bought. */
  readonly weight: number;
  readonly ties: number;
  readonly lapLength: number;
}

/** A grid of bars, as it lies and as it is cut. */
export interface BarsResult {
  readonly size: BarSize;
  /** Direction of the bars along, radians. */
  readonly angle: number;
  /** What the grid covers: the pour moved in by the cover. */
  readonly inset: readonly Polygon[];
  readonly lines: readonly BarLine[];
  readonly ranges: readonly BarRange[];
  readonly lap: Grid;
  readonly cuts: BarCuts;
  /** Bars across inside corners. */
  readonly corners: number;
  readonly crossings: number;
  /** Length of all lines, laps not counted. */
  readonly laid: Grid;
  /** kg of what is bought. */
  readonly weight: number;
  /** Steel each way, mm² in a metre's width. */
  readonly area: number;
}

/** Dowels into the old slab. */
export interface DowelsResult {
  readonly size: DowelSize;
  readonly seams: readonly DowelSeam[];
}

export interface SteelResult {
  readonly mesh?: MeshResult;
  readonly bars?: BarsResult;
  readonly dowels?: DowelsResult;
  /** Where chairs stand; absent when the steel is lifted instead. */
  readonly chairs?: readonly Point[];
  /** Steel each way, mm² in a metre's width: what the drag formula asks for, and what there is. */
  readonly drag?: { readonly inputs: DragInputs; readonly need: number; readonly has: number };
}

export interface IsolationRun {
  readonly kind: EdgeKind;
  readonly edges: readonly PourEdge[];
  readonly length: Grid;
}
/** Control and construction joints, and what they part the pour into: P1, P2… row by row from the top left. */
export interface JointLayout {
  /** A piece of the pour each. */
  readonly problems: readonly JointProblem[];
  /** The key that a search is asked and answered by. */
  readonly key: string;
  readonly joints: readonly JointLine[];
  readonly panels: readonly Panel[];
  readonly broken: readonly BrokenJointRule[];
  readonly by: Practices['joints']['layout'];
  readonly proof: JointProof;
  /** No panel may be longer than this. */
  readonly most: Grid;
  /** How deep a control joint goes. */
  readonly depth: Grid;
}

/** Sealant over control joints, over strip, or both. Volumes are cubic grid units. */
export interface SealedJoints {
  readonly parts: readonly {
    readonly of: 'control' | 'strip';
    readonly length: Grid;
    readonly width: Grid;
    readonly depth: Grid;
    readonly volume: number;
  }[];
  readonly volume: number;
  readonly cartridges: number;
  /** Length of backer rod; 0 for none. */
  readonly backer: Grid;
}

export interface JointsResult {
  readonly isolation: readonly IsolationRun[];
  readonly total: Grid;
  /** From the bottom of the slab up to the recess. */
  readonly stripDepth: Grid;
  /** Absent when the length of one piece isn't known. */
  readonly pieces?: number;
  readonly layout?: JointLayout;
  readonly sealed?: SealedJoints;
}

export interface BagCount {
  readonly mix: string;
  readonly parts: number;
  readonly bags: number;
}

/** How the bags go through the mixer. */
export interface Batching {
  readonly batches: number;
  /** What one full batch holds. */
  readonly full: readonly BagCount[];
  /** What the last batch holds: as much as a full one, or less. */
  readonly last: readonly BagCount[];
  /** Concrete that a full batch and the last one make, cubic grid units. */
  readonly fullVolume: number;
  readonly lastVolume: number;
}

/** One part of the allowance. floor: what it takes to come to the least count of bags. */
export interface AllowancePart {
  readonly part: 'share' | 'spread' | 'spillage' | 'extra' | 'floor';
  /** Of an extra: as somebody named it. */
  readonly name?: string;
  /** Cubic grid units. */
  readonly volume: number;
}

/** Water for all that is mixed, cubic grid units: read off the bags, or what is commonly seen by weight. */
export interface WaterNeed {
  readonly least: number;
  readonly most: number;
  readonly from: 'bag' | 'common-practice';
}

/** Volumes here are cubic grid units that come to whole cubic millimetres, so that the lines add up exactly. */
export interface MixResult {
  readonly net: number;
  /** What is added to the net: never mixed into it. */
  readonly allowance: number;
  readonly allowanceBy: 'share' | 'parts' | 'minimum-bags' | 'none';
  /** They add up to the allowance. */
  readonly allowanceParts: readonly AllowancePart[];
  /** net + allowance. */
  readonly needed: number;
  /** What is opened: whole bags of each mix. */
  readonly bags: readonly BagCount[];
  readonly totalBags: number;
  /** What goes into the mixer: all of these, or half a bag less of a mix. */
  readonly mixed: readonly BagCount[];
  /** What the net alone takes, in the blend's parts. */
  readonly expectedBags: number;
  /** The net, with twice the spread of its depth and the other parts of the allowance. */
  readonly worst: number;
  /** Concrete that those bags make, cubic grid units. */
  readonly made: number;
  /** made − needed: the three that follow, added. */
  readonly rounding: number;
  /** What whole (or half) bags in the blend's parts add, what filling up the last batch adds, and half bags left open. */
  readonly blendRounding: number;
  readonly batchRounding: number;
  readonly openRounding: number;
  readonly water: WaterNeed;
  /** kg. */
  readonly weight: number;
  /** Absent when the mixer doesn't hold one set of the blend's parts in whole (or half) bags. */
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
  readonly weather?: WeatherResult;
  readonly order?: OrderResult;
  readonly placing?: PlacingResult;
  readonly notes: readonly Note[];
}
