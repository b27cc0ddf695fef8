import { doubledArea } from '../../geometry/area.ts';
import type { Polygon, Ring } from '../../geometry/point.ts';
import type { MeshProblem, MeshSupply } from './plan.ts';

/** What area and lap alone ask for, square grid units. */
export interface MeshNeed {
  /** Of what must be covered. */
  readonly area: number;
  /** Of the places about which a square as large as the lap is all inside. */
  readonly lapped: number;
}

/** The lesser of the two laps. */
export function leastLap({ lapEnds, lapSides }: MeshProblem): number {
  return Math.min(lapEnds, lapSides);
}

/**
 * What any layout must cover. Laps are at least `l` both ways, so a square of side l that lies inside the pour lies under
 * one piece alone. The middles of such squares fill the pour but for a border along its sides, half of l wide (by the
 * square's diagonal, where sides run at other angles), and round its inside corners; and under a piece of w × h only
 * (w − l)(h − l) of them find room. Cutting a sheet in two makes no more room. Own derivation.
 */
export function meshNeed(problem: MeshProblem): MeshNeed {
  const lap = leastLap(problem);
  const border = (lap / 2) * slant(problem) + problem.closeness;
  const reach = lap / Math.SQRT2 + problem.closeness;
  const area = areaOf(problem.polygons);
  let lapped = area;
  for (const { outer, holes } of problem.polygons) {
    for (const ring of [outer, ...holes]) {
      const { length, inward } = walk(ring, ring === outer);
      lapped -= length * border + (inward / 2) * reach * reach;
    }
  }
  return { area, lapped: Math.max(0, lapped) };
}

/** Length of a ring, and all of its turns towards the inside of the shape, radians. */
function walk(ring: Ring, isOuter: boolean): { readonly length: number; readonly inward: number } {
  // Which turns are inside corners: right ones going counter-clockwise round the outside, left ones the same way round a hole.
  const sign = doubledArea(ring) > 0 === isOuter ? -1 : 1;
  let [length, inward] = [0, 0];
  let before = ring[ring.length - 2]!;
  let at = ring[ring.length - 1]!;
  for (const next of ring) {
    const [ax, ay] = [at.x - before.x, at.y - before.y];
    const [bx, by] = [next.x - at.x, next.y - at.y];
    length += Math.sqrt(bx * bx + by * by);
    const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * sign;
    if (turn > 0) inward += turn;
    before = at;
    at = next;
  }
  return { length, inward };
}

/** Sheets or rolls of one kind that no layout does without, the truck's mesh counted on first. */
export function leastCount(problem: MeshProblem, need: MeshNeed, kind: MeshSupply): number {
  const lap = leastLap(problem);
  const slack = 2 * problem.closeness;
  const room = ({ length, width }: MeshSupply) =>
    Math.max(0, length - lap + slack) * Math.max(0, width - lap + slack);
  const size = ({ length, width }: MeshSupply) => (length + slack) * (width + slack);
  let { area, lapped } = need;
  for (const one of problem.supply) {
    if (one.from !== 'truck') continue;
    area -= size(one) * (one.count ?? 0);
    lapped -= room(one) * (one.count ?? 0);
  }
  const count = Math.max(area / size(kind), room(kind) > 0 ? lapped / room(kind) : 0);
  return Math.max(0, Math.ceil(count - 1e-9));
}

/** No plan costs less than this. One kind is bought, whichever is cheapest. */
export function leastPrice(problem: MeshProblem, need: MeshNeed): number {
  const yard = problem.supply.filter(({ from }) => from === 'yard');
  if (yard.length === 0) return 0;
  return Math.min(...yard.map((kind) => kind.price * leastCount(problem, need, kind)));
}

export function areaOf(polygons: readonly Polygon[]): number {
  let doubled = 0;
  for (const { outer, holes } of polygons) {
    doubled += Math.abs(doubledArea(outer));
    for (const hole of holes) doubled -= Math.abs(doubledArea(hole));
  }
  return doubled / 2;
}

/** How much farther a square reaches across a side than when it lies along it: 1 where all sides run one way or square to it. */
function slant({ polygons, ways: [way = 0, ...others] }: MeshProblem): number {
  if (others.length > 0) return Math.SQRT2;
  const [cos, sin] = [Math.cos(way), Math.sin(way)];
  let most = 1;
  for (const { outer, holes } of polygons) {
    for (const ring of [outer, ...holes]) {
      let from = ring[ring.length - 1]!;
      for (const to of ring) {
        const [dx, dy] = [to.x - from.x, to.y - from.y];
        const along = Math.abs(dx * cos + dy * sin) + Math.abs(dy * cos - dx * sin);
        const long = Math.sqrt(dx * dx + dy * dy);
        if (long > 0) most = Math.max(most, along / long);
        from = to;
      }
    }
  }
  return most;
}
