import polygonClipping from 'polygon-clipping';
import type { Job } from '../../src/job/job.ts';
import { candidates } from '../../src/takeoff/joints/candidates.ts';
import { firstJoints, searchJoints } from '../../src/takeoff/joints/layJoints.ts';
import type { JointProblem, JointReport } from '../../src/takeoff/joints/layout.ts';
import { jointReport } from '../../src/takeoff/joints/panels.ts';
import { jointProblems } from '../../src/takeoff/joints/problem.ts';
import { netPour } from '../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../src/takeoff/pourPolygons.ts';
import { FOOT, SIXTEENTH } from '../../src/units/grid.ts';
import { slabJob } from '../random/slabJobs.ts';
import { smallJoints } from '../random/smallJoints.ts';
import { dragged, largeJob, typicalJob } from './jobs.ts';
import { middleTime, rawArguments } from './takeoff.bench.ts';

const RULES = { most: 8.75 * FOOT, ratio: 1.5, least: 2 * FOOT, angle: 60 };
/** Seconds that a search gets here; on the page it has longer. */
const SEARCH = 2;
const SLABS = 100;

function problemsOf(job: Job): readonly JointProblem[] {
  const { pour } = netPour(job);
  if (!pour) return [];
  const wishes = { fixed: [], oldJoints: [], rules: RULES, closeness: SIXTEENTH };
  return jointProblems(pour, pourPolygons(pour, SIXTEENTH), wishes);
}

/** Prints report and first layout on a frame of a drag against the raw clip, what is proved, and joint over the least. */
export function measureJoints(): void {
  console.log('Joints:');
  dragFrame('typical', typicalJob(), 60);
  dragFrame('large', largeJob(), 6);
  proved();
  overLeast();
}

function dragFrame(name: string, job: Job, frames: number): void {
  const jobs = Array.from({ length: frames }, (_, frame) => dragged(job, frame));
  const raws = jobs.map(rawArguments);
  const problems = jobs.map((one) => problemsOf(one)[0]!);
  const { joints } = searchJoints(problems[0]!, { most: 500 }).report;
  const measures = {
    raw: (frame: number) => {
      const { subject, clips } = raws[frame]!;
      return polygonClipping.difference(subject, ...clips);
    },
    report: (frame: number) => jointReport(problems[frame]!, joints),
    first: (frame: number) => firstJoints(problems[frame]!),
  };
  for (const measure of Object.values(measures)) middleTime(frames, measure);
  const raw = middleTime(frames, measures.raw);
  const report = middleTime(frames, measures.report);
  const first = middleTime(frames, measures.first);
  const ratio = (time: number) => `${time.toFixed(3)} ms = ${(time / raw).toFixed(2)} x`;
  console.log(
    `  ${name.padEnd(8)}raw clip ${raw.toFixed(3)} ms   report of ${joints.length} joints ${ratio(report)}   first layout ${ratio(first)}`,
  );
}

function proved(): void {
  const problems = Array.from({ length: SLABS }, (_, i) => problemsOf(slabJob(i + 1).job)).flat();
  const times: number[] = [];
  let count = 0;
  let obey = 0;
  for (const problem of [...problemsOf(typicalJob()), ...problems]) {
    const start = performance.now();
    const enough = () => performance.now() - start > SEARCH * 1000;
    const { proof, report } = searchJoints(problem, { most: Number.POSITIVE_INFINITY, enough });
    if (proof === 'proved') times.push(performance.now() - start);
    if (proof === 'proved') count++;
    if (report.broken.length === 0) obey++;
  }
  times.sort((a, b) => a - b);
  const middle = times[Math.floor(times.length / 2)] ?? 0;
  console.log(
    `  of ${problems.length + 1} slabs ${count} proved within ${SEARCH} s, half of them within ${middle.toFixed(0)} ms; ${obey} obey every rule`,
  );
}

/** Joint length of the first layout and of the search against the best of every choice of the lines, where some obey. */
function overLeast(): void {
  const sums = { least: 0, first: 0, search: 0 };
  let slabs = 0;
  let firstObeys = 0;
  for (let seed = 1; seed <= 300; seed++) {
    const problem = smallJoints(seed);
    const lines = candidates(problem);
    if (lines.length > 9) continue;
    let least = Number.POSITIVE_INFINITY;
    for (let set = 0; set < 2 ** lines.length; set++) {
      const choice = lines.filter((_, i) => (set >> i) & 1);
      least = Math.min(least, lengthIfObeys(jointReport(problem, choice)));
    }
    if (least === Number.POSITIVE_INFINITY) continue;
    slabs++;
    const first = lengthIfObeys(firstJoints(problem).report);
    if (first === Number.POSITIVE_INFINITY) continue;
    firstObeys++;
    sums.least += least;
    sums.first += first;
    sums.search += lengthIfObeys(searchJoints(problem).report);
  }
  const over = (sum: number) => `${((100 * sum) / sums.least - 100).toFixed(2)} %`;
  console.log(
    `  ${slabs} small slabs against every choice of lines: the first obeys on ${firstObeys}; joint over the least there: first ${over(sums.first)}, search ${over(sums.search)}`,
  );
}

function lengthIfObeys({ broken, length }: JointReport): number {
  return broken.length === 0 ? length : Number.POSITIVE_INFINITY;
}
