import { candidates } from './candidates.ts';
import type {
  BrokenJointRule,
  JointLine,
  JointPlan,
  JointProblem,
  JointReport,
  JointRule,
  Panel,
} from './layout.ts';
import { endsAt, jointReport, lengthOf, meets, middleOf, passesThrough } from './panels.ts';

/** Layouts looked at before the search gives up. Our own limit. */
const SEARCH = 6_000;
/** An answer at once is taken when so many joints more made it no better; and lines tried for each. Our own limits. */
const FIRST_PATIENCE = 4;
const FIRST_TRIES = 3;

/**
 * A layout found at once: one joint after another, each the likeliest of the lines that mend what has the fewest ways to
 * be mended. It may break rules that the search then finds a way round.
 */
export function firstJoints(problem: JointProblem): JointPlan {
  const lines = candidates(problem);
  let report = jointReport(problem, problem.fixed);
  let best = report;
  let tried = 1;
  for (let since = 0; since < FIRST_PATIENCE && report.broken.length > 0; since++) {
    const ways = waysOn(problem, report, lines, NONE, false);
    const tries = likeliest(problem, report, ways, lines).map((way) =>
      jointReport(problem, [...report.joints, lines[way]!]),
    );
    if (tries.length === 0) break;
    tried += tries.length;
    const whole = (one: JointReport) => one.length + stillNeeded(problem, one);
    report = tries.reduce((least, one) => (whole(one) < whole(least) ? one : least));
    if (!isBetter(report, best)) continue;
    best = report;
    since = 0;
  }
  return { report: best, proof: 'first', tried };
}

const NONE: ReadonlySet<number> = new Set();

/** Of the lines that would mend a panel or a corner, those that look best without trying them: short, and parting evenly. */
function likeliest(
  { rules }: JointProblem,
  { panels }: JointReport,
  ways: readonly number[],
  lines: readonly JointLine[],
): readonly number[] {
  const rank = (way: number): number => {
    const { from, to } = lines[way]!;
    const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const parted = panels.filter((panel) => passesThrough(panel, lines[way]!));
    const uneven = parted.map((panel) => {
      const parts = Math.max(
        2,
        Math.ceil(panel.length / Math.min(rules.most, rules.ratio * panel.width)),
      );
      const middle = middleOf(panel.polygon.outer);
      const part = panel.length / parts;
      const off = Math.hypot(at.x - middle.x, at.y - middle.y) + (parts % 2 === 0 ? 0 : part / 2);
      return Math.abs(off / part - Math.round(off / part)) * panel.width;
    });
    return lengthOf(lines[way]!) + uneven.reduce((sum, one) => sum + one, 0);
  };
  return ways
    .map((way) => ({ way, rank: rank(way) }))
    .toSorted((a, b) => a.rank - b.rank)
    .slice(0, FIRST_TRIES)
    .map(({ way }) => way);
}

/**
 * The shortest joints that obey every rule, of all that can be made of the candidate lines; when none does, those that
 * break the fewest rules, and of these the shortest. Branch and bound: every layout that obeys has a joint that mends
 * the rule looked at, so each of those is tried in turn, and none is followed that is longer than the best.
 */
export function searchJoints(
  problem: JointProblem,
  { most = SEARCH, enough = never }: JointLimits = {},
): JointPlan {
  return lay(problem, most, enough);
}

/** When a search ends before it has shown that its layout is the least. */
export interface JointLimits {
  /** Layouts looked at. */
  readonly most?: number;
  /** Asked again and again; the search ends when it says so. */
  readonly enough?: () => boolean;
}

function never(): boolean {
  return false;
}

function lay(problem: JointProblem, most: number, enough: () => boolean): JointPlan {
  const lines = candidates(problem);
  let tried = 0;
  let cut = false;
  let best: JointReport | undefined;
  const obeys = () => best !== undefined && best.broken.length === 0;

  const look = (chosen: readonly number[]): JointReport => {
    tried++;
    const report = jointReport(problem, [...problem.fixed, ...chosen.map((i) => lines[i]!)]);
    if (!best || isBetter(report, best)) best = report;
    return report;
  };

  const follow = (chosen: readonly number[], report: JointReport, out: ReadonlySet<number>) => {
    const ways = waysOn(problem, report, lines, out, obeys());
    const branches: { way: number; report: JointReport; whole: number }[] = [];
    for (const way of ways) {
      if (obeys() && report.length + lengthOf(lines[way]!) >= best!.length) continue;
      if (tried >= most || enough()) {
        cut = true;
        return;
      }
      const next = look([...chosen, way]);
      branches.push({ way, report: next, whole: next.length + stillNeeded(problem, next) });
    }
    branches.sort((a, b) => a.whole - b.whole);
    // Layouts with one of them are done with once it was followed: the others are followed without it.
    const without = new Set(out);
    for (const { way, report: next } of branches) {
      if (next.broken.length > 0) follow([...chosen, way], next, without);
      if (cut) return;
      without.add(way);
    }
  };
  const start = look([]);
  if (start.broken.length > 0) follow([], start, new Set());
  const report = best ?? start;
  return { report, proof: !cut && report.broken.length === 0 ? 'proved' : 'gap', tried };
}

/**
 * The lines to go on with: those that could mend the broken rule that has the fewest. None when nothing that comes of it
 * can be the best.
 */
function waysOn(
  problem: JointProblem,
  report: JointReport,
  lines: readonly JointLine[],
  out: ReadonlySet<number>,
  mustObey: boolean,
): readonly number[] {
  // More joints mend neither a panel too narrow nor a joint at too sharp an angle.
  if (mustObey && report.broken.some(({ rule }) => UNMENDABLE.has(rule))) return [];
  let least: readonly number[] = [];
  const placesFirst = report.broken.toSorted(
    (a, b) => Number(a.panel !== undefined) - Number(b.panel !== undefined),
  );
  for (const broken of placesFirst) {
    if (UNMENDABLE.has(broken.rule)) continue;
    // Places are quick to look up; panels are looked at only where no place is left.
    if (least.length > 0 && broken.panel !== undefined) continue;
    const ways = mendersOf(problem, report, broken, lines, out);
    if (ways.length === 0 && mustObey) return [];
    if (ways.length > 0 && (least.length === 0 || ways.length < least.length)) least = ways;
  }
  return least;
}

/**
 * About how much joint a layout still needs, to follow the likeliest first: panels taken as rectangles and cut into equal
 * parts. What can't be mended weighs more than any joint.
 */
function stillNeeded({ rules, polygon }: JointProblem, { panels, broken }: JointReport): number {
  const { most, ratio } = rules;
  const cuts = panels.map(({ length, width }) => {
    const across = Math.ceil(width / most) - 1;
    const parts = Math.ceil(length / Math.min(most, (ratio * width) / (across + 1))) - 1;
    return across * length + parts * width;
  });
  const [first] = polygon.outer;
  const size = polygon.outer.reduce(
    (sum, { x, y }) => Math.max(sum, Math.abs(x - first!.x) + Math.abs(y - first!.y)),
    0,
  );
  const spoilt = broken.filter(({ rule }) => UNMENDABLE.has(rule)).length;
  return cuts.reduce((sum, cut) => sum + Math.max(0, cut), 0) + 100 * size * spoilt;
}

const UNMENDABLE: ReadonlySet<string> = new Set(['sliver', 'sharp', 'ends-inside']);

/** What is less bad first, then less joint. */
function order(one: JointReport, other: JointReport): number {
  return badness(one) - badness(other) || one.length - other.length;
}

/**
 * How bad it is to break a rule: an inside corner nearly always cracks, a panel somewhat long for its width seldom does.
 * Our own weights, common practice.
 */
const WEIGHT: Readonly<Record<JointRule, number>> = {
  'inside-corner': 4,
  'too-long': 3,
  'block-out': 2,
  'old-joint': 2,
  'ends-inside': 2,
  'ends-on-joint': 1,
  sharp: 2,
  sliver: 2,
  ratio: 1,
};

function badness({ broken }: JointReport): number {
  return broken.reduce((sum, { rule }) => sum + WEIGHT[rule], 0);
}

function isBetter(one: JointReport, other: JointReport): boolean {
  return order(one, other) < 0;
}

/** The lines, by number, that could mend a broken rule, the shortest first. */
function mendersOf(
  { blockOuts, closeness }: JointProblem,
  { panels, joints }: JointReport,
  { rule, at, panel }: BrokenJointRule,
  lines: readonly JointLine[],
  out: ReadonlySet<number>,
): readonly number[] {
  const helps = helper();
  return lines
    .map((line, i) => ({ line, i }))
    .filter(({ line, i }) => !out.has(i) && helps(line) && !isLaid(line))
    .toSorted((a, b) => lengthOf(a.line) - lengthOf(b.line))
    .map(({ i }) => i);

  function isLaid(line: JointLine): boolean {
    return joints.some(
      (joint) => endsAt(joint, line.from, closeness) && endsAt(joint, line.to, closeness),
    );
  }
  function helper(): (line: JointLine) => boolean {
    if (rule === 'inside-corner' || rule === 'old-joint') {
      return (line) => endsAt(line, at, closeness);
    }
    if (rule === 'block-out') {
      const spot = blockOuts.find(({ middle }) => middle === at)!;
      return (line) => meets(spot, line, closeness);
    }
    const whole: Panel = panels[panel!]!;
    return (line) => passesThrough(whole, line);
  }
}
