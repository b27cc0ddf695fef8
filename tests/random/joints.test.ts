import { expect, test } from 'vitest';
import type { Point, Ring } from '../../src/geometry/point.ts';
import { candidates } from '../../src/takeoff/joints/candidates.ts';
import { firstJoints, searchJoints } from '../../src/takeoff/joints/layJoints.ts';
import type { JointLine, JointProblem, JointReport } from '../../src/takeoff/joints/layout.ts';
import { jointReport } from '../../src/takeoff/joints/panels.ts';
import { jointProblems } from '../../src/takeoff/joints/problem.ts';
import { badnessOf } from '../../src/takeoff/joints/weights.ts';
import { netPour } from '../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../src/takeoff/pourPolygons.ts';
import { FOOT, INCH, SIXTEENTH } from '../../src/units/grid.ts';
import { type Chance, chance } from './chance.ts';
import { reportFaults } from './jointCheck.ts';
import { slabJob } from './slabJobs.ts';
import { smallJoints } from './smallJoints.ts';

/** The joint problems of a random slab, with rules, older joints and block-outs as chance makes them. */
function randomProblems(seed: number): readonly JointProblem[] {
  const { pour } = netPour(slabJob(seed).job);
  if (!pour) return [];
  const draw = chance(seed + 400_000);
  const polygons = pourPolygons(pour, SIXTEENTH);
  const oldJoints = draw.likely(0.3) ? [onRing(polygons[0]!.outer, draw)] : [];
  return jointProblems(pour, polygons, {
    fixed: [],
    oldJoints,
    rules: {
      most: draw.oneOf([5, 7, 8.75, 10]) * FOOT,
      ratio: draw.oneOf([1.5, 1.5, 1.25, 2]),
      least: draw.oneOf([24, 24, 18]) * INCH,
      angle: draw.oneOf([60, 60, 45]),
    },
    closeness: SIXTEENTH,
  });
}

function onRing(ring: Ring, draw: Chance): Point {
  const at = draw.whole(0, ring.length - 1);
  const [a, b] = [ring[at]!, ring[(at + 1) % ring.length]!];
  const share = draw.between(0.1, 0.9);
  return { x: Math.round(a.x + share * (b.x - a.x)), y: Math.round(a.y + share * (b.y - a.y)) };
}

test('what a report says of the first layout of 70 random slabs is so, and nothing is left unsaid', {
  timeout: 60_000,
}, () => {
  const faults: string[] = [];
  let laid = 0;
  for (let seed = 1; seed <= 70; seed++) {
    for (const problem of randomProblems(seed)) {
      const { report } = firstJoints(problem);
      laid += report.joints.length;
      faults.push(...reportFaults(problem, report).map((fault) => `seed ${seed}: ${fault}`));
    }
  }
  expect(faults).toEqual([]);
  expect(laid).toBeGreaterThan(150);
});

test('and so of joints drawn anyhow: across each other, at any angle, ending on others and inside', {
  timeout: 60_000,
}, () => {
  const faults: string[] = [];
  let drawn = 0;
  for (let seed = 1; seed <= 300; seed++) {
    const [problem] = randomProblems(seed);
    if (!problem) continue;
    const draw = chance(seed);
    const lines = candidates(problem);
    const joints: JointLine[] = [];
    for (let i = draw.whole(1, 6); i > 0 && lines.length > 0; i--) {
      const line = draw.oneOf(lines);
      const share = draw.oneOf([1, 1, 1, draw.between(0.3, 0.9)]);
      const to = {
        x: Math.round(line.from.x + share * (line.to.x - line.from.x)),
        y: Math.round(line.from.y + share * (line.to.y - line.from.y)),
      };
      if (!joints.some(({ from }) => from === line.from)) joints.push({ ...line, to, by: 'hand' });
    }
    drawn += joints.length;
    const report = jointReport(problem, joints);
    faults.push(...reportFaults(problem, report).map((fault) => `seed ${seed}: ${fault}`));
  }
  expect(faults).toEqual([]);
  expect(drawn).toBeGreaterThan(500);
});

test('the search is never worse than the first, and what it tells is so', {
  timeout: 60_000,
}, () => {
  const faults: string[] = [];
  for (let seed = 401; seed <= 415; seed++) {
    for (const problem of randomProblems(seed)) {
      const first = firstJoints(problem).report;
      const { report } = searchJoints(problem, { most: 600 });
      faults.push(...reportFaults(problem, report).map((fault) => `seed ${seed}: ${fault}`));
      const badness = (one: JointReport) => badnessOf(one.broken, one.panels, problem.rules);
      const bad = badness(report) - badness(first);
      if (bad > 0 || (bad === 0 && report.length > first.length))
        faults.push(`seed ${seed}: worse`);
    }
  }
  expect(faults).toEqual([]);
});

test('what is proved on small slabs is the least of every choice of lines, whether any obeys or none', {
  timeout: 60_000,
}, () => {
  const faults: string[] = [];
  const seen = { obey: 0, none: 0 };
  for (let seed = 1; seed <= 110; seed++) {
    const problem = smallJoints(seed);
    const lines = candidates(problem);
    if (lines.length > 10) continue;
    const least = { bad: Number.POSITIVE_INFINITY, length: 0 };
    for (let set = 0; set < 2 ** lines.length; set++) {
      const { broken, panels, length } = jointReport(
        problem,
        lines.filter((_, i) => (set >> i) & 1),
      );
      const bad = badnessOf(broken, panels, problem.rules);
      if (bad < least.bad || (bad === least.bad && length < least.length)) {
        Object.assign(least, { bad, length });
      }
    }
    const { report, proof } = searchJoints(problem);
    const bad = badnessOf(report.broken, report.panels, problem.rules);
    // Where none obeys, a joint stopped at another may break less than any from edge to edge.
    const fits = least.bad === 0 ? bad === 0 && report.length === least.length : bad <= least.bad;
    if (!fits || proof !== 'proved') {
      faults.push(
        `seed ${seed}: ${bad} ${report.length}, not ${least.bad} ${least.length}: ${proof}`,
      );
    }
    seen[least.bad === 0 ? 'obey' : 'none']++;
  }
  expect(faults).toEqual([]);
  expect(seen.obey).toBeGreaterThan(10);
  expect(seen.none).toBeGreaterThan(10);
});
