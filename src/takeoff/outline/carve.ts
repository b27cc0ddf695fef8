import { boxesMeet, boxOf } from '../../geometry/box.ts';
import { type Clipped, clip } from '../../geometry/clip.ts';
import { locate } from '../../geometry/locate.ts';
import type { Polygon, Ring } from '../../geometry/point.ts';
import { ok, type Result } from '../../units/result.ts';
import { type Layout, meet, type Part } from './layout.ts';

/** A ring of the pour's boundary. `lone` is the member that it is the whole outline of, when nothing else meets it. */
export interface CarvedRing {
  readonly points: Ring;
  readonly lone?: number;
}

export interface CarvedPiece {
  readonly outer: CarvedRing;
  readonly holes: readonly CarvedRing[];
}

export interface Carved {
  readonly pieces: readonly CarvedPiece[];
  readonly engine: Clipped['engine'];
  readonly grid: number;
  readonly retries: number;
}

/**
 * pour = (pads ∪ patches) − (existing slabs − patches) − everything else that is cut out, in one clipping call.
 *
 * Two shortcuts that change no result: a cutter that meets nothing and lies inside concrete is a hole as it stands, and
 * a pad that nothing meets is a piece as it stands; neither goes through the clipper.
 */
export function carve(layout: Layout): Result<Carved> {
  const { members } = layout;
  const loneCutters = members.flatMap((_, k) => (isLoneCutter(layout, k) ? [k] : []));
  const subjects: Ring[] = [];
  const cutters: { outer: Ring; kept: readonly Ring[] }[] = [];
  const pieces: { outer: CarvedRing; holes: CarvedRing[] }[] = [];
  members.forEach(({ part, chain: { points } }, k) => {
    if (part === 'line' || points.length < 3 || loneCutters.includes(k)) return;
    if (!isConcrete(part)) cutters.push({ outer: points, kept: keptIn(layout, k) });
    else if (isLonePad(layout, k, loneCutters))
      pieces.push({ outer: { points, lone: k }, holes: [] });
    else subjects.push(points);
  });

  const clipped: Result<Clipped> =
    subjects.length === 1 && cutters.length === 0
      ? ok({ polygons: [{ outer: subjects[0]!, holes: [] }], doubledAreaUnrounded: 0, ...PLAIN })
      : clip(subjects, cutters);
  if (!clipped.ok) return clipped;
  const { polygons, engine, grid, retries } = clipped.value;
  for (const polygon of polygons) pieces.push(asCarved(polygon));
  for (const k of loneCutters) {
    const { points, box } = members[k]!.chain;
    const inside = pieces.find(({ outer, holes }) => {
      const spot = points[0]!;
      return (
        boxesMeet(boxOf(outer.points), box, 0) &&
        locate(spot, outer.points) === 'inside' &&
        !holes.some((hole) => locate(spot, hole.points) === 'inside')
      );
    });
    inside?.holes.push({ points: [points[0]!, ...points.slice(1).reverse()], lone: k });
  }
  return ok({ pieces, engine, grid, retries });
}

const PLAIN = { engine: 'polygon-clipping', grid: 1, retries: 0 } as const;

function asCarved({ outer, holes }: Polygon): { outer: CarvedRing; holes: CarvedRing[] } {
  return { outer: { points: outer }, holes: holes.map((points) => ({ points })) };
}

/** The patches that lie at least partly in an existing slab. */
function keptIn(layout: Layout, k: number): readonly Ring[] {
  const { members } = layout;
  if (members[k]!.part !== 'existing') return [];
  return members.flatMap(({ part, chain }) =>
    part === 'patch' && chain.points.length > 2 && boxesMeet(chain.box, members[k]!.chain.box, 0)
      ? [chain.points]
      : [],
  );
}

function isConcrete(part: Part): boolean {
  return part === 'pad' || part === 'patch';
}

/** Whether nothing comes near a member's line. */
function isAlone(layout: Layout, k: number): boolean {
  return layout.members.every((_, j) => j === k || !meet(layout, j, k));
}

/** Whether a cutter is a hole as it stands, or lies outside all concrete. */
function isLoneCutter(layout: Layout, k: number): boolean {
  const { members, tolerance } = layout;
  const { part, chain } = members[k]!;
  if (isConcrete(part) || part === 'line' || chain.points.length < 3) return false;
  if (!isAlone(layout, k)) return false;
  // Not inside another cutter, nor round one, nor round any concrete.
  return members.every((other, j) => {
    if (j === k || other.part === 'line') return true;
    if (!boxesMeet(other.chain.box, chain.box, 2 * tolerance)) return true;
    return other.part === 'pad' && !isInside(other.chain.points, chain.points);
  });
}

/** Whether a pad or patch is a piece as it stands, but for cutters that stand alone. */
function isLonePad(layout: Layout, k: number, loneCutters: readonly number[]): boolean {
  const { members, tolerance } = layout;
  const { box } = members[k]!.chain;
  return (
    isAlone(layout, k) &&
    members.every(
      ({ part, chain }, j) =>
        j === k ||
        part === 'line' ||
        loneCutters.includes(j) ||
        !boxesMeet(chain.box, box, 2 * tolerance),
    )
  );
}

/** Whether a ring whose line comes nowhere near another lies inside it. */
function isInside(ring: Ring, other: Ring): boolean {
  return locate(ring[0]!, other) === 'inside';
}
