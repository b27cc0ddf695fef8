import { cutBack } from './cutBack.ts';
import { type Ground, groundOf } from './ground.ts';
import { type Breadth, Hunt } from './hunt.ts';
import type { JointPlan, JointProblem, JointReport } from './layout.ts';
import { jointReport } from './panels.ts';
import { isBetter } from './weights.ts';

/** When a search ends before it has shown that its layout is the least. */
export interface JointLimits {
  /** Layouts looked at. */
  readonly most?: number;
  /** Asked again and again; the search ends when it says so. */
  readonly enough?: () => boolean;
}

/** Layouts looked at before the search gives up: some seconds. Our own limit. */
const SEARCH = 100_000;
/** How many layouts are gone on with from one joint to the next, and looked at in all. Our own limits. */
const QUICK = { abreast: 2, each: 4, most: 80, stopped: 6 };
const WIDE = { abreast: 32, each: 100, most: 8_000, stopped: 600 };

/**
 * A layout found at once: one joint after another, each from the likeliest so far. It may break rules that the search then
 * finds a way round.
 */
export function firstJoints(problem: JointProblem): JointPlan {
  const ground = groundOf(problem);
  const hunt = new Hunt(ground, QUICK.most, () => false);
  hunt.abreast(quickFor(ground));
  const report = reportOf(problem, hunt, QUICK.stopped);
  return { report, proof: hunt.isLeast ? 'proved' : 'first', tried: hunt.found.tried };
}

/**
 * The shortest joints that obey every rule, of all that can be made of the candidate lines; when none does, those that
 * break the least, and of these the shortest. Branch and bound: every layout has a joint that mends what is looked at, or
 * leaves it broken, so each of those is tried in turn, and none is followed that can't come to less than the best.
 */
export function searchJoints(
  problem: JointProblem,
  { most = SEARCH, enough = () => false }: JointLimits = {},
): JointPlan {
  const ground = groundOf(problem);
  const hunt = new Hunt(ground, most, enough);
  hunt.abreast(quickFor(ground));
  const first = reportOf(problem, hunt, QUICK.stopped);
  hunt.abreast(WIDE);
  const proof = hunt.through() ? 'proved' : 'gap';
  // Where joints are stopped at others, the better layout may come of what was not the best.
  const last = reportOf(problem, hunt, WIDE.stopped);
  const report = isBetter(first, last, problem.rules) ? first : last;
  return { report, proof, tried: hunt.found.tried };
}

/** Corners and ways that are looked at for an answer at once, all layouts together. Our own limit. */
const AT_ONCE = 40_000;

/** The larger the slab, the fewer layouts are looked at, and the more of its joints laid without a second choice. */
function quickFor({ problem, ways, needs }: Ground): Breadth {
  const { outer, holes } = problem.polygon;
  const size = holes.reduce((sum, hole) => sum + hole.length, outer.length) + 2 * ways.length;
  const most = Math.max(10, Math.min(QUICK.most, Math.floor(AT_ONCE / size)));
  const many = needs.length > QUICK.most / 8;
  return { abreast: many ? 1 : QUICK.abreast, each: many ? 1 : QUICK.each, most };
}

function reportOf(problem: JointProblem, hunt: Hunt, stopped: number): JointReport {
  const joints = hunt.found.ways.map(({ joint }) => joint);
  const report = jointReport(problem, [...problem.fixed, ...joints]);
  return report.broken.length === 0 ? report : cutBack(problem, report, stopped);
}
