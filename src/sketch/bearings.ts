import { type Point, samePoint } from '../geometry/point.ts';
import { nearestOn } from './nearest.ts';
import type { Site, SiteEdge } from './site.ts';

/** A corner next to the one being placed, and the corner beyond it (absent at the end of a line). */
export interface Neighbour {
  readonly at: Point;
  readonly beyond?: Point;
}

/** A line through a known point on which a corner is likely wanted. */
export interface Bearing {
  readonly through: Point;
  readonly dx: number;
  readonly dy: number;
  readonly reason: 'square' | 'straight-on' | 'parallel' | 'extension' | 'across' | 'up';
  /** Lower is stronger. */
  readonly rank: number;
}

export interface BearingQuery {
  readonly at: Point;
  readonly site: Site;
  readonly reach: number;
  readonly neighbours: readonly Neighbour[];
  readonly moving: { readonly feature: string; readonly corner?: string } | null;
}

const RANK: Readonly<Record<Bearing['reason'], number>> = {
  square: 0,
  'straight-on': 1,
  across: 2,
  up: 2,
  parallel: 3,
  extension: 4,
};

/** Other edges are taken as a reference only this near, in reaches; and at most so many. */
const NEAR_REACHES = 14;
const MOST_REFERENCES = 12;

/**
 * The lines that a corner may be lined up with: square to and straight on from the edges next to it, due across and up
 * from its neighbours, parallel to edges near by, and in line with edges near by.
 */
export function bearingsFor(query: BearingQuery): readonly Bearing[] {
  const references = referencesNear(query);
  return [
    ...query.neighbours.flatMap((neighbour) => fromNeighbour(neighbour, references)),
    ...references.map(({ from, to }) => bearing(from, to.x - from.x, to.y - from.y, 'extension')),
  ];
}

function fromNeighbour(
  { at, beyond }: Neighbour,
  references: readonly SiteEdge[],
): readonly Bearing[] {
  const own: Bearing[] = [];
  if (beyond && !samePoint(at, beyond)) {
    const [dx, dy] = [at.x - beyond.x, at.y - beyond.y];
    own.push(bearing(at, -dy, dx, 'square'), bearing(at, dx, dy, 'straight-on'));
  }
  return [
    ...own,
    bearing(at, 1, 0, 'across'),
    bearing(at, 0, 1, 'up'),
    ...references.flatMap(({ from, to }) => {
      const [dx, dy] = [to.x - from.x, to.y - from.y];
      return [bearing(at, dx, dy, 'parallel'), bearing(at, -dy, dx, 'square', RANK.parallel)];
    }),
  ];
}

function bearing(
  through: Point,
  dx: number,
  dy: number,
  reason: Bearing['reason'],
  rank: number = RANK[reason],
): Bearing {
  return { through, dx, dy, reason, rank };
}

/** Straight edges of other features (or other edges of this one) near the pointer, nearest first. */
function referencesNear({ at, site, reach, moving }: BearingQuery): readonly SiteEdge[] {
  const near: { readonly edge: SiteEdge; readonly away: number }[] = [];
  for (const edge of site.edges) {
    if (edge.arc || samePoint(edge.from, edge.to)) continue;
    if (moving && edge.feature === moving.feature && touches(edge, moving.corner)) continue;
    const away = nearestOn(edge, at).distance;
    if (away <= reach * NEAR_REACHES) near.push({ edge, away });
  }
  return near
    .sort((a, b) => a.away - b.away)
    .slice(0, MOST_REFERENCES)
    .map(({ edge }) => edge);
}

function touches({ from, to }: SiteEdge, corner: string | undefined): boolean {
  return corner === undefined || from.id === corner || to.id === corner;
}
