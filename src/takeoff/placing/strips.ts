import { girthOf } from '../../geometry/calipers.ts';
import type { Point, Polygon } from '../../geometry/point.ts';
import type { PlacingPractices } from '../../job/placing.ts';
import type { Grid } from '../../units/grid.ts';
import type { PourPiece } from '../outline/pour.ts';
import {
  above,
  areaOf,
  below,
  type Frame,
  frameOf,
  fromFrame,
  ringIn,
  type Spot,
  type Stretch,
  shared,
  stretchesAt,
} from './frame.ts';
import { LEAST_WAY_OUT, MOST_STRIPS, SAME_LINE, SAMPLES } from './rules.ts';
import { type FacedEdge, type Facing, facedEdges, isWalkable, lengthWithin } from './sides.ts';

/** What the screed board rides on along one side of a strip. wet-screed: a strip of concrete set to height beforehand. */
export type Ride = 'form' | 'old-slab' | 'steps' | 'rail' | 'wet-screed';

/** One strip, struck off in one pull. Strips are in the order in which they are placed. */
export interface Strip {
  readonly piece: number;
  /** Square grid units, arcs as chords. */
  readonly area: number;
  /** What the board spans, and the longest pull. */
  readonly width: Grid;
  readonly length: Grid;
  /** Direction of the pull, radians. */
  readonly way: number;
  readonly rides: readonly [readonly Ride[], readonly Ride[]];
  /** Where the strip after it in the same piece begins: its open edge. */
  readonly openEdge: readonly (readonly [Point, Point])[];
  /** The pull through its middle. */
  readonly pull: readonly [Point, Point];
  /** Of edges that are tooled. */
  readonly edges: Grid;
  /** Whether there is a way out once it lies. */
  readonly wayOut: boolean;
  /** Area placed by the time that the pull has come so far, at even steps along the whole piece. */
  readonly profile: readonly number[];
}

/** The widest strip that the board in hand strikes off. */
export function spanOf({ board, boardBearing, pulledBy, soloMost }: PlacingPractices): Grid {
  const span = board - boardBearing;
  return pulledBy === 'one' ? Math.min(span, soloMost) : span;
}

/** Strips of one piece, placed so that the last of them leaves a way out. None where that takes too many. */
export function stripsOf(
  polygon: Polygon,
  piece: PourPiece,
  at: number,
  span: Grid,
  run: PlacingPractices['strips'],
): readonly Strip[] | undefined {
  const girth = girthOf(polygon.outer);
  const along = run === 'along' || (run === 'proposed' && girth.width <= span + SAME_LINE);
  const frame = frameOf(polygon.outer[0]!, along ? girth.way : girth.way + Math.PI / 2);
  const rings = [polygon.outer, ...polygon.holes].map((ring) => ringIn(frame, ring));
  const outer = rings[0]!;
  const low = Math.min(...outer.map(({ across }) => across));
  const high = Math.max(...outer.map(({ across }) => across));
  const count = Math.max(1, Math.ceil((high - low - SAME_LINE) / span));
  if (!(count <= MOST_STRIPS)) return undefined;
  const edges = facedEdges(frame, piece);
  const layout: Layout = {
    frame,
    rings,
    edges,
    at,
    low,
    wide: (high - low) / count,
    back: Math.min(...outer.map(({ along: place }) => place)),
    front: Math.max(...outer.map(({ along: place }) => place)),
    toFront: walkableAt(edges, 'front') > walkableAt(edges, 'back'),
    toHigh: walkableAt(edges, 'high') > walkableAt(edges, 'low'),
    count,
  };
  return Array.from({ length: count }, (_, i) =>
    stripAt(layout, layout.toHigh ? i : count - 1 - i),
  );
}

interface Layout {
  readonly frame: Frame;
  readonly rings: readonly (readonly Spot[])[];
  readonly edges: readonly FacedEdge[];
  readonly at: number;
  readonly low: number;
  readonly wide: number;
  readonly back: number;
  readonly front: number;
  /** Which way the pull goes, and on which side the last strip lies: where most of the edge lets the crew out. */
  readonly toFront: boolean;
  readonly toHigh: boolean;
  readonly count: number;
}

function walkableAt(edges: readonly FacedEdge[], faces: Facing): number {
  return edges
    .filter((edge) => edge.faces === faces && isWalkable(edge.kind))
    .reduce((sum, { length }) => sum + length, 0);
}

/** @param number From the low side of the piece. */
function stripAt(layout: Layout, number: number): Strip {
  const { frame, rings, edges, at, wide, back, front, toFront, toHigh, count } = layout;
  const low = layout.low + number * wide;
  const high = low + wide;
  const band = rings.map((ring) => below(above(ring, 'across', low), 'across', high));
  const area = band.reduce((sum, ring) => sum + areaOf(ring), 0);
  const lowRail = number === 0 ? [] : railAt(rings, low);
  const highRail = number === count - 1 ? [] : railAt(rings, high);
  const open = toHigh ? highRail : lowRail;
  const openAt = toHigh ? high : low;
  const middle = longest(stretchesAt(rings, (low + high) / 2)) ?? { from: back, to: front };
  const [start, end] = toFront ? [middle.from, middle.to] : [middle.to, middle.from];
  const spot = (along: number, across: number) => fromFrame(frame, { along, across });
  const isOut = (faces: Facing) =>
    edges.some(
      (edge) =>
        edge.faces === faces &&
        isWalkable(edge.kind) &&
        lengthWithin(edge, low, high) > LEAST_WAY_OUT,
    );
  const turned = toFront ? 0 : Math.PI;
  return {
    piece: at,
    area,
    width: Math.round(wide),
    length: Math.round(extentAlong(band)),
    way: Math.atan2(frame.sin, frame.cos) + turned,
    rides: [ridesOn(edges, 'low', lowRail, low, high), ridesOn(edges, 'high', highRail, low, high)],
    openEdge: open.map(({ from, to }) => [spot(from, openAt), spot(to, openAt)] as const),
    pull: [spot(start, (low + high) / 2), spot(end, (low + high) / 2)],
    edges: Math.round(
      edges
        .filter(({ kind }) => kind === 'free' || kind === 'wall-formed')
        .reduce((sum, edge) => sum + lengthWithin(edge, low, high), 0),
    ),
    wayOut: open.length > 0 || isOut('low') || isOut('high') || isOut(toFront ? 'front' : 'back'),
    profile: Array.from({ length: SAMPLES + 1 }, (_, i) => {
      const reached = back + ((front - back) * i) / SAMPLES;
      if (toFront)
        return band.reduce((sum, ring) => sum + areaOf(below(ring, 'along', reached)), 0);
      const from = back + front - reached;
      return band.reduce((sum, ring) => sum + areaOf(above(ring, 'along', from)), 0);
    }),
  };
}

/** Where there is concrete on both sides of a line: a temporary rail goes there. */
function railAt(rings: readonly (readonly Spot[])[], across: number): readonly Stretch[] {
  return shared(
    stretchesAt(rings, across - SAME_LINE),
    stretchesAt(rings, across + SAME_LINE),
  ).filter(({ from, to }) => to - from > SAME_LINE);
}

function longest(stretches: readonly Stretch[]): Stretch | undefined {
  return stretches.reduce<Stretch | undefined>(
    (best, one) => (best && best.to - best.from >= one.to - one.from ? best : one),
    undefined,
  );
}

function extentAlong(band: readonly (readonly Spot[])[]): number {
  const places = (band[0] ?? []).map(({ along }) => along);
  return places.length === 0 ? 0 : Math.max(...places) - Math.min(...places);
}

const RIDES: Readonly<Partial<Record<FacedEdge['kind'], Ride>>> = {
  free: 'form',
  'wall-formed': 'form',
  'existing-slab': 'old-slab',
  steps: 'steps',
  wall: 'wet-screed',
};

/** What lies along one side of a strip, the longest first; what is shorter than a tenth of the whole is left out. */
function ridesOn(
  edges: readonly FacedEdge[],
  faces: Facing,
  rail: readonly Stretch[],
  low: number,
  high: number,
): readonly Ride[] {
  const lengths = new Map<Ride, number>();
  const add = (ride: Ride, length: number) => lengths.set(ride, (lengths.get(ride) ?? 0) + length);
  for (const { from, to } of rail) add('rail', to - from);
  for (const edge of edges) {
    const ride = RIDES[edge.kind];
    if (edge.faces === faces && ride) add(ride, lengthWithin(edge, low, high));
  }
  const whole = [...lengths.values()].reduce((sum, length) => sum + length, 0);
  return [...lengths]
    .filter(([, length]) => length > whole / 10)
    .sort((a, b) => b[1] - a[1])
    .map(([ride]) => ride);
}
