import type { Polygon } from '../../geometry/point.ts';
import type { SetTimes } from '../../job/job.ts';
import type { PlacingPractices } from '../../job/placing.ts';
import type { Grid } from '../../units/grid.ts';
import type { PourPiece } from '../outline/pour.ts';
import { type EdgeAge, oldestEdge } from './openEdge.ts';
import { type Strip, spanOf, stripsOf } from './strips.ts';
import { type SetClock, type Timeline, timelineOf } from './timeline.ts';

/** What a pour is planned from. */
export interface Given {
  /** Of each piece: its polygon, arcs as chords, and its edges. */
  readonly pieces: readonly { readonly polygon: Polygon; readonly piece: PourPiece }[];
  /** Cubic grid units each. */
  readonly batches: readonly number[];
  readonly rules: PlacingPractices;
  readonly set: Pick<SetTimes, 'initial' | 'final'>;
  /** Set times at 70 °F are multiplied by this. */
  readonly setFactor: number;
  /** Strips are no wider than this; absent: what the board strikes off. */
  readonly span?: Grid;
}

/** What goes wrong by the clock. */
export interface Trouble {
  /** An edge of fresh concrete gets older than it may. */
  readonly coldJoint: boolean;
  /** The first concrete sets before the last is placed. */
  readonly setsFirst: boolean;
  /** Strips that are hard before they are finished. */
  readonly late: readonly number[];
}

export interface Plan {
  readonly strips: readonly Strip[];
  readonly timeline: Timeline;
  readonly clock: SetClock;
  readonly oldest: EdgeAge;
  /** How old an open edge may get, minutes. */
  readonly window: number;
  readonly trouble: Trouble;
}

/** When concrete does what at the day's temperature. */
function clockOf({ rules, set, setFactor }: Given): SetClock {
  const initial = set.initial * setFactor;
  return {
    initial,
    final: set.final * setFactor,
    bleed: initial * rules.bleedShare,
    float: initial * rules.floatShare,
    trowel: initial * rules.trowelShare,
    // Strength comes no sooner on a warm day than what is said for 70 °F: common practice.
    strip: 60 * rules.stripHours * Math.max(1, setFactor),
  };
}

/** The pour by strips and by the clock; nothing where it takes more strips than can be meant. */
export function planPour(given: Given): Plan | undefined {
  const { pieces, batches, rules, set, setFactor } = given;
  const span = given.span ?? spanOf(rules);
  if (!(span > 0)) return undefined;
  const strips: Strip[] = [];
  for (const [at, { polygon, piece }] of pieces.entries()) {
    const own = stripsOf(polygon, piece, at, span, rules.strips);
    if (!own) return undefined;
    strips.push(...own);
  }
  const clock = clockOf(given);
  const timeline = timelineOf({ strips, batches }, rules, clock);
  const oldest = oldestEdge(strips, timeline);
  // Heat shortens the time that an edge may stay open; cold isn't trusted to lengthen it.
  const window = Math.min(rules.edgeWindow * Math.min(1, setFactor), set.initial * setFactor);
  return {
    strips,
    timeline,
    clock,
    oldest,
    window,
    trouble: {
      coldJoint: oldest.age > window,
      setsFirst: timeline.placed > clock.initial,
      late: timeline.strips.flatMap(({ done, water }, i) =>
        done > water + clock.final ? [i] : [],
      ),
    },
  };
}

export function isInTrouble({ trouble }: Pick<Plan, 'trouble'>): boolean {
  return trouble.coldJoint || trouble.setsFirst || trouble.late.length > 0;
}
