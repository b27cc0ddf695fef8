import { toGrid } from '../../geometry/round.ts';
import { type CutPlan, type Cutting, cuttingOf } from './cutting.ts';
import type { MeshCost, MeshPiece, MeshPlan, MeshProblem, MeshProof, MeshSupply } from './plan.ts';
import { directionOf, type RowSize, type Strip } from './rows.ts';

/** One way of laying rows: in a direction, so wide, bought of one kind of the yard's. */
export interface RowWay {
  readonly angle: number;
  readonly size: RowSize;
  readonly cutting: Cutting;
  readonly kind: MeshSupply | undefined;
}

/**
 * Ways of laying rows in one direction out of the truck's mesh and one kind of the yard's: as wide as it is, sheets also
 * as wide as they are long.
 */
export function rowWays(
  problem: MeshProblem,
  angle: number,
  kind: MeshSupply | undefined,
): readonly RowWay[] {
  const { lapEnds, lapSides, leastPiece, closeness } = problem;
  const truck = problem.supply.filter(({ from }) => from === 'truck');
  const supply = kind ? [...truck, kind] : truck;
  const way = (width: number, along: boolean): RowWay => ({
    angle,
    size: { width, lap: along ? lapSides : lapEnds, leastPiece, closeness },
    cutting: cuttingOf(problem, supply, along),
    kind,
  });
  const widest = (sizes: readonly number[]) => (kind ? sizes : [Math.max(...sizes)]);
  const of = kind ? [kind] : truck;
  const ways = widest(of.map(({ width }) => width)).map((width) => way(width, true));
  const sheets = of.filter(({ form, length, width }) => form === 'sheet' && length > width);
  if (sheets.length > 0) {
    ways.push(...widest(sheets.map(({ length }) => length)).map((length) => way(length, false)));
  }
  return ways.filter(
    ({ size, cutting }) => size.width > size.lap && leastSide(supply) > cutting.lap,
  );
}

function leastSide(supply: readonly MeshSupply[]): number {
  return Math.min(...supply.map(({ length, width }) => Math.min(length, width)));
}

/** The kinds of the yard's mesh, of which a plan buys one; nothing to buy is a kind of its own. */
export function kindsOf({ supply }: MeshProblem): readonly (MeshSupply | undefined)[] {
  const yard = supply.filter(({ from }) => from === 'yard');
  return yard.length > 0 ? yard : [undefined];
}

export function costOf({ begun, cuts }: CutPlan): MeshCost {
  let [price, unrolled] = [0, 0];
  for (const { supply, taken } of begun) {
    price += supply.price;
    if (supply.form === 'roll') unrolled += taken;
  }
  return { price, begun: begun.length, unrolled: Math.round(unrolled), cuts };
}

/** A cut layout as a plan, pieces numbered row by row. */
export function writePlan(
  { angle, size, cutting }: RowWay,
  strips: readonly Strip[],
  cut: CutPlan,
  proof: MeshProof,
): MeshPlan {
  const [cos, sin] = directionOf(angle);
  const pieces = [...cut.pieces].sort(
    (a, b) => a.strip.row - b.strip.row || a.strip.from + a.offset - (b.strip.from + b.offset),
  );
  return {
    angle,
    lapAlong: cutting.lap,
    lapAcross: size.lap,
    rows: new Set(strips.map(({ row }) => row)).size,
    pieces: pieces.map(({ strip, offset, length, used, x, y, turned }, i): MeshPiece => {
      const u = strip.from + offset;
      return {
        mark: i + 1,
        row: strip.row,
        corner: {
          x: toGrid(u * cos - strip.bottom * sin),
          y: toGrid(u * sin + strip.bottom * cos),
        },
        angle,
        length: toGrid(length),
        width: toGrid(strip.width),
        used,
        cutAt: { x: toGrid(x), y: toGrid(y), turned },
      };
    }),
    used: cut.begun.map(({ supply: { id, from, form, length, width }, taken }, i) => ({
      mark: i + 1,
      id,
      from,
      form,
      length,
      width,
      taken: toGrid(taken),
    })),
    rests: cut.rests
      .map(({ used, long, wide }) => ({ used, length: toGrid(long), width: toGrid(wide) }))
      .sort((a, b) => a.used - b.used || b.length * b.width - a.length * a.width),
    cost: costOf(cut),
    proof,
  };
}
