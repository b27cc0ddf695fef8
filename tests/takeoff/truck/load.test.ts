import { describe, expect, test } from 'vitest';
import { type HaulItem, type HaulRoom, haul, MOST_TRIPS } from '../../../src/takeoff/truck/load.ts';
import { POUND_KG } from '../../../src/units/grid.ts';
import { chance } from '../../random/chance.ts';

const LB = Math.round(POUND_KG * 1e9);
const bags = (count: number, pounds = 80, of = 0): HaulItem => ({ of, count, each: pounds * LB });
const truck = (pounds: number): HaulRoom => ({ on: 'truck', room: pounds * LB });
const trailer = (pounds: number): HaulRoom => ({ on: 'trailer', room: pounds * LB });

describe('trips', () => {
  test('59 bags of 80 lb at 1,200 lb a trip: 15 bags, four trips, proved', () => {
    const plan = haul([bags(59)], [truck(1_200)])!;
    expect(plan.trips).toHaveLength(4);
    expect(plan.least).toBe(4);
    expect(plan.trips.map(([part]) => part!.items[0]!.count)).toEqual([15, 15, 15, 14]);
  });

  test('25 bags of 80 lb are 2,000 lb, to the pound', () => {
    expect(haul([bags(25)], [truck(2_000)])!.trips).toHaveLength(1);
    expect(haul([bags(25)], [truck(1_999)])!.trips).toHaveLength(2);
  });

  test('a pallet is split between truck and trailer', () => {
    const plan = haul([bags(42)], [truck(1_200), trailer(2_200)])!;
    expect(plan.trips).toHaveLength(1);
    expect(plan.trips[0]!.map(({ on, items }) => [on, items[0]!.count])).toEqual([
      ['truck', 15],
      ['trailer', 27],
    ]);
  });

  test('a payload below one bag is none', () => {
    expect(haul([bags(1)], [truck(79)])).toBeUndefined();
  });

  test('heavy pieces that fill a trip each are bounded by their number, not by weight', () => {
    // Three of 600 lb on 1,000 lb: by weight two trips would do.
    const plan = haul([bags(3, 600)], [truck(1_000)])!;
    expect([plan.trips.length, plan.least]).toEqual([3, 3]);
  });

  test('nothing to haul takes no trip', () => {
    expect(haul([], [truck(1_000)])).toEqual({ trips: [], least: 0 });
  });

  test('more trips than anybody drives are none', () => {
    expect(haul([bags(MOST_TRIPS + 1)], [truck(100)])).toBeUndefined();
  });
});

/** The fewest bins for a few pieces, every way tried. */
function fewest(pieces: readonly number[], room: number): number {
  let best = pieces.length;
  const bins: number[] = [];
  const put = (at: number): void => {
    if (bins.length >= best) return;
    if (at === pieces.length) {
      best = bins.length;
      return;
    }
    for (let i = 0; i < bins.length; i++) {
      if (bins[i]! + pieces[at]! > room) continue;
      bins[i] = bins[i]! + pieces[at]!;
      put(at + 1);
      bins[i] = bins[i]! - pieces[at]!;
    }
    bins.push(pieces[at]!);
    put(at + 1);
    bins.pop();
  };
  put(0);
  return best;
}

test('random loads: nothing lost, nothing over, and never fewer than the bound says', () => {
  const draw = chance(40_961);
  for (let round = 0; round < 300; round++) {
    const room = draw.whole(50, 200);
    const items = Array.from({ length: draw.whole(1, 4) }, (_, of) => ({
      of,
      count: draw.whole(1, 3),
      each: draw.whole(1, room),
    }));
    const rooms: readonly HaulRoom[] = [{ on: 'truck', room }];
    const plan = haul(items, rooms)!;
    for (const [part] of plan.trips) {
      const weight = part!.items.reduce((sum, { of, count }) => sum + count * items[of]!.each, 0);
      expect(part!.weight).toBe(weight);
      expect(weight).toBeLessThanOrEqual(room);
    }
    for (const { of, count } of items) {
      const loaded = plan.trips
        .flat()
        .flatMap((part) => part.items)
        .filter((one) => one.of === of)
        .reduce((sum, one) => sum + one.count, 0);
      expect(loaded).toBe(count);
    }
    const pieces = items.flatMap(({ count, each }) => Array.from({ length: count }, () => each));
    const truth = fewest(
      pieces.toSorted((a, b) => b - a),
      room,
    );
    expect(plan.least).toBeLessThanOrEqual(truth);
    expect(plan.trips.length).toBeGreaterThanOrEqual(truth);
    // First fit of the heaviest first: 11/9 of the fewest and 6/9 more, at most (Dósa 2007, from memory).
    expect(plan.trips.length).toBeLessThanOrEqual((11 * truth + 6) / 9);
  }
});
