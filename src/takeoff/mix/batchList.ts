import type { BagMix, Practices } from '../../job/job.ts';
import type { BagCount, MixResult } from '../result.ts';
import { madeBy } from './blend.ts';

/** One mixer load. Volumes are cubic grid units. */
export interface Batch {
  /** From 1. */
  readonly number: number;
  /** Of each mix, in the blend's order. */
  readonly bags: readonly number[];
  readonly made: number;
  /** This batch and all before it. */
  readonly bagsSoFar: number;
  readonly madeSoFar: number;
  /** As the bags say; absent when one of them isn't known. */
  readonly water?: { readonly least: number; readonly most: number };
}

/** A longer list helps nobody at the mixer. Our own limit. */
export const MOST_LISTED = 400;

/**
 * The batches one by one. Their bags add up to what is mixed, and what they make to what that makes, exactly. Empty when
 * there are none, or more than a list is good for.
 */
export function batchList(practices: Practices, { batching, mixed }: MixResult): readonly Batch[] {
  if (!batching || batching.batches > MOST_LISTED) return [];
  const mixes = mixed.map(({ mix }) => mixOf(mix, practices.mix.mixes));
  const parts = mixed.map(({ parts: many }, i) => ({ parts: many, yield: mixes[i]!.yield }));
  const { batches, full, last } = batching;
  const list: Batch[] = [];
  let [bagsBefore, madeBefore] = [full.map(() => 0), 0];
  for (let number = 1; number <= batches; number++) {
    const bags = (number < batches ? full : last).map((one: BagCount) => one.bags);
    const soFar = bags.map((each, i) => each + bagsBefore[i]!);
    const madeSoFar = madeBy(soFar, parts);
    const water = waterOf(mixes, bags);
    list.push({
      number,
      bags,
      made: madeSoFar - madeBefore,
      bagsSoFar: soFar.reduce((sum, each) => sum + each, 0),
      madeSoFar,
      ...(water ? { water } : {}),
    });
    [bagsBefore, madeBefore] = [soFar, madeSoFar];
  }
  return list;
}

function waterOf(mixes: readonly BagMix[], bags: readonly number[]): Batch['water'] {
  let [least, most] = [0, 0];
  for (const [i, { water }] of mixes.entries()) {
    if (!water) return undefined;
    least += bags[i]! * water.least;
    most += bags[i]! * water.most;
  }
  return { least, most };
}

/** The mix of a count. A takeoff is read with the job that it was figured from, so it is there. */
export function mixOf(id: string, mixes: readonly BagMix[]): BagMix {
  const bag = mixes.find((one) => one.id === id);
  if (!bag) throw new Error(`The takeoff counts bags of “${id}”, which the job doesn't list.`);
  return bag;
}
