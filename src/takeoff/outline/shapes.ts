import { arcOf, segmentArea } from '../../geometry/arc.ts';
import { doubledArea } from '../../geometry/area.ts';
import { type Chain, chainOf, circleChain } from '../../geometry/chain.ts';
import { selfCrossings } from '../../geometry/crossings.ts';
import type { ArcOf, Point } from '../../geometry/point.ts';
import type { Feature, Outline, Round, Shape } from '../../job/job.ts';
import { ALWAYS_OPEN } from '../../job/soundness.ts';
import { EXTENT_LIMIT, type Grid } from '../../units/grid.ts';

/** How far the chords that stand for an arc in the clipping may leave it: 1/10 mm. Areas and lengths are corrected. */
export const ARC_TOLERANCE: Grid = 32;

/** Why a shape can't be reckoned with. */
export type ShapeFault =
  | { readonly code: 'broken-number' }
  | { readonly code: 'too-few-corners'; readonly corners: number }
  | { readonly code: 'not-closed' }
  | { readonly code: 'no-size' }
  | { readonly code: 'arc-without-chord'; readonly at: readonly Point[] }
  | { readonly code: 'too-large'; readonly extent: Grid }
  | { readonly code: 'crosses-itself'; readonly at: readonly Point[] }
  | { readonly code: 'no-area'; readonly at: readonly Point[] };

/** A shape made ready to be clipped. */
export interface Traced {
  readonly chain: Chain;
  /** Square grid units, arcs counted as arcs; 0 for an open line. */
  readonly area: number;
  readonly fault?: ShapeFault;
}

/** One trace a shape: shapes never change, so this only saves tracing again on every frame of a drag. */
const traces = new WeakMap<Shape, Traced>();

/** The chain of a feature's shape, with what is wrong with it, if anything. The line of a wall may be open, a buried line always is. */
export function traceOf(feature: Feature): Traced {
  const { shape } = feature;
  let traced = traces.get(shape);
  if (!traced) {
    traced = shape.form === 'round' ? traceRound(shape) : traceOutline(shape);
    traces.set(shape, traced);
  }
  const mayBeOpen = feature.kind === 'building-line' || ALWAYS_OPEN.includes(feature.kind);
  if (traced.fault || traced.chain.closed || mayBeOpen) return traced;
  return { ...traced, fault: { code: 'not-closed' } };
}

/** The circle that an edge of a shape lies on; nothing for a straight edge. */
export function arcOfEdge(shape: Shape, edge: number): ArcOf | undefined {
  if (shape.form === 'round') {
    const { center, diameter } = shape;
    return { cx: center.x, cy: center.y, radius: diameter / 2, sweep: 2 * Math.PI };
  }
  const from = shape.corners[edge]!;
  if (from.rise === 0) return undefined;
  return arcOf(from, shape.corners[edge + 1] ?? shape.corners[0]!, from.rise);
}

const NOTHING: Chain = {
  points: [],
  tags: [],
  closed: true,
  box: { minX: 0, minY: 0, maxX: 0, maxY: 0 },
};

function traceRound({ center, diameter }: Round): Traced {
  if (![center.x, center.y, diameter].every(Number.isSafeInteger)) return faulty('broken-number');
  if (diameter <= 0) return faulty('no-size');
  if (diameter > EXTENT_LIMIT) {
    return { chain: NOTHING, area: 0, fault: { code: 'too-large', extent: diameter } };
  }
  return {
    chain: circleChain(center, diameter, ARC_TOLERANCE),
    area: (Math.PI * diameter * diameter) / 4,
  };
}

function faulty(code: 'broken-number' | 'no-size'): Traced {
  return { chain: NOTHING, area: 0, fault: { code } };
}

function traceOutline({ corners, closed }: Outline): Traced {
  const wrong = (fault: ShapeFault, chain: Chain = NOTHING): Traced => ({ chain, area: 0, fault });
  for (const { x, y, rise } of corners) {
    if (![x, y, rise].every(Number.isSafeInteger)) return wrong({ code: 'broken-number' });
  }
  const edges = corners.slice(0, closed ? undefined : -1);
  // Two corners enclose something only between two arcs, or an arc and its chord.
  const fewest = closed && edges.every(({ rise }) => rise === 0) ? 3 : 2;
  if (corners.length < fewest) return wrong({ code: 'too-few-corners', corners: corners.length });
  const bent = edges.filter(({ x, y, rise }, i) => {
    const next = corners[i + 1] ?? corners[0]!;
    return rise !== 0 && x === next.x && y === next.y;
  });
  if (bent.length > 0) return wrong({ code: 'arc-without-chord', at: bent.map(placeOf) });
  // Before anything is made of it: a circle through far corners could have any number of chords.
  const reach = Math.max(...corners.flatMap(({ x, y }) => [x, y]));
  const least = Math.min(...corners.flatMap(({ x, y }) => [x, y]));
  const rise = Math.max(...edges.map((corner) => Math.abs(corner.rise)), 0);
  if (reach - least > 1e12 || rise > EXTENT_LIMIT) {
    return wrong({ code: 'too-large', extent: Math.max(reach - least, rise) });
  }
  const chain = chainOf(corners, closed, ARC_TOLERANCE);
  const { minX, minY, maxX, maxY } = chain.box;
  const extent = Math.max(maxX - minX, maxY - minY);
  if (extent > EXTENT_LIMIT) return wrong({ code: 'too-large', extent });
  if (!closed) {
    return extent === 0 ? wrong({ code: 'no-size' }) : { chain, area: 0 };
  }
  const at = selfCrossings(chain.points);
  const doubled = doubledArea(corners);
  const bulge = edges.reduce((sum, corner, i) => {
    if (corner.rise === 0) return sum;
    return sum + segmentArea(arcOf(corner, corners[i + 1] ?? corners[0]!, corner.rise));
  }, 0);
  const area = Math.abs(doubled / 2 + bulge);
  // First: a figure of eight may enclose nothing on balance, and the crossing is what has to be mended.
  if (at.length > 0 && !isFlat(corners)) return wrong({ code: 'crosses-itself', at }, chain);
  if (doubledArea(chain.points) === 0) {
    return wrong({ code: 'no-area', at: corners.slice(0, 1).map(placeOf) }, chain);
  }
  return { chain, area };
}

/** Whether all corners lie on one straight line. */
function isFlat(corners: Outline['corners']): boolean {
  const a = corners[0]!;
  const b = corners.find(({ x, y }) => x !== a.x || y !== a.y) ?? a;
  return corners.every(
    (c) => c.rise === 0 && (b.x - a.x) * (c.y - a.y) === (b.y - a.y) * (c.x - a.x),
  );
}

function placeOf({ x, y }: Point): Point {
  return { x, y };
}
