import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doubledArea, reversed } from '../../src/geometry/area.ts';
import type { Ring } from '../../src/geometry/point.ts';
import { EXTENT_LIMIT } from '../../src/units/grid.ts';

/** The same sum with whole numbers of any size. */
function doubledAreaByBigInt(ring: Ring): bigint {
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    return sum + BigInt(a.x) * BigInt(b.y) - BigInt(a.y) * BigInt(b.x);
  }, 0n);
}

describe('doubled area', () => {
  test('of a square, both ways round', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 0, y: 10 },
    ];
    expect(doubledArea(square)).toBe(200);
    expect(doubledArea(reversed(square))).toBe(-200);
  });

  test('is 0 for fewer than three corners', () => {
    expect(doubledArea([])).toBe(0);
    expect(doubledArea([{ x: 1, y: 1 }])).toBe(0);
  });

  test('of the largest square that a job may hold is exact', () => {
    const side = EXTENT_LIMIT;
    const ring = [
      { x: -side / 2, y: -side / 2 },
      { x: side / 2, y: -side / 2 },
      { x: side / 2, y: side / 2 },
      { x: -side / 2, y: side / 2 - 1 },
    ];
    expect(BigInt(doubledArea(ring))).toBe(doubledAreaByBigInt(ring));
  });

  test('is exact against big integers on random rings up to the extent limit', () => {
    const at = fc.integer({ min: 0, max: EXTENT_LIMIT });
    const ring = fc.array(fc.record({ x: at, y: at }), { minLength: 3, maxLength: 60 });
    let compared = 0;
    fc.assert(
      fc.property(ring, (points) => {
        const exact = doubledAreaByBigInt(points);
        // A tangle of random corners can wind round more area than the box has; a plain number holds up to 2^53.
        if (exact > 2n ** 53n || exact < -(2n ** 53n)) return;
        compared++;
        expect(BigInt(doubledArea(points))).toBe(exact);
      }),
      { seed: 20, numRuns: 2000 },
    );
    expect(compared).toBeGreaterThan(1900);
  });

  test('stays exact where plain partial sums would not', () => {
    // Fans out and back: partial sums pass 2^53, the whole does not.
    const side = EXTENT_LIMIT;
    const loop = [
      { x: 0, y: 0 },
      { x: side, y: 1 },
      { x: side - 1, y: side },
      { x: 3, y: side - 7 },
    ];
    const ring = [...loop, ...loop, ...loop, ...loop.toReversed(), ...loop.toReversed()];
    expect(BigInt(doubledArea(ring))).toBe(doubledAreaByBigInt(ring));
  });
});
