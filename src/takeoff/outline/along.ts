import { boxesMeet, boxOfEdge } from '../../geometry/box.ts';
import { edgeEnd, edgeStart, visitEdgesNear } from '../../geometry/nearby.ts';
import type { Point } from '../../geometry/point.ts';
import type { Layout } from './layout.ts';

/** A stretch of a source edge that lies along a boundary edge, measured from that edge's start. */
export interface Along {
  readonly lo: number;
  readonly hi: number;
  readonly member: number;
  readonly edge: number;
  /** Whether it runs the same way as the boundary. */
  readonly same: boolean;
  /** Whether the boundary lies on this very line, to rounding, and not just near it. */
  readonly isExact: boolean;
}

/** An edge that isn't quite along another meets it where they run within the tolerance for this many times as far. */
const LONG = 16;

/**
 * Source edges that run along from → to within `near` of it, and where slab edges cross it. What is met from outside
 * need only come within the tolerance, but then for some way: lines that meet at an angle touch, they don't run along.
 */
export function collectAlong(
  { members, tolerance }: Layout,
  from: Point,
  to: Point,
  near: number,
  along: Along[],
  crossings: number[],
): void {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  const box = boxOfEdge(from, to);
  const wide = Math.max(near, tolerance);
  const add = (
    isExact: boolean,
    a: Spot,
    b: Spot,
    source: { member: number; edge: number },
  ): boolean => {
    const reach = isExact ? near : wide;
    const least = isExact ? Math.min(8 * near, length / 2) : LONG * wide;
    if (Math.min(a.aside, b.aside) > reach || Math.max(a.aside, b.aside) < -reach) return false;
    // The part of a → b that lies within reach of the line.
    const p = a.at + shareWithin(a.aside, b.aside, reach) * (b.at - a.at);
    const q = b.at - shareWithin(b.aside, a.aside, reach) * (b.at - a.at);
    const lo = Math.max(0, Math.min(p, q));
    const hi = Math.min(length, Math.max(p, q));
    // Close lines count by their whole run, the same line by what it covers here.
    if (isExact ? hi - lo < least : Math.abs(q - p) < least || hi <= lo) return false;
    const snap = Math.min(2 * reach, tolerance);
    along.push({
      lo: lo < snap ? 0 : lo,
      hi: hi > length - snap ? length : hi,
      ...source,
      same: b.at > a.at,
      isExact: Math.abs(a.aside) <= near && Math.abs(b.aside) <= near,
    });
    return true;
  };
  for (let member = 0; member < members.length; member++) {
    const { chain, part } = members[member]!;
    const isMet = part !== 'pad' && part !== 'patch';
    const reach = isMet ? wide : near;
    if (!boxesMeet(chain.box, box, reach)) continue;
    visitEdgesNear(chain, box, reach, (e) => {
      const a = spotOf(edgeStart(chain, e), from, dx, dy, length);
      const b = spotOf(edgeEnd(chain, e), from, dx, dy, length);
      const source = { member, edge: chain.tags[e]! };
      const isFacing = part === 'line' || (isMet && b.at < a.at);
      if (isFacing && add(false, a, b, source)) return;
      if (add(true, a, b, source)) return;
      if (part === 'existing' && a.aside * b.aside < 0) {
        const at = a.at + (a.aside / (a.aside - b.aside)) * (b.at - a.at);
        if (at > 0 && at < length) crossings.push(at);
      }
    });
  }
}

/** A place seen from a boundary edge: how far along it, and how far to its left. */
interface Spot {
  readonly at: number;
  readonly aside: number;
}

function spotOf(point: Point, from: Point, dx: number, dy: number, length: number): Spot {
  const px = point.x - from.x;
  const py = point.y - from.y;
  return { at: (dx * px + dy * py) / length, aside: (dx * py - dy * px) / length };
}

/** How far along an edge, from its start, lies the first place no farther than `reach` to either side of a line. */
function shareWithin(startSide: number, endSide: number, reach: number): number {
  if (Math.abs(startSide) <= reach) return 0;
  return (Math.abs(startSide) - reach) / Math.abs(endSide - startSide);
}
