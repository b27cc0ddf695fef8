import type { UnitStyle } from '../../job/job.ts';
import { sayQuantity } from '../../sheet/words/say.ts';
import type { Words } from '../../sheet/words/words.ts';
import type { BoardCost, Proof } from '../../takeoff/boards/plan.ts';
import { count, length, money } from '../../takeoff/quantity.ts';
import type { BoardsResult } from '../../takeoff/result.ts';

type Plan = Pick<BoardsResult, 'plan' | 'problem'>;

type Gap = (seconds: number, most: string) => string;

/** What is said of a plan. Where pieces are never spliced and all are needed, nothing is left to save but cuts. */
export interface ProofWords {
  readonly first: string;
  readonly proved: (seconds: number) => string;
  readonly gap: { readonly [of in 'price' | 'length' | 'cuts']: Gap } & {
    readonly [of in 'splices' | 'waste']?: Gap;
  };
}

/** How sure a cut plan of boards or bars is, in a sentence: proved, the best that was found and how far from it, or a first answer. */
export function sayProof(
  says: ProofWords,
  words: Words,
  { plan, problem }: Plan,
  { currency, units }: { readonly currency: string; readonly units: UnitStyle },
): string {
  const { proof } = plan;
  if (proof.is === 'first') return says.first;
  const seconds = Math.max(0.1, Math.ceil(proof.seconds * 10) / 10);
  if (proof.is === 'proved') return says.proved(seconds);
  const better = mostBetter({ plan, problem }, proof);
  const byLength = proof.of === 'price' && problem.pricedBy === 'length';
  const quantity = {
    price: byLength ? length(better) : money(better, currency),
    cuts: count(better, 'cut'),
    splices: count(better, 'splice'),
    waste: length(better),
  }[proof.of];
  const gap = says.gap[byLength ? 'length' : proof.of] ?? says.gap.cuts;
  return gap(seconds, sayQuantity(words, quantity, units));
}

/** What another plan could save at most. All four are whole, so what the bound leaves over is no saving. */
function mostBetter(
  { plan }: Plan,
  { of, bound }: Extract<Proof, { readonly is: 'gap' }>,
): BoardCost[keyof BoardCost] {
  return Math.max(0, Math.floor(plan.cost[of] - bound));
}
