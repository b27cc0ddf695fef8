import type { Polygon } from '../../geometry/point.ts';
import type { MeshStock, Practices } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { MeshProblem, MeshSupply } from './plan.ts';

/**
 * The question put to the search.
 * @param inset The pour moved in by the cover.
 * @param ways Directions that rows may be laid along, or square to.
 */
export function meshProblem(
  { lapEnds, lapSides, leastPiece }: Practices['steel']['mesh'],
  stock: MeshStock,
  inset: readonly Polygon[],
  ways: readonly number[],
  closeness: Grid,
): MeshProblem {
  // A sum of money only where every price is known; else the less mesh bought the better.
  const priced = stock.yard.every(({ price }) => price !== undefined);
  const supply: MeshSupply[] = [
    ...stock.truck.map(({ id, form, length, width, count }) => {
      return { id, from: 'truck' as const, form, length, width, count, price: 0 };
    }),
    ...stock.yard.map(({ id, form, length, width, price }) => {
      return {
        id,
        from: 'yard' as const,
        form,
        length,
        width,
        price: priced ? (price ?? 0) : length * width,
      };
    }),
  ];
  return {
    polygons: inset,
    ways,
    supply: supply.filter((one) => Math.min(one.length, one.width) > Math.max(lapEnds, lapSides)),
    pricedBy: priced ? 'money' : 'area',
    lapEnds,
    lapSides,
    leastPiece,
    closeness,
  };
}
