import type { Point, Polygon } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';

/** Mesh that can be cut: so many sheets or rolls of a size, or as many as one likes of what the yard sells. */
export interface MeshSupply {
  /** Of the truck's or the yard's list. */
  readonly id: string;
  readonly from: 'truck' | 'yard';
  readonly form: 'sheet' | 'roll';
  readonly length: Grid;
  readonly width: Grid;
  /** Absent: as many as one likes. */
  readonly count?: number;
  /** Of one: 0 from the truck. From the yard, what it costs (see `pricedBy`). */
  readonly price: number;
}

/** The whole question put to the search: plain data, so that it can be its own key. */
export interface MeshProblem {
  /** What must be covered: the pour moved in by the cover, holes cut out. */
  readonly polygons: readonly Polygon[];
  /** Directions that rows may be laid along, or square to, radians; the pour's longest side first. */
  readonly ways: readonly number[];
  readonly supply: readonly MeshSupply[];
  /** What `price` counts: money, or square grid units of mesh where a price isn't known. */
  readonly pricedBy: 'money' | 'area';
  readonly lapEnds: Grid;
  readonly lapSides: Grid;
  readonly leastPiece: Grid;
  /** What pokes out from under a piece by less than this is close enough. */
  readonly closeness: Grid;
}

/** One cut piece of mesh as it lies: a rectangle turned by `angle` about its own corner. */
export interface MeshPiece {
  /** 1, 2… row by row. */
  readonly mark: number;
  readonly row: number;
  readonly corner: Point;
  readonly angle: number;
  readonly length: Grid;
  readonly width: Grid;
  /** Which of the plan's `used` it is cut from, and where on it: from its corner, and whether turned by a quarter. */
  readonly used: number;
  readonly cutAt: { readonly x: Grid; readonly y: Grid; readonly turned: boolean };
}

/** One sheet or roll that pieces are cut from. */
export interface UsedMesh {
  /** 1, 2… in the order in which they are begun. */
  readonly mark: number;
  readonly id: string;
  readonly from: 'truck' | 'yard';
  readonly form: 'sheet' | 'roll';
  readonly length: Grid;
  readonly width: Grid;
  /** Length taken off a roll; a sheet is taken whole. */
  readonly taken: Grid;
}

/** A rectangle left of a sheet or roll, large enough to be used again. */
export interface MeshRest {
  /** Which of the plan's `used` it is left of. */
  readonly used: number;
  readonly length: Grid;
  readonly width: Grid;
}

/** What a plan is weighed by, in this order. */
export interface MeshCost {
  /** In what the problem is priced by. */
  readonly price: number;
  /** Sheets and rolls begun, the truck's too. */
  readonly begun: number;
  /** Length taken off rolls. */
  readonly unrolled: Grid;
  readonly cuts: number;
}

/**
 * How sure a plan is of its price. first: a good layout at once, the search is still to come. least: no layout takes less,
 * as area and lap alone need as much. searched: the search was ended, or had no more to try.
 */
export type MeshProof =
  | { readonly is: 'first' }
  | { readonly is: 'least' }
  | { readonly is: 'searched'; readonly seconds: number };

export interface MeshPlan {
  /** Direction of the rows, radians. */
  readonly angle: number;
  /** The least lap between the pieces of a row, and between rows. */
  readonly lapAlong: Grid;
  readonly lapAcross: Grid;
  readonly rows: number;
  readonly pieces: readonly MeshPiece[];
  readonly used: readonly UsedMesh[];
  /** In the order of what they are left of, the larger ones first. */
  readonly rests: readonly MeshRest[];
  readonly cost: MeshCost;
  readonly proof: MeshProof;
}

/** The text by which two problems are the same. */
export function meshKey(problem: MeshProblem): string {
  return JSON.stringify(problem);
}

/** Less than nothing when a is the better. */
export function compareMeshCosts(a: MeshCost, b: MeshCost): number {
  return a.price - b.price || a.begun - b.begun || a.unrolled - b.unrolled || a.cuts - b.cuts;
}
