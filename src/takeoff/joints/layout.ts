import type { Box } from '../../geometry/box.ts';
import type { Point, Polygon } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';

/** A straight joint, from edge to edge. */
export interface JointLine {
  readonly from: Point;
  readonly to: Point;
  /** Proposed by the search, or drawn by hand. */
  readonly by: 'search' | 'hand';
  /** construction: the pour stops here. */
  readonly kind: 'control' | 'construction';
}

/** What a layout must obey. */
export interface JointRules {
  /** No panel is longer than this. */
  readonly most: Grid;
  /** Length over width of a panel, at most. */
  readonly ratio: number;
  /** No panel is narrower than this, measured across in any direction. */
  readonly least: Grid;
  /** No joint meets an edge or another joint at less than this, degrees. */
  readonly angle: number;
}

/** A block-out that joints meet at its corners or its middle. */
export interface BlockOutSpot {
  readonly feature: string;
  readonly middle: Point;
  readonly corners: readonly Point[];
  /** The places on its edge, as the polygon has it. */
  readonly ring: readonly Point[];
}

/** The whole question for one piece of the pour: plain data, so that it can be its own key. */
export interface JointProblem {
  readonly polygon: Polygon;
  readonly insideCorners: readonly Point[];
  readonly blockOuts: readonly BlockOutSpot[];
  /** Where joints of an older slab come to the edge. */
  readonly oldJoints: readonly Point[];
  readonly fixed: readonly JointLine[];
  readonly rules: JointRules;
  /** Two places nearer than this are one. */
  readonly closeness: Grid;
}

export type JointRule =
  | 'too-long'
  | 'ratio'
  | 'sliver'
  | 'inside-corner'
  | 'block-out'
  | 'old-joint'
  | 'sharp'
  | 'ends-on-joint'
  | 'ends-inside';

/** A rule that a layout breaks, and where. */
export interface BrokenJointRule {
  readonly rule: JointRule;
  readonly at: Point;
  /** Of the panels, when it is about one. */
  readonly panel?: number;
  /** What was found: a length, a ratio or an angle; none for a joint that is missing. */
  readonly found?: number;
}

/** A part of the slab between joints and edges. */
export interface Panel {
  readonly polygon: Polygon;
  readonly box: Box;
  /** Of the rectangle of least girth round it; length is the longer. */
  readonly length: Grid;
  readonly width: Grid;
  /** The least it measures across, in any direction: less than the width where it is a triangle. */
  readonly narrowest: Grid;
  /** Square grid units, arcs as chords. */
  readonly area: number;
}

export interface JointReport {
  readonly joints: readonly JointLine[];
  readonly panels: readonly Panel[];
  readonly broken: readonly BrokenJointRule[];
  /** Of all joints, grid units. */
  readonly length: Grid;
}

/**
 * How sure a layout is. first: found at once. proved: of all layouts made of the candidate lines, each run from edge to
 * edge, none breaks less, and of those that break as little none is shorter. gap: the search ended before that was shown.
 */
export type JointProof = 'first' | 'proved' | 'gap';

export interface JointPlan {
  readonly report: JointReport;
  readonly proof: JointProof;
  /** Layouts looked at. */
  readonly tried: number;
}

export function jointKey(problem: JointProblem): string {
  return JSON.stringify(problem);
}
