import { expect, test } from 'vitest';
import { leastCount, meshNeed } from '../../src/takeoff/steel/bound.ts';
import { firstMesh } from '../../src/takeoff/steel/firstMesh.ts';
import { compareMeshCosts } from '../../src/takeoff/steel/plan.ts';
import { searchMesh } from '../../src/takeoff/steel/searchMesh.ts';
import { meshFaults, randomMesh } from './meshCheck.ts';

/** A clock that is a millisecond later each time it is read. */
function countingClock(): () => number {
  let read = 0;
  return () => read++ / 1000;
}

test('on 1,500 random slabs the quick layout covers every place, laps by the rule, and is cut from what there is', {
  timeout: 120_000,
}, () => {
  const faults: string[] = [];
  let laid = 0;
  for (let seed = 1; seed <= 1500; seed++) {
    const problem = randomMesh(seed);
    const plan = problem && firstMesh(problem);
    if (!problem || !plan) continue;
    laid++;
    faults.push(...meshFaults(problem, plan).map((fault) => `seed ${seed}: ${fault}`));
  }
  expect(faults).toEqual([]);
  expect(laid).toBeGreaterThan(1450);
});

test('what the search finds does so too, is never worse than the quick one, nor less than the bound', {
  timeout: 120_000,
}, () => {
  const faults: string[] = [];
  for (let seed = 1; seed <= 60; seed++) {
    const problem = randomMesh(seed);
    if (!problem) continue;
    const first = firstMesh(problem);
    const found = searchMesh(problem, { seconds: 0.3, clock: countingClock() });
    expect(found === undefined).toBe(first === undefined);
    if (!first || !found) continue;
    faults.push(...meshFaults(problem, found).map((fault) => `seed ${seed}: ${fault}`));
    if (compareMeshCosts(found.cost, first.cost) > 0) faults.push(`seed ${seed}: worse than first`);
    const bought = found.used.filter(({ from }) => from === 'yard');
    const kind = problem.supply.find(({ id, from }) => from === 'yard' && id === bought[0]?.id);
    if (kind && bought.length < leastCount(problem, meshNeed(problem), kind)) {
      faults.push(`seed ${seed}: below the bound`);
    }
  }
  expect(faults).toEqual([]);
});
