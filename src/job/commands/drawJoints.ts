import type { Point } from '../../geometry/point.ts';
import { alongEdge, nearestAlong } from '../edge.ts';
import { edgeEnd } from '../find.ts';
import type { Attachment, Corner, Job, Joint, JointUse } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';
import { placeUnsound } from '../soundness.ts';

/** Joints that were proposed become drawn ones, and from then on those drawn count, and no others. */
export interface DrawJoints {
  readonly do: 'draw-joints';
  readonly joints: readonly {
    readonly from: Point;
    readonly to: Point;
    readonly joint: Exclude<JointUse, 'existing'>;
  }[];
}

/** More of them at once are our own mistake. */
const MOST = 1_000;

/** Ends that lie on a straight or curved edge of a shape stay on it. One step of undo. */
export function drawJoints(job: Job, { joints }: DrawJoints): Outcome {
  if (joints.length > MOST) return refuse('field-long', '', { facts: { most: MOST } });
  let { nextId } = job;
  const drawn: Joint[] = [];
  for (const { from, to, joint } of joints) {
    const id = `f${nextId}`;
    const unsound = placeUnsound(from) ?? placeUnsound(to);
    if (unsound) return refuse(unsound, id);
    const corner = ({ x, y }: Point, n: number): Corner => {
      const on = edgeUnder(job, { x, y });
      return { id: `c${nextId + n}`, x, y, rise: 0, ...(on ? { on } : {}) };
    };
    drawn.push({
      id,
      name: '',
      kind: 'joint',
      joint,
      shape: { form: 'outline', closed: false, corners: [corner(from, 1), corner(to, 2)] },
    });
    nextId += 3;
  }
  const { practices } = job;
  return {
    ok: true,
    value: {
      ...job,
      nextId,
      features: [...job.features, ...drawn],
      practices: { ...practices, joints: { ...practices.joints, layout: 'by-hand' } },
    },
  };
}

/** The edge that a place lies on, but for rounding. */
function edgeUnder({ features }: Job, place: Point): Attachment | undefined {
  for (const { id, kind, shape } of features) {
    if (kind === 'joint' || kind === 'utility-line' || shape.form === 'round') continue;
    for (const [i, corner] of shape.corners.entries()) {
      const end = edgeEnd(shape, i);
      if (!end) continue;
      const t = nearestAlong(corner, end, place);
      const on = alongEdge(corner, end, t);
      if (Math.hypot(on.x - place.x, on.y - place.y) <= 1) {
        return { feature: id, corner: corner.id, t };
      }
    }
  }
  return undefined;
}
