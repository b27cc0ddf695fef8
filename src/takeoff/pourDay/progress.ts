import type { BagMix } from '../../job/job.ts';
import type { BagsOf, PourEntry, PourLog } from '../../job/pourLog.ts';
import type { MixResult } from '../result.ts';
import { PACE_BATCHES } from './rules.ts';

/** What the log comes to. Volumes are cubic grid units; times are as they stand in the log. */
export interface Progress {
  readonly batches: number;
  /** By mix, in the ticket's order, then whatever else went in. `opened`: whole bags. */
  readonly bags: readonly MixProgress[];
  readonly used: number;
  /** What all the bags at the pad make, with those that went in. */
  readonly has: number;
  readonly start: number | null;
  readonly last: number | null;
  /** Volume a millisecond over the last batches; null until two have gone in. */
  readonly pace: number | null;
}

export interface MixProgress {
  readonly mix: string;
  /** At the pad in the beginning and fetched since. */
  readonly had: number;
  readonly used: number;
  readonly opened: number;
  readonly left: number;
}

/** Bags of one mix in a list. */
export function bagsOfMix(list: readonly BagsOf[], mix: string): number {
  return list.reduce((sum, one) => (one.mix === mix ? sum + one.bags : sum), 0);
}

/** Concrete that bags make; bags of a mix that the job no longer lists make nothing that is known. */
export function volumeOf(list: readonly BagsOf[], mixes: readonly BagMix[]): number {
  return list.reduce(
    (sum, { mix, bags }) => sum + bags * (mixes.find(({ id }) => id === mix)?.yield ?? 0),
    0,
  );
}

/** Bags at the pad when the pour began: as they were counted, else those of the ticket. */
export function onHandOf(log: PourLog, mix: MixResult): readonly BagsOf[] {
  return log.onHand ?? mix.bags.map(({ mix: id, bags }) => ({ mix: id, bags }));
}

export function progressOf(log: PourLog, mix: MixResult, mixes: readonly BagMix[]): Progress {
  const batches = log.entries.filter((entry) => entry.is === 'batch');
  const ins = batches.flatMap(({ bags }) => bags);
  const had = [
    ...onHandOf(log, mix),
    ...log.entries.flatMap((entry) => (entry.is === 'more' ? entry.bags : [])),
  ];
  const ids = [...new Set([...mix.bags, ...had, ...ins].map((one) => one.mix))];
  return {
    batches: batches.length,
    bags: ids.map((id) => {
      const [has, used] = [bagsOfMix(had, id), bagsOfMix(ins, id)];
      // Part bags are opened bags; floats of thirds are no whole bag more.
      const opened = Math.ceil(used - 1e-9);
      return { mix: id, had: has, used, opened, left: Math.max(0, has - opened) };
    }),
    used: volumeOf(ins, mixes),
    has: volumeOf(had, mixes),
    start: batches[0]?.at ?? null,
    last: batches.at(-1)?.at ?? null,
    pace: paceOf(batches, mixes),
  };
}

/** What the last batches made from the one before them on, over the time that they took. */
function paceOf(
  batches: readonly Extract<PourEntry, { readonly is: 'batch' }>[],
  mixes: readonly BagMix[],
): number | null {
  const last = batches.slice(-PACE_BATCHES - 1);
  const [first, ...later] = last;
  const end = later.at(-1);
  if (!first || !end) return null;
  const took = end.at - first.at;
  const made = volumeOf(
    later.flatMap(({ bags }) => bags),
    mixes,
  );
  return took > 0 && made > 0 ? made / took : null;
}

/** What is in by the time of each tap of the front, oldest first. */
export function frontsOf(
  log: PourLog,
  mixes: readonly BagMix[],
): readonly {
  readonly at: number;
  readonly toward: number;
  readonly along: number;
  readonly used: number;
}[] {
  let used = 0;
  return log.entries.flatMap((entry) => {
    if (entry.is === 'batch') used += volumeOf(entry.bags, mixes);
    if (entry.is !== 'front') return [];
    const { at, toward, along } = entry;
    return [{ at, toward, along, used }];
  });
}
