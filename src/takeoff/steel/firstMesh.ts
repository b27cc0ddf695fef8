import { leastCount, leastPrice, type MeshNeed, meshNeed } from './bound.ts';
import { type CutPlan, cutStrips, type Filling } from './cutting.ts';
import { costOf, kindsOf, type RowWay, rowWays, writePlan } from './layout.ts';
import { compareMeshCosts, type MeshCost, type MeshPlan, type MeshProblem } from './plan.ts';
import { rowStarts, type Strip, stripsIn, type Turned, turned } from './rows.ts';

/** The best layout so far. */
export interface Laid {
  readonly way: RowWay;
  readonly strips: readonly Strip[];
  readonly cut: CutPlan;
  readonly cost: MeshCost;
}

/** Fewer strips than this are cut in more ways than one on every frame. */
const FEW_STRIPS = 40;

/**
 * A good layout at once, quick enough for every frame of a drag: rows along the longest side or across it, begun at either
 * edge. Nothing when there isn't mesh enough, or none that can be laid.
 */
export function firstMesh(
  problem: MeshProblem,
  need: MeshNeed = meshNeed(problem),
): MeshPlan | undefined {
  const best = firstLaid(problem, need);
  if (!best) return undefined;
  const is = best.cost.price <= leastPrice(problem, need) ? 'least' : 'first';
  return writePlan(best.way, best.strips, best.cut, { is });
}

/** The same, not written out yet. */
export function firstLaid(problem: MeshProblem, need: MeshNeed): Laid | undefined {
  let best: Laid | undefined;
  const along = problem.ways[0] ?? 0;
  const seen = new Map<string, readonly Strip[]>();
  for (const kind of kindsOf(problem)) {
    if (best && kind && kind.price * leastCount(problem, need, kind) > best.cost.price) continue;
    for (let quarter = 0; quarter < 4; quarter++) {
      const angle = along + (quarter * Math.PI) / 2;
      // Sheets laid across rows as wide as they are long are left to the search, but for those there is no other way.
      const [way] = rowWays(problem, angle, kind);
      if (!way) continue;
      const key = `${quarter} ${way.size.width} ${way.size.lap}`;
      const strips =
        seen.get(key) ??
        stripsOf(
          problem.polygons.map((one) => turned(one, angle)),
          way,
        );
      seen.set(key, strips);
      const fillings: readonly Filling[] =
        strips.length < FEW_STRIPS ? ['mixed', 'whole', 'offcuts'] : ['mixed'];
      for (const filling of fillings) best = better(best, way, strips, filling);
    }
  }
  return best;
}

/** Strips of all shapes, rows begun so far below each. */
export function stripsOf(
  shapes: readonly Turned[],
  { size }: RowWay,
  starts: (shape: Turned, index: number) => readonly number[] = (shape) => rowStarts(shape, size),
): readonly Strip[] {
  const strips: Strip[] = [];
  let row = 0;
  shapes.forEach((shape, index) => {
    const from = starts(shape, index);
    strips.push(...stripsIn(shape, from, size, row));
    row += from.length;
  });
  // Wide ones first, they fit in the fewest offcuts; of those as wide the longest.
  return strips.sort((a, b) => {
    const wider = Math.round((b.width - a.width) / size.closeness);
    return wider || b.to - b.from - (a.to - a.from) || a.row - b.row;
  });
}

/** The better of what there is and of these strips, cut this way. */
export function better(
  best: Laid | undefined,
  way: RowWay,
  strips: readonly Strip[],
  filling: Filling,
): Laid | undefined {
  const cut = cutStrips(strips, way.cutting, filling);
  if (!cut) return best;
  const cost = costOf(cut);
  return best && compareMeshCosts(best.cost, cost) <= 0 ? best : { way, strips, cut, cost };
}
