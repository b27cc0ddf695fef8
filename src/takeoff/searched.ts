import type { BoardPlan } from './boards/plan.ts';
import type { JointPlan } from './joints/layout.ts';
import type { MeshPlan } from './steel/plan.ts';

/**
 * What the slow searches have found so far, each with the key of the problem that it answers: an answer to another
 * problem than the job's is left aside.
 */
export interface Searched {
  readonly boards?: { readonly key: string; readonly plan: BoardPlan };
  /** Bars are cut from their stock lengths as boards are. */
  readonly bars?: { readonly key: string; readonly plan: BoardPlan };
  /** A plan for each piece of the pour. */
  readonly joints?: { readonly key: string; readonly plan: readonly JointPlan[] };
  readonly mesh?: { readonly key: string; readonly plan: MeshPlan };
}
