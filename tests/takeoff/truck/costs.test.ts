import { describe, expect, test } from 'vitest';
import {
  type BagRates,
  bagCost,
  breakEvens,
  type TruckRates,
  truckCost,
} from '../../../src/takeoff/truck/costs.ts';
import { chance } from '../../random/chance.ts';

// Volumes in yards here: the functions don't know the unit.
const BAGS: BagRates = { bag: 600, yield: 0.6 / 27, hours: 0.1, labour: 3_000, hire: 6_000 };
const TRUCK: TruckRates = {
  unit: 1,
  price: 18_000,
  least: 1,
  short: 4,
  flat: 10_000,
  missing: 0,
  onSite: 0.15,
  free: 0.5,
  waiting: 12_000,
  wheelers: 0,
  labour: 3_000,
};

describe('costs, worked by hand', () => {
  test('two yards in bags: 90 bags at 6, nine hours at 30, the mixer', () => {
    expect(bagCost(BAGS, 2)).toBeCloseTo(90 * 600 + 9 * 3_000 + 6_000, 6);
  });

  test('two yards by truck: two at 180, and the fee', () => {
    expect(truckCost(TRUCK, 2)).toBeCloseTo(2 * 18_000 + 10_000, 6);
  });

  test('half a yard is billed as one', () => {
    expect(truckCost(TRUCK, 0.5)).toBe(28_000);
  });

  test('five yards wait a quarter of an hour beyond the free half, without a fee', () => {
    expect(truckCost(TRUCK, 5)).toBeCloseTo(5 * 18_000 + 0.25 * 12_000, 6);
  });

  test('wheeling: two people for as long as the truck is there', () => {
    expect(truckCost({ ...TRUCK, wheelers: 2 }, 2)).toBeCloseTo(46_000 + 0.3 * 2 * 3_000, 6);
  });

  test('a fee for each yard missing', () => {
    expect(truckCost({ ...TRUCK, flat: 0, missing: 3_000 }, 1.5)).toBeCloseTo(27_000 + 7_500, 6);
  });
});

describe('the break-even', () => {
  test('of a truck billed for a yard at least, by hand', () => {
    // 6000 + V · 40500 = 28000 below one yard: V = 22000 / 40500.
    expect(breakEvens(BAGS, TRUCK)).toEqual([
      { volume: expect.closeTo(22_000 / 40_500, 9), cheaper: 'truck' },
    ]);
  });

  test('none where a bag costs less than a truck at any volume', () => {
    expect(breakEvens({ ...BAGS, bag: 0, hours: 0, hire: 0 }, TRUCK)).toEqual([]);
  });

  test('falls where the fee ends, when only the fee made the truck dearer', () => {
    const cheap = { ...BAGS, bag: 260, hours: 0, hire: 0 };
    // 11700 a yard; a truck 11000 a yard and a fee of 4000 below four: bags until there.
    const truck = { ...TRUCK, price: 11_000, flat: 4_000, least: 0, onSite: 0 };
    expect(breakEvens(cheap, truck)).toEqual([{ volume: 4, cheaper: 'truck' }]);
  });

  test('waiting may make bags the cheaper again', () => {
    const cheap = { ...BAGS, bag: 300, hours: 0, hire: 2_000 };
    const truck = {
      ...TRUCK,
      price: 9_000,
      flat: 0,
      least: 0,
      short: 0,
      onSite: 1,
      free: 2,
      waiting: 20_000,
    };
    const found = breakEvens(cheap, truck);
    expect(found.map(({ cheaper }) => cheaper)).toEqual(['bags']);
    expect(truckCost(truck, found[0]!.volume)).toBeCloseTo(bagCost(cheap, found[0]!.volume), 6);
  });
});

test('random rates: every change of the cheaper, and no other, as found by walking along the volume', () => {
  const draw = chance(8_117);
  for (let round = 0; round < 200; round++) {
    const maybe = (most: number) => (draw.likely(0.3) ? 0 : draw.whole(0, most));
    const bags: BagRates = {
      bag: draw.whole(100, 1_500),
      yield: 1 / draw.whole(40, 90),
      hours: draw.between(0, 0.2),
      labour: maybe(6_000),
      hire: maybe(20_000),
    };
    const truck: TruckRates = {
      unit: 1,
      price: draw.whole(8_000, 40_000),
      least: draw.likely(0.3) ? 0 : draw.between(0, 5),
      short: draw.likely(0.3) ? 0 : draw.between(0, 8),
      flat: maybe(40_000),
      missing: maybe(8_000),
      onSite: draw.between(0, 0.6),
      free: draw.between(0, 2),
      waiting: maybe(20_000),
      wheelers: draw.whole(0, 3),
      labour: maybe(6_000),
    };
    const found = breakEvens(bags, truck);
    const steps = 600;
    const most = 12;
    const isTruck = (volume: number) => bagCost(bags, volume) >= truckCost(truck, volume);
    for (let i = 1; i < steps; i++) {
      const volume = (i * most) / steps;
      const near = found.some((one) => Math.abs(one.volume - volume) < (2 * most) / steps);
      if (near || Math.abs(bagCost(bags, volume) - truckCost(truck, volume)) < 1e-6) continue;
      const changes = found.filter((one) => one.volume < volume);
      const first = found[0]?.cheaper;
      const start = first === undefined ? isTruck(most / steps) : first === 'bags';
      const says = changes.length === 0 ? start : changes.at(-1)!.cheaper === 'truck';
      expect(says, `round ${round} at ${volume}`).toBe(isTruck(volume));
    }
    // Changes alternate.
    found.slice(1).forEach((one, i) => {
      expect(one.cheaper).not.toBe(found[i]!.cheaper);
      expect(one.volume).toBeGreaterThanOrEqual(found[i]!.volume);
    });
  }
});
