import type { Grid } from '../units/grid.ts';
import type { Box } from './box.ts';
import { type Chain, edgeCount } from './chain.ts';
import { type EdgeIndex, edgesNear, indexEdges } from './edgeIndex.ts';
import type { Point } from './point.ts';

/** A chain with more edges than this gets an index; below, walking it is quicker. */
const MANY = 64;

/** One index a chain: chains never change, so this only saves making it again. */
const indexes = new WeakMap<Chain, EdgeIndex>();

/** The two ends of edge i of a chain. */
export function edgeStart(chain: Chain, i: number): Point {
  return chain.points[i]!;
}
export function edgeEnd(chain: Chain, i: number): Point {
  return chain.points[i + 1 === chain.points.length ? 0 : i + 1]!;
}

/** Calls `visit` with the number of every edge of a chain whose box comes within `reach` of a box, once each. */
export function visitEdgesNear(
  chain: Chain,
  box: Box,
  reach: Grid,
  visit: (edge: number) => void,
): void {
  const count = edgeCount(chain);
  const minX = box.minX - reach;
  const minY = box.minY - reach;
  const maxX = box.maxX + reach;
  const maxY = box.maxY + reach;
  if (count > MANY) {
    edgesNear(indexOf(chain), box, reach, visit);
    return;
  }
  const { points } = chain;
  for (let i = 0; i < count; i++) {
    const a = points[i]!;
    const b = edgeEnd(chain, i);
    if (a.x < minX && b.x < minX) continue;
    if (a.x > maxX && b.x > maxX) continue;
    if (a.y < minY && b.y < minY) continue;
    if (a.y > maxY && b.y > maxY) continue;
    visit(i);
  }
}

function indexOf(chain: Chain): EdgeIndex {
  let index = indexes.get(chain);
  if (!index) {
    index = indexEdges(chain.points, chain.closed);
    indexes.set(chain, index);
  }
  return index;
}

/** Whether any edge of a chain passes through a box widened by `reach`, or may do so by less than rounding. */
export function passesThroughBox(chain: Chain, box: Box, reach: Grid): boolean {
  let found = false;
  visitEdgesNear(chain, box, reach, (i) => {
    if (found) return;
    const a = edgeStart(chain, i);
    const b = edgeEnd(chain, i);
    found = edgeMeetsBox(a, b, box, reach);
  });
  return found;
}

function edgeMeetsBox(a: Point, b: Point, box: Box, reach: Grid): boolean {
  const minX = box.minX - reach;
  const minY = box.minY - reach;
  const maxX = box.maxX + reach;
  const maxY = box.maxY + reach;
  if (a.x < minX && b.x < minX) return false;
  if (a.x > maxX && b.x > maxX) return false;
  if (a.y < minY && b.y < minY) return false;
  if (a.y > maxY && b.y > maxY) return false;
  // Apart only if all four corners of the box lie on one side of the edge's line.
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const left = dx * (minY - a.y);
  const right = dx * (maxY - a.y);
  const low = dy * (minX - a.x);
  const high = dy * (maxX - a.x);
  const s1 = left - low;
  const s2 = left - high;
  const s3 = right - low;
  const s4 = right - high;
  return !((s1 > 0 && s2 > 0 && s3 > 0 && s4 > 0) || (s1 < 0 && s2 < 0 && s3 < 0 && s4 < 0));
}
