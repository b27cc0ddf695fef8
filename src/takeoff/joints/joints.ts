import type { Polygon } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Job, Practices } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { type Figured, tradeNote } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { length, share } from '../quantity.ts';
import type { JointLayout, JointsResult } from '../result.ts';
import type { Searched } from '../searched.ts';
import { drawnJoints } from './drawnJoints.ts';
import { isolation } from './isolation.ts';
import { firstJoints } from './layJoints.ts';
import { type JointPlan, type JointProblem, jointKey } from './layout.ts';
import { layoutNotes } from './layoutNotes.ts';
import { jointReport } from './panels.ts';
import { jointProblems } from './problem.ts';
import { panelMost } from './rules.ts';
import { sealing } from './sealing.ts';
import { wholeReport } from './wholeReport.ts';

/** More panels than this are a spacing typed wrong: none is laid out. Our own limit. */
const MOST_PANELS = 400;

/**
 * Joints: control and construction joints with the panels that they part the pour into, isolation strip, and what seals
 * them. The layout is the one that the search found for this very problem, or one made at once round the joints drawn by
 * hand; or those that were drawn, and no others.
 * @param polygons The pour as polygons, arcs flattened.
 */
export function joints(
  job: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
  searched: Searched,
): Figured<JointsResult> {
  const { practices } = job;
  const strip = isolation(practices, pour);
  const laid = layout(job, pour, polygons, closeness, searched);
  const sealed = sealing(practices, laid.figured, strip.figured.total);
  const notes = [...laid.notes, ...strip.notes, ...sealed.notes];
  return {
    figured: {
      ...strip.figured,
      ...(laid.figured ? { layout: laid.figured } : {}),
      ...(sealed.figured ? { sealed: sealed.figured } : {}),
    },
    notes,
  };
}

function layout(
  job: Job,
  pour: NetPour,
  polygons: readonly Polygon[],
  closeness: Grid,
  searched: Searched,
): Figured<JointLayout> {
  const { practices } = job;
  const wrong = wrongRules(practices);
  if (wrong) return { notes: [wrong] };
  const { joints: rule, thickness } = practices;
  const most = panelMost(thickness, rule.factor, rule.cap);
  if (panelsByArea(pour, most) > MOST_PANELS) {
    const facts = { most: length(most) };
    return { notes: [tradeNote('joints', 'stop', 'joints-too-many', { facts })] };
  }
  const drawn = drawnJoints(job, polygons, closeness);
  const problems = jointProblems(pour, polygons, {
    ...drawn,
    rules: { most, ratio: rule.ratio, least: rule.least, angle: rule.angle },
    closeness,
  });
  const key = problems.map(jointKey).join('\n');
  const plans = plansFor(problems, key, practices, searched);
  const figured: JointLayout = {
    problems,
    key,
    ...wholeReport(plans.map(({ report }) => report)),
    by: rule.layout,
    proof: worstOf(plans),
    most,
    depth: Math.max(toGrid(thickness * rule.depthShare), rule.leastDepth),
  };
  return { figured, notes: layoutNotes(practices, figured, drawn) };
}

function plansFor(
  problems: readonly JointProblem[],
  key: string,
  { joints: rule }: Practices,
  { joints: found }: Searched,
): readonly JointPlan[] {
  if (rule.layout === 'by-hand') {
    return problems.map((problem) => ({
      report: jointReport(problem, problem.fixed),
      proof: 'first',
      tried: 1,
    }));
  }
  return found?.key === key ? found.plan : firstPlans(problems, key);
}

/** The last first answers by their keys: most changes to a job leave the question as it was. */
const firsts = new Map<string, readonly JointPlan[]>();
const KEPT = 20;

/** A slab with more than so many places that joints must come to waits for the search. Our own limit. */
const MOST_PLACES = 60;

/** What is drawn, until the search has looked, where even a first answer takes too long for a live figure. */
function firstPlan(problem: JointProblem): JointPlan {
  const { insideCorners, blockOuts, oldJoints, fixed } = problem;
  if (insideCorners.length + blockOuts.length + oldJoints.length <= MOST_PLACES) {
    return firstJoints(problem);
  }
  return { report: jointReport(problem, fixed), proof: 'first', tried: 1 };
}

function firstPlans(problems: readonly JointProblem[], key: string): readonly JointPlan[] {
  const known = firsts.get(key);
  if (known) return known;
  const plans = problems.map(firstPlan);
  const [oldest] = firsts.keys();
  if (firsts.size >= KEPT && oldest !== undefined) firsts.delete(oldest);
  firsts.set(key, plans);
  return plans;
}

/** A whole layout is as sure as the part of it that is least sure. */
function worstOf(plans: readonly JointPlan[]): JointLayout['proof'] {
  const proofs = plans.map(({ proof }) => proof);
  return proofs.includes('first') ? 'first' : proofs.includes('gap') ? 'gap' : 'proved';
}

/** Panels as large as they may be, by area alone. */
function panelsByArea({ area }: NetPour, most: Grid): number {
  return area / (most * most);
}

function wrongRules({ joints: rule, thickness }: Practices): Note | undefined {
  const { factor, cap, ratio, least, angle, depthShare, leastDepth } = rule;
  const right = factor > 0 && cap > 0 && ratio >= 1 && least >= 0 && angle >= 0 && angle <= 90;
  const most = panelMost(thickness, factor, cap);
  if (!right || !(thickness > 0) || !(least < most)) {
    const facts = { least: length(least), most: length(most) };
    return tradeNote('joints', 'stop', 'joints-rules-wrong', { facts });
  }
  const depth = Math.max(toGrid(thickness * depthShare), leastDepth);
  if (depth <= 0 || depth >= thickness) {
    const facts = { depth: length(depth), thickness: length(thickness), share: share(depthShare) };
    return tradeNote('joints', 'stop', 'joint-too-deep', { facts });
  }
  return undefined;
}
