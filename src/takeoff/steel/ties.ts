import { insidePieces, rowBands } from './bands.ts';
import type { MeshPlan } from './plan.ts';

/**
 * Ties along the laps, one at either end of each and none farther apart than the spacing, and the laps' length in all. A
 * lap between rows runs where the rows lie over each other; one within a row runs across it.
 */
export function tiesOf(
  plan: MeshPlan,
  spacing: number,
): { readonly ties: number; readonly lapLength: number } {
  let [ties, lapLength] = [0, 0];
  const put = (length: number) => {
    ties += Math.ceil(length / spacing) + 1;
    lapLength += length;
  };
  const bands = rowBands(plan);
  for (let i = 0; i < bands.length; i++) {
    const band = bands[i]!;
    for (const { joins } of band.strips) for (const width of joins) put(width);
    const above = bands[i + 1];
    if (!above || above.low >= band.high || above.high <= band.high) continue;
    for (const one of band.strips) {
      for (const other of above.strips) {
        const shared = Math.min(one.to, other.to) - Math.max(one.from, other.from);
        if (shared > 0 && insidePieces(one, other)) put(shared);
      }
    }
  }
  return { ties, lapLength };
}
