import type { PlacingPractices } from '../../job/placing.ts';

/** Hand-work on one batch, minutes of one pair of hands. */
export interface BatchWork {
  readonly mixing: number;
  readonly hauling: number;
  readonly trips: number;
  readonly placing: number;
  readonly striking: number;
  readonly all: number;
}

/**
 * What a batch takes of everybody together: standing by the mixer, wheeling, shovelling, striking off.
 * @param volume Of the batch, cubic grid units.
 * @param area That it covers, square grid units.
 * @source barrow-book-1908
 */
export function batchWork(rules: PlacingPractices, volume: number, area: number): BatchWork {
  const { barrow, cycle, placeRate, strikeRate } = rules;
  const trips = Math.ceil(volume / barrow.load - 1e-9);
  const hauling = trips * ((2 * barrow.distance) / barrow.speed + barrow.lost);
  const placing = (60 * volume) / placeRate;
  const striking = (60 * area) / strikeRate;
  return {
    mixing: cycle,
    hauling,
    trips,
    placing,
    striking,
    all: cycle + hauling + placing + striking,
  };
}

/**
 * Minutes from one batch to the next: the mixer's cycle, or all hands' work shared among them, whichever is longer. Without
 * hands there is no batch.
 */
export function minutesABatch(rules: PlacingPractices, work: BatchWork, hands: number): number {
  if (hands <= 0) return Number.POSITIVE_INFINITY;
  return Math.max(work.mixing / rules.mixers, work.all / hands);
}
