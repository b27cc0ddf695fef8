import type { BrokenJointRule, JointReport, JointRule, JointRules, Panel } from './layout.ts';

/**
 * How bad it is to break a rule: an inside corner without a joint nearly always cracks, a sliver breaks off, a panel
 * somewhat long for its width seldom cracks. Our own weights, common practice; whole, so that a hair's breadth of one
 * rule is no reason for another joint.
 */
const WEIGHT: Readonly<Record<JointRule, number>> = {
  'inside-corner': 10,
  'ends-inside': 8,
  sliver: 8,
  'too-long': 5,
  sharp: 4,
  'block-out': 3,
  'old-joint': 3,
  'ends-on-joint': 2,
  ratio: 1,
};

/** @param panel The one that it is about. */
export function weightOf(
  { rule, found = 0 }: BrokenJointRule,
  rules: JointRules,
  panel: Panel | undefined,
): number {
  if (rule === 'too-long' && panel) return longWeight(panel, rules.most);
  if (rule === 'ratio') return ratioWeight(found, rules.ratio);
  if (rule === 'sliver') return found < rules.least / 2 ? 1.5 * WEIGHT.sliver : WEIGHT.sliver;
  if (rule === 'sharp') return sharpWeight(found);
  return WEIGHT[rule];
}

/** By how many panels it should be more than one, so that half of a mending is better than none. */
function longWeight({ length, width }: Panel, most: number): number {
  if (length <= 1.1 * most) return 3;
  const panels = Math.round((length * width) / (most * most)) - 1;
  return WEIGHT['too-long'] * Math.max(panels, Math.floor(length / most));
}

function ratioWeight(found: number, most: number): number {
  const over = found / most;
  if (over <= 1.2) return WEIGHT.ratio;
  if (over <= 1.5) return 2 * WEIGHT.ratio;
  return over <= 2 ? 3 * WEIGHT.ratio : 5 * WEIGHT.ratio;
}

export function sharpWeight(angle: number): number {
  if (angle >= 45) return WEIGHT.sharp;
  return angle >= 30 ? 1.5 * WEIGHT.sharp : 2 * WEIGHT.sharp;
}

export function badnessOf(
  broken: readonly BrokenJointRule[],
  panels: readonly Panel[],
  rules: JointRules,
): number {
  return broken.reduce((sum, one) => sum + weightOf(one, rules, panels[one.panel ?? -1]), 0);
}

/** Less bad first, then less joint. */
export function isBetter(one: JointReport, other: JointReport, rules: JointRules): boolean {
  const less =
    badnessOf(one.broken, one.panels, rules) - badnessOf(other.broken, other.panels, rules);
  return less < 0 || (less === 0 && one.length < other.length);
}
