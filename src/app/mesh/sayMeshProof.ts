import type { UnitStyle } from '../../job/job.ts';
import { sayQuantity } from '../../sheet/words/say.ts';
import type { Words } from '../../sheet/words/words.ts';
import { count } from '../../takeoff/quantity.ts';
import type { MeshResult } from '../../takeoff/result.ts';
import type { meshEn } from '../words/meshEn.ts';

/**
 * How sure a mesh layout is, in a sentence: proved least, or the best that was found with what area and lap alone would
 * take beside it, or a first answer.
 */
export function sayMeshProof(
  says: (typeof meshEn)['standing'],
  words: Words,
  { plan, least }: Pick<MeshResult, 'plan' | 'least'>,
  units: UnitStyle,
): string {
  const { proof } = plan;
  if (proof.is === 'first') return says.first;
  if (proof.is === 'least') return says.least;
  const seconds = Math.max(0.1, proof.seconds);
  if (!least) return says.truckOnly(seconds);
  const of = (number: number) => sayQuantity(words, count(number, least.kind.form), units);
  const bought = plan.used.filter(({ from }) => from === 'yard').length;
  return bought > least.count
    ? says.gap(seconds, of(bought), of(least.count))
    : says.otherKind(seconds);
}
