import type { Point } from '../geometry/point.ts';
import { type FormLine, isPicked, type PickedStake, type SiteStake } from './formLine.ts';
import { covers, nearestOn } from './nearest.ts';
import type { Site, SiteEdge, SiteGround } from './site.ts';

/** What a pointer landed on. */
export type Hit =
  | { readonly on: 'corner'; readonly feature: string; readonly corner: string; readonly at: Point }
  | { readonly on: 'edge'; readonly feature: string; readonly corner: string; readonly at: Point }
  | { readonly on: 'stake'; readonly stake: SiteStake }
  | { readonly on: 'dimension'; readonly feature: string; readonly corner: string }
  | { readonly on: 'feature'; readonly feature: string }
  | { readonly on: 'ground' };

/** Where a dimension's text stands: a box turned about its middle, in grid units. */
export interface DimensionText {
  readonly feature: string;
  /** The corner at which the measured edge starts. */
  readonly corner: string;
  readonly middle: Point;
  readonly halfLength: number;
  readonly halfHeight: number;
  readonly angle: number;
}

export interface HitQuery {
  readonly at: Point;
  readonly site: Site;
  readonly dimensions: readonly DimensionText[];
  /** How far from a thing still counts as on it, grid units. */
  readonly reach: number;
  /** The selected feature wins where several are within reach. */
  readonly selected: string | null;
  /** The forms whose stakes can be picked, and the stake that is. */
  readonly formLine?: FormLine | null;
  readonly picked?: PickedStake | null;
}

/** A fingertip covers 44 px; a mouse points to a few. */
export const TOUCH_REACH_PX = 22;
export const MOUSE_REACH_PX = 9;

/**
 * In this order: corner, edge, dimension text, inside of a feature, bare ground. Within one kind the selected feature
 * wins, then the nearest (inside: the smallest, so that a post in a pad can be picked), then the one drawn last.
 *
 * Stakes stand beside the edges, some of them beside a corner, so they come before edges; between a corner and a stake the
 * nearer wins, the corner counting as half as far. What is selected already, stake or shape, comes before both.
 */
export function hit(query: HitQuery): Hit {
  return (
    hitCornerOrStake(query) ?? hitEdge(query) ?? hitDimension(query) ?? hitFeature(query) ?? GROUND
  );
}

function hitCornerOrStake(query: HitQuery): Hit | null {
  const corner = hitCorner(query);
  const stake = nearestStake(query);
  if (!stake) return corner;
  const found: Hit = { on: 'stake', stake };
  if (corner?.on !== 'corner' || isPicked(stake, query.picked)) return found;
  if (corner.feature === query.selected) return corner;
  const { at, reach } = query;
  const away = Math.hypot(at.x - corner.at.x, at.y - corner.at.y);
  return away / 2 <= awayFromStake(stake, at, reach) ? corner : found;
}

/** A stake is drawn beside its board, which is never thinner on the screen than a part of the reach. */
const BESIDE = 0.4;

function awayFromStake({ face, outward }: SiteStake, at: Point, reach: number): number {
  const out = BESIDE * reach;
  return Math.hypot(
    at.x - face.x - out * Math.cos(outward),
    at.y - face.y - out * Math.sin(outward),
  );
}

function nearestStake({ at, reach, formLine, picked }: HitQuery): SiteStake | null {
  return best(
    formLine?.stakes ?? [],
    (stake) => awayFromStake(stake, at, reach),
    (stake) => isPicked(stake, picked),
    reach,
  );
}

const GROUND: Hit = { on: 'ground' };

function hitCorner({ at, site, reach, selected }: HitQuery): Hit | null {
  const found = best(
    site.corners,
    ({ corner }) => Math.hypot(at.x - corner.x, at.y - corner.y),
    ({ feature }) => feature === selected,
    reach,
  );
  if (!found) return null;
  const { feature, corner } = found;
  return { on: 'corner', feature, corner: corner.id, at: { x: corner.x, y: corner.y } };
}

function hitEdge({ at, site, reach, selected }: HitQuery): Hit | null {
  const found: SiteEdge | null = best(
    site.edges,
    (edge) => nearestOn(edge, at).distance,
    ({ feature }) => feature === selected,
    reach,
  );
  if (found) {
    const near = nearestOn(found, at);
    const place = { x: Math.round(near.x), y: Math.round(near.y) };
    return { on: 'edge', feature: found.feature, corner: found.from.id, at: place };
  }
  return null;
}

function hitDimension({ at, dimensions, reach, selected }: HitQuery): Hit | null {
  const found = best(
    dimensions,
    (text) => outsideOf(text, at),
    ({ feature }) => feature === selected,
    reach,
  );
  return found ? { on: 'dimension', feature: found.feature, corner: found.corner } : null;
}

function hitFeature({ at, site, selected, reach }: HitQuery): Hit | null {
  const under = site.grounds.filter(
    (ground) => covers(ground, at) || (ground.round !== null && nearRound(ground, at, reach)),
  );
  const smallest = under.reduce<SiteGround | null>(
    (least, ground) => (least && least.size < ground.size ? least : ground),
    null,
  );
  const found = under.find(({ feature }) => feature === selected) ?? smallest;
  return found ? { on: 'feature', feature: found.feature } : null;
}

/** A post drawn smaller than a fingertip can still be picked. */
function nearRound({ round }: SiteGround, at: Point, reach: number): boolean {
  return round !== null && Math.hypot(at.x - round.center.x, at.y - round.center.y) <= reach;
}

/** How far a point is outside of a text's box. */
function outsideOf(text: DimensionText, at: Point): number {
  const dx = at.x - text.middle.x;
  const dy = at.y - text.middle.y;
  const along = Math.abs(dx * Math.cos(text.angle) + dy * Math.sin(text.angle));
  const across = Math.abs(dy * Math.cos(text.angle) - dx * Math.sin(text.angle));
  return Math.hypot(Math.max(0, along - text.halfLength), Math.max(0, across - text.halfHeight));
}

function best<T>(
  things: readonly T[],
  distance: (thing: T) => number,
  preferred: (thing: T) => boolean,
  reach: number,
): T | null {
  let found: T | null = null;
  let least = Number.POSITIVE_INFINITY;
  let wins = false;
  for (const thing of things) {
    const away = distance(thing);
    if (away > reach) continue;
    const prefer = preferred(thing);
    if (wins && !prefer) continue;
    if (away <= least || (prefer && !wins)) {
      found = thing;
      least = away;
      wins = prefer;
    }
  }
  return found;
}
