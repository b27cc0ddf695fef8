import { insetPolygons } from '../../src/geometry/offset.ts';
import type { Job } from '../../src/job/job.ts';
import { netPour } from '../../src/takeoff/outline/netPour.ts';
import { pourPolygons } from '../../src/takeoff/pourPolygons.ts';
import { leastCount, meshNeed } from '../../src/takeoff/steel/bound.ts';
import { firstMesh } from '../../src/takeoff/steel/firstMesh.ts';
import type { MeshProblem } from '../../src/takeoff/steel/plan.ts';
import { meshProblem } from '../../src/takeoff/steel/problem.ts';
import { searchMesh } from '../../src/takeoff/steel/searchMesh.ts';
import { rowDirections } from '../../src/takeoff/steel/ways.ts';
import { SIXTEENTH } from '../../src/units/grid.ts';
import { slabJob } from '../random/slabJobs.ts';
import { dragged, typicalJob } from './jobs.ts';

const SLABS = 1000;
/** Seconds that a search gets here; on the page it has longer. */
const SEARCH = 0.2;

/** Sheets of 5 × 10 ft with the laps and the cover that a job starts with. */
function problemOf({ practices, meshStock, ...job }: Job): MeshProblem | undefined {
  const { pour } = netPour({ practices, meshStock, ...job });
  if (!pour) return undefined;
  const rule = practices.steel.mesh;
  const inset = insetPolygons(pourPolygons(pour, SIXTEENTH), rule.cover);
  if (inset.length === 0) return undefined;
  const stock = { truck: [], yard: meshStock.yard.slice(0, 1) };
  return meshProblem(rule, stock, inset, rowDirections(pour, SIXTEENTH), SIXTEENTH);
}

/** Prints sheets against what area and lap alone need, and how long the quick layout and the search take. */
export function measureMesh(): void {
  console.log(`Mesh sheets over the least by area and lap alone, ${SLABS} random slabs:`);
  const over = { quick: [] as number[], search: [] as number[] };
  const firsts: number[] = [];
  for (let seed = 1; seed <= SLABS; seed++) {
    const problem = problemOf(slabJob(seed).job);
    if (!problem) continue;
    const least = leastCount(problem, meshNeed(problem), problem.supply[0]!);
    over.quick.push(firstMesh(problem)!.used.length - least);
    const start = performance.now();
    let first = 0;
    const plan = searchMesh(problem, {
      seconds: SEARCH,
      clock: () => performance.now() / 1000,
      onBetter: () => {
        first ||= performance.now() - start;
      },
    })!;
    if (first > 0) firsts.push(first);
    over.search.push(plan.used.length - least);
  }
  for (const [name, list] of Object.entries(over)) {
    const share = (most: number) =>
      `${((100 * list.filter((one) => one <= most).length) / list.length).toFixed(1)} %`;
    console.log(
      `  ${name.padEnd(8)}least ${share(0)}   within one sheet ${share(1)}   within two ${share(2)}`,
    );
  }
  firsts.sort((a, b) => a - b);
  const middle = firsts[Math.floor(firsts.length / 2)] ?? 0;
  console.log(
    `  the search betters the quick layout of ${firsts.length}, first after ${middle.toFixed(1)} ms (the middle)`,
  );
  const frames = Array.from({ length: 400 }, (_, i) => problemOf(dragged(typicalJob(), i))!);
  for (const frame of frames) firstMesh(frame);
  const times = frames.map((frame) => {
    const start = performance.now();
    firstMesh(frame);
    return performance.now() - start;
  });
  times.sort((a, b) => a - b);
  console.log(`  one frame of a drag, typical job: ${times[200]!.toFixed(3)} ms`);
}
