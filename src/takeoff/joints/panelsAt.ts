import { turn } from '../../geometry/locate.ts';
import type { Point, Ring } from '../../geometry/point.ts';
import type { JointLayout } from '../result.ts';
import type { BrokenJointRule, Panel } from './layout.ts';
import { isNear, isOnRing } from './meeting.ts';

/** Numbers of the panels that a broken rule is about: its own, or those that the place lies on the edge of. */
export function panelsAt(
  { panels, problems }: Pick<JointLayout, 'panels' | 'problems'>,
  { rule, at, panel }: BrokenJointRule,
): readonly number[] {
  if (panel !== undefined) return [panel];
  const closeness = problems[0]?.closeness ?? 0;
  return panels.flatMap((one, i) => {
    if (rule === 'block-out') return hasSpot(one, problems, at) ? [i] : [];
    const touched = ringsOf(one).some((ring) => isOnRing(at, ring, closeness));
    if (!touched) return [];
    return rule === 'inside-corner' && !turnsInAt(one, at, closeness) ? [] : [i];
  });
}

function ringsOf({ polygon: { outer, holes } }: Panel): readonly Ring[] {
  return [outer, ...holes];
}

/** Whether a panel has a corner at a place that turns in. */
function turnsInAt(panel: Panel, at: Point, closeness: number): boolean {
  return ringsOf(panel).some((ring) =>
    ring.some((corner, i) => {
      if (!isNear(corner, at, closeness)) return false;
      const before = ring[(i + ring.length - 1) % ring.length]!;
      return turn(before, corner, ring[(i + 1) % ring.length]!) < 0;
    }),
  );
}

/** Whether a panel lies round a block-out, or along it. */
function hasSpot(panel: Panel, problems: JointLayout['problems'], middle: Point): boolean {
  return problems.some(({ blockOuts, closeness }) =>
    blockOuts.some(
      (spot) =>
        isNear(spot.middle, middle, closeness) &&
        ringsOf(panel).some((ring) => spot.ring.some((place) => isOnRing(place, ring, closeness))),
    ),
  );
}
