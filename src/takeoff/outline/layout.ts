import { type Box, boxesMeet } from '../../geometry/box.ts';
import type { Chain } from '../../geometry/chain.ts';
import { type Welded, weld } from '../../geometry/weld.ts';
import type { Feature } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { EDGE_KINDS, type EdgeKind } from './pour.ts';
import { traceOf } from './shapes.ts';

/** Rounding to the grid and arcs made of chords part lines that are one by less than this: 1/128 in, 0.2 mm. */
export const LEAST_TOLERANCE: Grid = 64;

/** What a feature does to the pour. */
export type Part =
  /** Adds concrete. */
  | 'pad'
  | 'patch'
  /** Takes concrete away; an existing slab keeps its patches. */
  | 'existing'
  | 'cutter'
  /** An open wall line: marks edges, takes nothing away. */
  | 'line';

/** A feature in its place among the others. */
export interface Member {
  readonly feature: Feature;
  readonly part: Part;
  /** What an edge that meets it is; 'free' for a pad or a patch. */
  readonly kind: EdgeKind;
  readonly rank: number;
  /** Its chain, welded to the others. */
  readonly chain: Chain;
}

/** Everything on the sketch that the pour depends on, welded together. */
export interface Layout {
  readonly members: readonly Member[];
  readonly welded: Welded;
  readonly tolerance: Grid;
}

const ORDER: readonly Part[] = ['pad', 'patch', 'existing', 'cutter', 'line'];

/** How a feature takes part; nothing when it has no say in the pour. */
export function partOf(feature: Feature): Part | undefined {
  switch (feature.kind) {
    case 'pad':
    case 'patch':
      return feature.kind;
    case 'existing-slab':
      return 'existing';
    case 'building-line':
      return feature.shape.closed ? 'cutter' : 'line';
    case 'steps':
    case 'block-out':
      return 'cutter';
    case 'no-stake-zone':
    case 'utility-line':
    case 'joint':
      return undefined;
  }
}

function kindOf(feature: Feature): EdgeKind {
  switch (feature.kind) {
    case 'existing-slab':
    case 'steps':
    case 'block-out':
      return feature.kind;
    case 'building-line':
      return feature.pourAgainst ? 'wall' : 'wall-formed';
    default:
      return 'free';
  }
}

/**
 * Puts the features together: pads hold still, then patches, and everything measured against them gives way by no more
 * than `closeEnough`. Features whose boxes come nowhere near a pad or patch are left out.
 */
export function layOut(features: readonly Feature[], closeEnough: Grid): Layout {
  const tolerance = Math.max(closeEnough, LEAST_TOLERANCE);
  const entries: { feature: Feature; part: Part; chain: Chain }[] = [];
  const concrete: Box[] = [];
  for (const part of ORDER) {
    for (const feature of features) {
      if (partOf(feature) !== part) continue;
      const { chain } = traceOf(feature);
      if (part === 'pad' || part === 'patch') concrete.push(chain.box);
      else if (!concrete.some((box) => boxesMeet(box, chain.box, 2 * tolerance))) continue;
      entries.push({ feature, part, chain });
    }
  }
  const welded = weld(
    entries.map(({ chain }) => chain),
    tolerance,
  );
  const members = entries.map(({ feature, part }, i) => {
    const kind = kindOf(feature);
    return { feature, part, kind, rank: EDGE_KINDS.indexOf(kind), chain: welded.chains[i]! };
  });
  return { members, welded, tolerance };
}

/** Whether members a and b may share anything. */
export function meet({ members, welded }: Layout, a: number, b: number): boolean {
  return welded.meets[a * members.length + b] === 1;
}
