import type { Point } from '../../geometry/point.ts';
import type { JointLine, JointProblem, JointReport } from './layout.ts';
import { endsAt, isOnRing, lengthOf, meetingOf } from './meeting.ts';
import { jointReport } from './panels.ts';
import { isBetter } from './weights.ts';

/**
 * A layout that breaks rules, with joints stopped at others, or left out, where it breaks less then: a joint that goes on
 * from edge to edge may cut slivers where it isn't needed.
 * @param most Layouts looked at.
 */
export function cutBack(problem: JointProblem, report: JointReport, most: number): JointReport {
  let best = report;
  let tried = 0;
  for (;;) {
    const before = best;
    for (const joints of shorter(problem, best)) {
      if (tried++ >= most) return best;
      const next = jointReport(problem, joints);
      if (isBetter(next, best, problem.rules)) {
        best = next;
        break;
      }
    }
    if (best === before) return best;
  }
}

/** The same joints with a part of one left out, which lies along a panel that breaks a rule. */
function shorter(
  { fixed, closeness }: JointProblem,
  { joints, panels, broken }: JointReport,
): readonly (readonly JointLine[])[] {
  const spoilt = panels.filter((_, i) => broken.some(({ panel }) => panel === i));
  const isBySpoilt = (a: Point, b: Point) => {
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    return spoilt.some(({ polygon }) => isOnRing(middle, polygon.outer, closeness));
  };
  return joints.flatMap((joint, i) => {
    if (fixed.includes(joint)) return [];
    const along = ({ x, y }: Point) => Math.hypot(x - joint.from.x, y - joint.from.y);
    const crossings = joints
      .flatMap((other) => (other === joint ? [] : (meetingOf(joint, other, closeness)?.at ?? [])))
      .filter((at) => !endsAt(joint, at, closeness))
      .toSorted((a, b) => along(a) - along(b));
    const stops = [joint.from, ...crossings, joint.to];
    const kept: (JointLine | undefined)[] = [];
    for (let k = 1; k < stops.length; k++) {
      if (!isBySpoilt(stops[k - 1]!, stops[k]!)) continue;
      kept.push({ ...joint, to: stops[k - 1]! }, { ...joint, from: stops[k]! });
    }
    return kept.map((line) =>
      joints.flatMap((one, at) => {
        if (at !== i) return [one];
        return line && lengthOf(line) > closeness ? [line] : [];
      }),
    );
  });
}
