import type { Practices } from '../../job/job.ts';
import type { Figure, Quantity, Working } from '../figure.ts';
import { count, length, money, number, term } from '../quantity.ts';
import type { BoardsResult } from '../result.ts';
import type { BoardTermKey } from './keys.ts';
import type { BoardCost } from './plan.ts';

const PROOF_TERMS = {
  first: 'proof-first',
  proved: 'proof-proved',
  gap: 'proof-gap',
} as const satisfies Record<BoardsResult['plan']['proof']['is'], BoardTermKey>;

/** How sure a cut plan is, of boards or of bars: what is not proved least, and by how much it could be less. */
export function proofFigure(
  key: 'boards-proof' | 'bars-proof',
  { currency }: Practices,
  { problem, plan }: Pick<BoardsResult, 'problem' | 'plan'>,
): Figure {
  const { proof, cost } = plan;
  const weighed = (of: keyof BoardCost, value: number): Quantity => {
    switch (of) {
      case 'price':
        return problem.pricedBy === 'money' ? money(value, currency) : length(value);
      case 'cuts':
        return count(value, 'cut');
      case 'splices':
        return count(value, 'splice');
      case 'waste':
        return length(value);
    }
  };
  const searched: Working['inputs'] =
    proof.is === 'first'
      ? []
      : [{ key: 'proof-seconds', value: number(proof.seconds), from: 'figure' }];
  const gap: Working['inputs'] =
    proof.is === 'gap'
      ? [
          { key: 'proof-weighs', value: term(`weigh-${proof.of}`), from: 'figure' },
          { key: 'proof-have', value: weighed(proof.of, cost[proof.of]), from: 'figure' },
          { key: 'proof-bound', value: weighed(proof.of, proof.bound), from: 'figure' },
        ]
      : [];
  return {
    key,
    value: term(PROOF_TERMS[proof.is]),
    working: () => ({
      of: key,
      formula: 'C → k → s → w',
      inputs: [...gap, ...searched],
      rounding: 'none',
      source: ['geometry'],
    }),
  };
}
