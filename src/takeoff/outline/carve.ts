import { boxesMeet, boxOf } from '../../geometry/box.ts';
import { type Clipped, clip } from '../../geometry/clip.ts';
import { locate } from '../../geometry/locate.ts';
import type { Polygon, Ring } from '../../geometry/point.ts';
import { ok, type Result } from '../../units/result.ts';
import { type Layout, type Member, meet } from './layout.ts';

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
  const alone = members.map((_, k) => members.every((_, j) => j === k || !meet(layout, j, k)));
  const isConcrete = (member: Member) => member.part === 'pad' || member.part === 'patch';

  const subjects: Ring[] = [];
  const cutters: { outer: Ring; kept: readonly Ring[] }[] = [];
  const pieces: { outer: CarvedRing; holes: CarvedRing[] }[] = [];
  const loneCutters: number[] = [];
  members.forEach((member, k) => {
    if (member.part === 'line' || member.chain.points.length < 3) return;
    if (isConcrete(member)) {
      if (alone[k] && !boxMeetsOther(layout, k))
        pieces.push({ outer: { points: member.chain.points, lone: k }, holes: [] });
      else subjects.push(member.chain.points);
    } else if (alone[k] && !boxMeetsPart(layout, k) && !holdsConcrete(layout, k)) {
      loneCutters.push(k);
    } else cutters.push({ outer: member.chain.points, kept: keptIn(layout, k) });
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

/** Whether a member's box meets that of any other that could change it: containment, with no lines near. */
function boxMeetsOther(layout: Layout, k: number): boolean {
  const { members, tolerance } = layout;
  return members.some(
    ({ part, chain }, j) =>
      j !== k &&
      part !== 'line' &&
      boxesMeet(chain.box, members[k]!.chain.box, 2 * tolerance) &&
      !(
        (part === 'cutter' || part === 'existing') &&
        isInside(chain.points, members[k]!.chain.points)
      ),
  );
}

/** Whether a pad or a patch lies inside a cutter whose line comes nowhere near it. */
function holdsConcrete({ members }: Layout, k: number): boolean {
  return members.some(
    ({ part, chain }) =>
      (part === 'pad' || part === 'patch') && isInside(chain.points, members[k]!.chain.points),
  );
}

/** Whether a cutter's box meets that of another cutter, of a slab or of a patch. */
function boxMeetsPart(layout: Layout, k: number): boolean {
  const { members, tolerance } = layout;
  return members.some(
    ({ part, chain }, j) =>
      j !== k &&
      part !== 'line' &&
      part !== 'pad' &&
      boxesMeet(chain.box, members[k]!.chain.box, 2 * tolerance),
  );
}

/** Whether a ring whose line comes nowhere near another lies inside it. */
function isInside(ring: Ring, other: Ring): boolean {
  return locate(ring[0]!, other) === 'inside';
}
