import type { Grid } from '../units/grid.ts';
import { boxesMeet, boxOf } from './box.ts';
import type { Chain } from './chain.ts';
import { edgeEnd, edgeStart, passesThroughBox, visitEdgesNear } from './nearby.ts';
import { type Point, samePoint } from './point.ts';
import { toGrid } from './round.ts';
import { tidyRing } from './tidy.ts';

/** A corner that was moved onto another chain, or that another chain's edge was bent to pass through. */
export interface Move {
  /** Numbers of the chain that gave way and of the one that it now meets. */
  readonly chain: number;
  readonly onto: number;
  readonly at: Point;
  /** Grid units, a float. */
  readonly distance: number;
}

export interface Welded {
  /** As given, in the same order: a chain that nothing came near is the same object. */
  readonly chains: readonly Chain[];
  /** meets[a * chains.length + b] is 1 where chains a and b come so near each other that they may share something. */
  readonly meets: Uint8Array;
  readonly moves: readonly Move[];
}

/** A corner nearer to an edge than this is on it, as far as the grid can tell. */
const ON = 0.75;

/**
 * Makes chains that run along each other share their corners, so that a stretch common to two is the very same stretch
 * in both, and no gap or overlap thinner than `tolerance` is left between them (a clipper would keep it as a sliver that
 * has no area but two long edges).
 *
 * Earlier chains hold still: a later chain's corner moves onto an earlier chain's corner within tolerance, else onto its
 * nearest edge. Then each edge takes in every corner of another chain that lies within tolerance of it, and spikes
 * are removed. Rounding to the grid bends an edge by less than one unit where a corner is taken in.
 *
 * @param tolerance Grid units, at least 1.
 */
export function weld(chains: readonly Chain[], tolerance: Grid): Welded {
  const count = chains.length;
  const meets = new Uint8Array(count * count);
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      if (!mayMeet(chains[a]!, chains[b]!, 2 * tolerance)) continue;
      meets[a * count + b] = 1;
      meets[b * count + a] = 1;
    }
  }
  const moves: Move[] = [];
  const settled: Chain[] = [];
  for (let k = 0; k < count; k++)
    settled.push(settle(settled, chains[k]!, meets, count, tolerance, moves));
  const welded = settled.map((chain, k) =>
    takeIn(settled, k, chain === chains[k] ? undefined : k, meets, tolerance, moves),
  );
  return { chains: welded, meets, moves };
}

function mayMeet(a: Chain, b: Chain, reach: Grid): boolean {
  return (
    boxesMeet(a.box, b.box, reach) &&
    passesThroughBox(a, b.box, reach) &&
    passesThroughBox(b, a.box, reach)
  );
}

/** The next chain with its corners moved onto those before it. */
function settle(
  earlier: readonly Chain[],
  chain: Chain,
  meets: Uint8Array,
  count: number,
  tolerance: Grid,
  moves: Move[],
): Chain {
  const k = earlier.length;
  let points: Point[] | undefined;
  const near = earlier.flatMap((_, j) => (meets[j * count + k] ? [j] : []));
  if (near.length === 0) return chain;
  for (let i = 0; i < chain.points.length; i++) {
    const move = anchorOf(chain.points[i]!, earlier, near, tolerance);
    if (!move) continue;
    points ??= [...chain.points];
    points[i] = move.at;
    moves.push({ chain: k, ...move });
  }
  return points ? reshaped(chain, points, [...chain.tags]) : chain;
}

/** Where a corner has to go to meet an earlier chain; nothing when it stays. */
function anchorOf(
  point: Point,
  earlier: readonly Chain[],
  near: readonly number[],
  tolerance: Grid,
): Omit<Move, 'chain'> | undefined {
  const limit = tolerance * tolerance;
  const spot = { minX: point.x, minY: point.y, maxX: point.x, maxY: point.y };
  let corner: Point | undefined;
  let cornerSquare = limit;
  let cornerOf = 0;
  let foot: Point | undefined;
  let footSquare = limit;
  let footOf = 0;
  for (const j of near) {
    const chain = earlier[j]!;
    if (!boxesMeet(chain.box, spot, tolerance)) continue;
    visitEdgesNear(chain, spot, tolerance, (e) => {
      const a = edgeStart(chain, e);
      const b = edgeEnd(chain, e);
      for (const end of [a, b]) {
        const square = squareBetween(point, end);
        if (square < cornerSquare || (square === cornerSquare && !corner)) {
          corner = end;
          cornerSquare = square;
          cornerOf = j;
        }
      }
      const t = share(point, a, b);
      if (!(t > 0 && t < 1)) return;
      const dx = a.x + t * (b.x - a.x) - point.x;
      const dy = a.y + t * (b.y - a.y) - point.y;
      const square = dx * dx + dy * dy;
      if (square < footSquare || (square === footSquare && !foot)) {
        footSquare = square;
        footOf = j;
        foot = square <= ON * ON ? point : { x: point.x + toGrid(dx), y: point.y + toGrid(dy) };
      }
    });
  }
  if (corner) {
    if (cornerSquare === 0) return undefined;
    return { onto: cornerOf, at: corner, distance: Math.sqrt(cornerSquare) };
  }
  if (!foot || foot === point) return undefined;
  return { onto: footOf, at: foot, distance: Math.sqrt(footSquare) };
}

interface Insertion {
  readonly edge: number;
  readonly share: number;
  readonly point: Point;
}

/**
 * A chain with every corner of the others that lies on one of its edges taken in.
 * @param own Its own number when its corners have moved: they may have come to lie on its own edges.
 */
function takeIn(
  chains: readonly Chain[],
  k: number,
  own: number | undefined,
  meets: Uint8Array,
  tolerance: Grid,
  moves: Move[],
): Chain {
  const chain = chains[k]!;
  const insertions: Insertion[] = [];
  for (let j = 0; j < chains.length; j++) {
    if (j !== own && !meets[j * chains.length + k]) continue;
    const reach = j === own ? 1 : tolerance;
    for (const point of chains[j]!.points) {
      const spot = { minX: point.x, minY: point.y, maxX: point.x, maxY: point.y };
      if (!boxesMeet(chain.box, spot, reach)) continue;
      visitEdgesNear(chain, spot, reach, (edge) => {
        const a = edgeStart(chain, edge);
        const b = edgeEnd(chain, edge);
        if (samePoint(a, point) || samePoint(b, point)) return;
        const t = share(point, a, b);
        if (!(t > 0 && t < 1)) return;
        const dx = a.x + t * (b.x - a.x) - point.x;
        const dy = a.y + t * (b.y - a.y) - point.y;
        const square = dx * dx + dy * dy;
        if (square > reach * reach) return;
        insertions.push({ edge, share: t, point });
        if (square > 1) moves.push({ chain: k, onto: j, at: point, distance: Math.sqrt(square) });
      });
    }
  }
  if (insertions.length === 0) return chain;
  insertions.sort((a, b) => a.edge - b.edge || a.share - b.share);
  const points: Point[] = [];
  const tags: number[] = [];
  let next = 0;
  for (let i = 0; i < chain.points.length; i++) {
    points.push(chain.points[i]!);
    tags.push(chain.tags[i]!);
    for (; next < insertions.length && insertions[next]!.edge === i; next++) {
      points.push(insertions[next]!.point);
      tags.push(chain.tags[i]!);
    }
  }
  return reshaped(chain, points, tags);
}

function reshaped(chain: Chain, points: Point[], tags: number[]): Chain {
  if (chain.closed) tidyRing(points, tags);
  else dropRepeats(points, tags);
  return { points, tags, closed: chain.closed, box: boxOf(points) };
}

function dropRepeats(points: Point[], tags: number[]): void {
  for (let i = points.length - 2; i >= 0; i--) {
    if (!samePoint(points[i]!, points[i + 1]!)) continue;
    points.splice(i, 1);
    tags.splice(i, 1);
  }
}

function squareBetween(a: Point, b: Point): number {
  const dx = a.x - b.x;
  const dy = a.y - b.y;
  return dx * dx + dy * dy;
}

/** Where along a → b a point lies, seen square to it: 0 at a, 1 at b. */
function share(point: Point, a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  return ((point.x - a.x) * dx + (point.y - a.y) * dy) / (dx * dx + dy * dy);
}
