import { describe, expect, test } from 'vitest';
import { type Chain, chainOf } from '../../src/geometry/chain.ts';
import { weld } from '../../src/geometry/weld.ts';

const TOLERANCE = 508;

function chain(places: readonly (readonly [number, number])[], closed = true): Chain {
  return chainOf(
    places.map(([x, y]) => ({ x, y, rise: 0 })),
    closed,
    32,
  );
}

function says({ points }: Chain): string {
  return points.map(({ x, y }) => `${x},${y}`).join(' ');
}

const pad = chain([
  [0, 0],
  [100_000, 0],
  [100_000, 50_000],
  [0, 50_000],
]);

describe('weld', () => {
  test('leaves alone what lies apart, down to the very object', () => {
    const far = chain([
      [300_000, 0],
      [400_000, 0],
      [400_000, 9_000],
    ]);
    const { chains, moves, meets } = weld([pad, far], TOLERANCE);
    expect(chains[0]).toBe(pad);
    expect(chains[1]).toBe(far);
    expect(moves).toEqual([]);
    expect([...meets]).toEqual([0, 0, 0, 0]);
  });

  /*
   *   pad ┌──────────┐
   *       └──┬────┬──┘   patio's corners lie on the pad's side: both share them afterwards
   *    patio └────┘
   */
  test('an abutting patio: the pad takes in its corners', () => {
    const patio = chain([
      [20_000, -30_000],
      [60_000, -30_000],
      [60_000, 0],
      [20_000, 0],
    ]);
    const { chains, moves } = weld([pad, patio], TOLERANCE);
    expect(says(chains[0]!)).toBe('0,0 20000,0 60000,0 100000,0 100000,50000 0,50000');
    expect(says(chains[1]!)).toBe(says(patio));
    expect(moves).toEqual([]);
  });

  test('a misread patio moves onto the pad, which holds still, and it is told', () => {
    const patio = chain([
      [20_000, -30_000],
      [60_000, -30_000],
      [60_000, 400],
      [20_000, -508],
    ]);
    const { chains, moves } = weld([pad, patio], TOLERANCE);
    expect(says(chains[1]!)).toBe('20000,-30000 60000,-30000 60000,0 20000,0');
    expect(moves.map(({ chain: k, onto, distance }) => [k, onto, distance])).toEqual([
      [1, 0, 400],
      [1, 0, 508],
    ]);
  });

  test('one unit past the tolerance is another line', () => {
    const patio = chain([
      [20_000, -30_000],
      [60_000, -30_000],
      [60_000, -509],
      [20_000, -509],
    ]);
    const { chains } = weld([pad, patio], TOLERANCE);
    expect(chains[0]).toBe(pad);
    expect(chains[1]).toBe(patio);
  });

  test('a corner near a corner goes there, not to the nearer edge', () => {
    const patio = chain([
      [100_300, -30_000],
      [140_000, -30_000],
      [140_000, 20_000],
      [99_700, 10],
    ]);
    const { chains } = weld([pad, patio], TOLERANCE);
    expect(chains[1]!.points).toContainEqual({ x: 100_000, y: 0 });
  });

  test("a later outline's edge bends to take in an earlier corner, and keeps its tag", () => {
    const slab = chain([
      [-50_000, 50_300],
      [150_000, 50_300],
      [150_000, 90_000],
      [-50_000, 90_000],
    ]);
    const { chains, moves } = weld([pad, slab], TOLERANCE);
    expect(says(chains[1]!)).toContain('-50000,50300 0,50000 100000,50000 150000,50300');
    expect(chains[1]!.tags).toEqual([0, 0, 0, 1, 2, 3]);
    expect(moves).toHaveLength(2);
  });

  test('a spike that it makes is taken off', () => {
    const sliver = chain([
      [20_000, 0],
      [60_000, 0],
      [60_000, 20_000],
      [40_000, 300],
      [20_000, 300],
    ]);
    const { chains } = weld([pad, sliver], TOLERANCE);
    expect(says(chains[1]!)).toBe('40000,0 60000,0 60000,20000');
    const gone = chain([
      [20_000, 300],
      [60_000, 0],
      [60_000, 300],
    ]);
    expect(weld([pad, gone], TOLERANCE).chains[1]!.points).toEqual([]);
  });

  test('turned by 17.3°: the shared stretch is the same stretch in both', () => {
    const turn = (17.3 * Math.PI) / 180;
    const place = (x: number, y: number): [number, number] => [
      Math.round(x * Math.cos(turn) - y * Math.sin(turn)),
      Math.round(x * Math.sin(turn) + y * Math.cos(turn)),
    ];
    const slab = chain([place(0, 0), place(100_000, 0), place(100_000, 50_000), place(0, 50_000)]);
    const patio = chain([
      place(20_001, -30_000),
      place(60_007, -30_000),
      place(60_007, 0),
      place(20_001, 0),
    ]);
    const [a, b] = weld([slab, patio], TOLERANCE).chains as [Chain, Chain];
    const shared = b.points.filter((p) => a.points.some((q) => p.x === q.x && p.y === q.y));
    expect(shared).toHaveLength(2);
    const at = a.points.findIndex((q) => q.x === shared[1]!.x && q.y === shared[1]!.y);
    expect(a.points[at + 1]).toEqual(shared[0]);
  });

  test('an open line is welded too, and never closed', () => {
    const line = chain(
      [
        [-10_000, 50_200],
        [60_000, 50_200],
      ],
      false,
    );
    const { chains } = weld([pad, line], TOLERANCE);
    expect(says(chains[1]!)).toBe('-10000,50200 0,50000 60000,50000');
    expect(chains[1]!.closed).toBe(false);
  });
});
