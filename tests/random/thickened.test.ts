import { expect, test } from 'vitest';
import type { Point } from '../../src/geometry/point.ts';
import type { NetPour, PourEdge } from '../../src/takeoff/outline/pour.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { CUBIC_FOOT, INCH } from '../../src/units/grid.ts';
import { chance } from './chance.ts';
import { slabJob } from './slabJobs.ts';

const CELLS = 220;

/** A place seen from an edge: past its start, and off to its left. */
function seen({ from, to }: PourEdge, { x, y }: Point) {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const [px, py] = [x - from.x, y - from.y];
  return { along: px * ux + py * uy, off: py * ux - px * uy, length };
}

/** From how wide a strip on a place is in it: by edge, and between two edges round an inside corner. */
function reachOf(pour: NetPour, place: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { rings } of pour.pieces) {
    for (const { edges } of rings) {
      edges.forEach((edge, i) => {
        if (edge.kind !== 'free') return;
        const one = seen(edge, place);
        if (one.off >= 0 && one.along >= 0 && one.along <= one.length) {
          least = Math.min(least, one.off);
        }
        const next = edges[(i + 1) % edges.length]!;
        if (next.kind !== 'free' || one.along < one.length) return;
        const other = seen(next, place);
        if (other.along > 0 || one.off < 0 || other.off < 0) return;
        // Between the two square ends: to the mitre, or to the chord between the ends where that is too far.
        const turn = (e: PourEdge) => Math.atan2(e.to.y - e.from.y, e.to.x - e.from.x);
        const half = Math.abs(Math.sin((turn(next) - turn(edge)) / 2));
        const cosine = Math.sqrt(1 - half ** 2);
        const mitre = Math.max(one.off, other.off);
        const chord = (one.off + other.off) / (2 * cosine ** 2);
        least = Math.min(least, 1 / cosine <= 2 ? mitre : chord);
      });
    }
  }
  return least;
}

function isPoured(pour: NetPour, { x, y }: Point): boolean {
  let crossings = 0;
  for (const { rings } of pour.pieces) {
    for (const { edges } of rings) {
      for (const { from, to, arc } of edges) {
        // Arcs here are of round block-outs: their chords count, and what lies in the circle is out.
        if (arc && Math.hypot(x - arc.cx, y - arc.cy) < arc.radius) return false;
        if (from.y > y === to.y > y) continue;
        if (from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x) > x) crossings++;
      }
    }
  }
  return crossings % 2 === 1;
}

/** The volume below the slab, from the depth at the middle of each cell of a lattice. */
function byCells(pour: NetPour, below: number, width: number, taper: number): number {
  const points = pour.pieces.flatMap(({ rings }) => rings[0]!.edges.map(({ from }) => from));
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [minX, minY] = [Math.min(...xs), Math.min(...ys)];
  const [dx, dy] = [(Math.max(...xs) - minX) / CELLS, (Math.max(...ys) - minY) / CELLS];
  let sum = 0;
  for (let i = 0; i < CELLS; i++) {
    for (let j = 0; j < CELLS; j++) {
      // Staggered, so that no straight edge runs along a row of middles.
      const place = {
        x: minX + (i + ((j * 0.618) % 1)) * dx,
        y: minY + (j + ((i * 0.414) % 1)) * dy,
      };
      if (!isPoured(pour, place)) continue;
      const past = reachOf(pour, place) - width;
      if (past < taper) sum += past <= 0 ? 1 : 1 - past / taper;
    }
  }
  return sum * dx * dy * below;
}

test('on 40 random slabs the thickened edge holds what a lattice of depths says, to one percent', () => {
  const faults: string[] = [];
  let held = 0;
  for (let seed = 1; seed <= 40; seed++) {
    const { job } = slabJob(seed);
    const draw = chance(seed + 9_000);
    const thickenedEdge = {
      use: true,
      depth: draw.whole(6, 24) * INCH,
      width: draw.whole(4, 30) * INCH,
      taper: draw.oneOf([0, draw.whole(2, 30)]) * INCH,
    };
    const { pour, volume } = takeoff({ ...job, practices: { ...job.practices, thickenedEdge } });
    const edge = volume?.thickened;
    if (!pour || !edge) continue;
    const { below, width, taper } = edge;
    const cells = byCells(pour, below, width, taper);
    // A cell on the border of the strip may be wrong by half of itself.
    const slack = 0.01 * cells + 0.002 * pour.area * below;
    if (Math.abs(cells - edge.volume) > slack) {
      faults.push(`seed ${seed}: ${edge.volume / CUBIC_FOOT} but ${cells / CUBIC_FOOT} ft³`);
    }
    held++;
  }
  expect(faults).toEqual([]);
  expect(held).toBeGreaterThan(30);
});
