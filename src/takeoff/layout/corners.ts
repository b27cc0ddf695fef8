import { distanceToEdge } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import type { Corner, Job, Outline, Pad } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import type { Figured } from '../notes.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import { text } from '../quantity.ts';
import { layoutNote } from './layoutNote.ts';
import { CORNERS_MOST } from './rules.ts';

/** A corner of a pad's outline that has a form, to be set out. */
export interface LaidCorner {
  /** As in the corner table and on the plan: A, B, C… round the pad's outline. */
  readonly letter: string;
  /** Its number in the outline, from 0. */
  readonly index: number;
  readonly at: Point;
}

export interface LaidPad {
  readonly pad: Pad;
  readonly corners: readonly LaidCorner[];
}

/**
 * The corners of a pad that a form meets, in the outline's order. Those that lie against what is there already need no
 * setting out.
 * @param chosen Id of the pad; the first one when not said.
 * @param closeness Two places nearer than this are one, grid units.
 */
export function laidPad(
  job: Job,
  pour: NetPour | undefined,
  chosen: string | undefined,
  closeness: number,
): Figured<LaidPad> {
  const pads = job.features.filter((feature): feature is Pad => feature.kind === 'pad');
  const pad = chosen === undefined ? pads[0] : pads.find(({ id }) => id === chosen);
  if (!pour) return { notes: [layoutNote('stop', 'layout-no-pour')] };
  if (!pad) return { notes: [layoutNote('stop', 'layout-pad-gone')] };
  const formed = formedEdges(pour);
  const corners = pad.shape.corners.flatMap((corner, index): LaidCorner[] =>
    formed.some((edge) => touches(edge, corner, closeness))
      ? [{ letter: cornerLetter(index), index, at: { x: corner.x, y: corner.y } }]
      : [],
  );
  if (corners.length < 2) return { notes: [layoutNote('stop', 'layout-few-corners')] };
  if (corners.length > CORNERS_MOST) {
    const facts = { corners: text(`${corners.length}`), most: text(`${CORNERS_MOST}`) };
    return { notes: [layoutNote('stop', 'layout-many-corners', facts)] };
  }
  return { figured: { pad, corners }, notes: [] };
}

function formedEdges({ pieces }: NetPour): readonly PourEdge[] {
  return pieces.flatMap(({ rings }) =>
    rings
      .filter(({ hole }) => !hole)
      .flatMap(({ edges }) =>
        edges.filter(({ kind }) => kind === 'free' || kind === 'wall-formed'),
      ),
  );
}

function touches({ from, to, arc }: PourEdge, corner: Point, closeness: number): boolean {
  return arc
    ? [from, to].some((end) => between(end, corner) <= closeness)
    : distanceToEdge(corner, from, to) <= closeness;
}

/** Straight distance, grid units, a float. */
export function between(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The corner at which the edge that leaves corner `index` of a closed outline ends. */
export function cornerAfter({ corners }: Outline, index: number): Corner {
  return corners[(index + 1) % corners.length]!;
}
