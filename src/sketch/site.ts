import { arcOf, flattenArc } from '../geometry/arc.ts';
import { type Box, boxOf } from '../geometry/box.ts';
import type { ArcOf, Point } from '../geometry/point.ts';
import type { Corner, Feature, FeatureKind, Job, Outline } from '../job/job.ts';
import { MILLIMETRE } from '../units/grid.ts';

/**
 * The job as a flat list of the things that a pointer can land on. Made once for a job; looking through the whole list
 * costs about 20 µs at 2,000 corners, so it needs no index.
 */
export interface Site {
  readonly corners: readonly SiteCorner[];
  readonly edges: readonly SiteEdge[];
  readonly grounds: readonly SiteGround[];
}

export interface SiteCorner {
  readonly feature: string;
  readonly corner: Corner;
}

export interface SiteEdge {
  readonly feature: string;
  /** The corner that the edge leaves, and the one it comes to. */
  readonly from: Corner;
  readonly to: Corner;
  readonly arc: ArcOf | null;
  /** Middle of the edge on the grid (on the arc, when it is one). */
  readonly middle: Point;
}

/** What a feature covers, for a pointer inside it. Open lines cover nothing. */
export interface SiteGround {
  readonly feature: string;
  readonly kind: FeatureKind;
  readonly ring: readonly Point[];
  /** Set on round features. */
  readonly round: { readonly center: Point; readonly diameter: number } | null;
  /** Area of the box round it: tells a post from the pad round it. */
  readonly size: number;
}

/** Arcs are followed to a millimetre here: near enough for a finger. */
const FOLLOW = MILLIMETRE;

export function siteOf(job: Job): Site {
  return {
    corners: job.features.flatMap((feature) =>
      feature.shape.form === 'outline'
        ? feature.shape.corners.map((corner) => ({ feature: feature.id, corner }))
        : [],
    ),
    edges: job.features.flatMap(edgesOf),
    grounds: job.features.flatMap(groundOf),
  };
}

/** Features never change, so this only saves making the list again for the same frame. */
const known = new WeakMap<Feature, readonly SiteEdge[]>();

/** The edges of one feature in order; none for a round one. */
export function edgesOf(feature: Feature): readonly SiteEdge[] {
  const before = known.get(feature);
  if (before) return before;
  const edges = madeEdges(feature);
  known.set(feature, edges);
  return edges;
}

function madeEdges({ id, shape }: Feature): readonly SiteEdge[] {
  if (shape.form === 'round') return [];
  const { corners, closed } = shape;
  return corners.flatMap((from, index) => {
    const to = corners[index + 1] ?? (closed && corners.length > 2 ? corners[0] : undefined);
    if (!to || to === from) return [];
    const straight = from.rise === 0 || (from.x === to.x && from.y === to.y);
    const arc = straight ? null : arcOf(from, to, from.rise);
    return [{ feature: id, from, to, arc, middle: middleOf(from, to, arc) }];
  });
}

/** The box round everything, arcs and rounds to their full reach. Nothing on an empty site. */
export function extentOf(job: Job): Box | null {
  const points = job.features.flatMap(({ shape }): readonly Point[] => {
    if (shape.form === 'outline') return pathOf(shape);
    const { center, diameter } = shape;
    const reach = diameter / 2;
    return [
      { x: center.x - reach, y: center.y - reach },
      { x: center.x + reach, y: center.y + reach },
    ];
  });
  return points.length > 0 ? boxOf(points) : null;
}

function groundOf(feature: Feature): readonly SiteGround[] {
  const { id, kind, shape } = feature;
  if (shape.form === 'round') {
    return [{ feature: id, kind, ring: [], round: shape, size: shape.diameter ** 2 }];
  }
  if (!shape.closed || shape.corners.length < 3) return [];
  const ring = pathOf(shape);
  const { minX, minY, maxX, maxY } = boxOf(ring);
  return [{ feature: id, kind, ring, round: null, size: (maxX - minX) * (maxY - minY) }];
}

/** Corners with arcs followed by short straights. */
function pathOf({ corners, closed }: Outline): readonly Point[] {
  return corners.flatMap((from, index) => {
    const to = corners[index + 1] ?? (closed ? corners[0] : undefined);
    return to && from.rise !== 0 ? [from, ...flattenArc(from, to, from.rise, FOLLOW)] : [from];
  });
}

function middleOf(from: Point, to: Point, arc: ArcOf | null): Point {
  if (!arc) return { x: Math.round((from.x + to.x) / 2), y: Math.round((from.y + to.y) / 2) };
  const start = Math.atan2(from.y - arc.cy, from.x - arc.cx);
  const angle = start + arc.sweep / 2;
  return {
    x: Math.round(arc.cx + arc.radius * Math.cos(angle)),
    y: Math.round(arc.cy + arc.radius * Math.sin(angle)),
  };
}
