import { firstJoints, searchJoints } from './layJoints.ts';
import type { JointPlan, JointProblem } from './layout.ts';

/** How long to look, and who hears of what is better so far. */
export interface JointSearch {
  readonly seconds: number;
  /** Seconds that have passed since some moment. */
  readonly clock: () => number;
  readonly onBetter: (plans: readonly JointPlan[]) => void;
}

/** Layouts looked at for one piece of the pour before the search gives up. Our own limit. */
const MOST = 2_000_000;

/**
 * The shortest joints that obey, for every piece of the pour; each has its share of what time there is left. A piece whose
 * search brought nothing better keeps its first answer, not proved.
 */
export function searchAll(
  problems: readonly JointProblem[],
  { seconds, clock, onBetter }: JointSearch,
): readonly JointPlan[] {
  const start = clock();
  const plans = problems.map(firstJoints);
  problems.forEach((problem, i) => {
    const left = seconds - (clock() - start);
    const until = clock() + left / (problems.length - i);
    plans[i] = searchJoints(problem, { most: MOST, enough: () => clock() >= until });
    if (i < problems.length - 1) onBetter([...plans]);
  });
  return plans;
}
