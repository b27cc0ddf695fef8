import { Clipper, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import { insetPolygons } from '../../src/geometry/offset.ts';
import type { Point } from '../../src/geometry/point.ts';
import { defaultPractices } from '../../src/job/defaults.ts';
import type { MeshStock } from '../../src/job/job.ts';
import { netPour } from '../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../src/takeoff/pourPolygons.ts';
import type { MeshPiece, MeshPlan, MeshProblem } from '../../src/takeoff/steel/plan.ts';
import { meshProblem } from '../../src/takeoff/steel/problem.ts';
import { rowDirections } from '../../src/takeoff/steel/ways.ts';
import { FOOT, INCH, SIXTEENTH } from '../../src/units/grid.ts';
import { chance } from './chance.ts';
import { slabJob } from './slabJobs.ts';

/** Rounding to the grid, of a piece's corner and of what the other library cuts. */
const ROUNDED = 3;

/** The mesh problem of a random slab: laps, least piece, and what truck and yard have, as chance makes them. */
export function randomMesh(seed: number): MeshProblem | undefined {
  const { pour } = netPour(slabJob(seed).job);
  if (!pour) return undefined;
  const draw = chance(seed + 900_000);
  const inset = insetPolygons(pourPolygons(pour, SIXTEENTH), 2 * INCH);
  if (inset.length === 0) return undefined;
  const same = draw.likely(0.6);
  const lapEnds = draw.oneOf([8, 6, 12, 4]) * INCH;
  const rule = {
    ...defaultPractices().steel.mesh,
    lapEnds,
    lapSides: same ? lapEnds : draw.oneOf([8, 6, 2]) * INCH,
    leastPiece: draw.oneOf([12, 12, 6, 24]) * INCH,
  };
  const size = (length: number, width: number) => ({ length: length * FOOT, width: width * FOOT });
  const yard = draw.oneOf([
    [{ id: 'a', form: 'sheet' as const, ...size(10, 5) }],
    [{ id: 'a', form: 'roll' as const, ...size(150, 5) }],
    [
      { id: 'a', form: 'sheet' as const, ...size(10, 5) },
      { id: 'b', form: 'sheet' as const, ...size(20, 8) },
      { id: 'c', form: 'roll' as const, ...size(50, 5) },
    ],
    [{ id: 'a', form: 'sheet' as const, ...size(8, 4), price: 1999 }],
  ]);
  const left = { id: 't', form: 'roll' as const, ...size(draw.between(4, 30), 5), count: 1 };
  const scrap = { id: 's', form: 'sheet' as const, ...size(draw.between(2, 6), 3), count: 2 };
  const stock: MeshStock = { truck: draw.oneOf([[], [], [left], [left, scrap]]), yard };
  const whole = stock.truck.map((one) => ({ ...one, length: Math.round(one.length) }));
  const ways = rowDirections(pour, SIXTEENTH);
  return meshProblem(rule, { ...stock, truck: whole }, inset, ways, SIXTEENTH);
}

/**
 * What is wrong with a layout, in words: every place must be covered, every lap at least the rule, every piece cut out of
 * mesh that there is. Covering and laps are looked at by another library, from the pieces and the shape alone: a stretch
 * as long as the lap, along the rows or across them, that lies inside the shape must lie under one piece.
 */
export function meshFaults(problem: MeshProblem, plan: MeshPlan): readonly string[] {
  return [...coverFaults(problem, plan), ...cutFaults(problem, plan)];
}

function coverFaults(
  problem: MeshProblem,
  { angle, pieces, lapAlong, lapAcross }: MeshPlan,
): readonly string[] {
  const faults: string[] = [];
  // What pokes out by no more than is close enough doesn't count.
  const shape = insetPolygons(problem.polygons, 2 * problem.closeness);
  if (shape.length === 0) return [];
  const middle = shape[0]!.outer[0]!;
  const from = (point: Point) => ({
    x: (point.x - middle.x) * Math.cos(angle) + (point.y - middle.y) * Math.sin(angle),
    y: (point.y - middle.y) * Math.cos(angle) - (point.x - middle.x) * Math.sin(angle),
  });
  const region: Paths64 = shape.flatMap(({ outer, holes }) =>
    [outer, ...holes].map((ring) => pathOf(ring.map(from))),
  );
  const checks = [
    { name: 'bare', dx: 0, dy: 0 },
    { name: 'lap along the rows', dx: lapAlong, dy: 0 },
    { name: 'lap across the rows', dx: 0, dy: lapAcross },
  ];
  for (const { name, dx, dy } of checks) {
    const kept = dx + dy === 0 ? region : shifted(region, dx, dy);
    const covered = pieces.map((piece) => {
      const { x, y } = from(piece.corner);
      const right = x + piece.length + ROUNDED - Math.max(0, dx - 2 * ROUNDED);
      const top = y + piece.width + ROUNDED - Math.max(0, dy - 2 * ROUNDED);
      return box(x - ROUNDED, y - ROUNDED, right, top);
    });
    const bare = Clipper.difference(kept, covered.flat(), FillRule.NonZero);
    const area = Math.abs(Clipper.areaPaths(bare));
    if (area > INCH * INCH * 0.01) {
      faults.push(`${name}: ${(area / INCH ** 2).toFixed(3)} in² of it`);
    }
  }
  return faults;
}

/** Where a stretch begins that lies wholly inside: the region less all that its sides sweep, moved back along the stretch. */
function shifted(region: Paths64, dx: number, dy: number): Paths64 {
  const swept: Paths64 = [];
  for (const path of region) {
    path.forEach((to, i) => {
      const from = path.at(i - 1)!;
      const sweep = pathOf([
        from,
        to,
        { x: to.x - dx, y: to.y - dy },
        { x: from.x - dx, y: from.y - dy },
      ]);
      swept.push(Clipper.area(sweep) < 0 ? sweep.reverse() : sweep);
    });
  }
  return Clipper.difference(region, swept, FillRule.NonZero);
}

function box(left: number, bottom: number, right: number, top: number): Paths64 {
  if (right <= left || top <= bottom) return [];
  return [
    pathOf([
      { x: left, y: bottom },
      { x: right, y: bottom },
      { x: right, y: top },
      { x: left, y: top },
    ]),
  ];
}

function pathOf(points: readonly { readonly x: number; readonly y: number }[]): Path64 {
  return points.map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) }));
}

function cutFaults(
  problem: MeshProblem,
  { pieces, used, cost, lapAlong, lapAcross }: MeshPlan,
): readonly string[] {
  const faults: string[] = [];
  const { lapEnds, lapSides } = problem;
  const [ends, sides] = [lapEnds, lapSides].sort((a, b) => a - b);
  if (ends !== Math.min(lapAlong, lapAcross) || sides !== Math.max(lapAlong, lapAcross)) {
    faults.push('laps of its own');
  }
  // A sheet's ends are its short sides: turned by a quarter, they lie over the next row.
  if (lapEnds !== lapSides && pieces.some(({ cutAt }) => cutAt.turned === (lapAlong === lapEnds))) {
    faults.push('ends lap as sides');
  }
  const { supply, leastPiece, closeness } = problem;
  const kinds = new Set(used.filter(({ from }) => from === 'yard').map(({ id }) => id));
  if (kinds.size > 1) faults.push(`${kinds.size} kinds bought`);
  for (const { id, from, count = Number.POSITIVE_INFINITY } of supply) {
    const taken = used.filter((one) => one.id === id && one.from === from).length;
    if (taken > count) faults.push(`${taken} of ${count} ${id}`);
  }
  const price = used.reduce((sum, one) => {
    const from = supply.find(({ id, from: where }) => id === one.id && where === one.from)!;
    return sum + from.price;
  }, 0);
  if (price !== cost.price) faults.push(`price ${cost.price}, not ${price}`);
  if (used.length !== cost.begun) faults.push('begun');
  for (const piece of pieces) {
    const { length, width, mark } = piece;
    const least = Math.min(leastPiece, ...supply.map((one) => Math.min(one.length, one.width)));
    if (Math.min(length, width) < least - closeness - ROUNDED) {
      faults.push(`piece ${mark} is ${length / INCH} × ${width / INCH} in`);
    }
  }
  used.forEach((sheet, at) => {
    const own = pieces.filter((piece) => piece.used === at).map(cutBox);
    if (own.length === 0) faults.push(`nothing of sheet ${at}`);
    const slack = closeness + ROUNDED;
    own.forEach((one, i) => {
      if (one.right > sheet.taken + slack || one.top > sheet.width + slack) {
        faults.push(`piece ${one.mark} reaches out of sheet ${at}`);
      }
      for (const other of own.slice(i + 1)) {
        const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
        const high = Math.min(one.top, other.top) - Math.max(one.bottom, other.bottom);
        if (wide > slack && high > slack) faults.push(`${one.mark} and ${other.mark} overlap`);
      }
    });
  });
  return faults;
}

function cutBox({ mark, length, width, cutAt: { x, y, turned } }: MeshPiece) {
  const [along, across] = turned ? [width, length] : [length, width];
  return { mark, left: x, right: x + along, bottom: y, top: y + across };
}
