import { describe, expect, test } from 'vitest';
import { chainOf } from '../../src/geometry/chain.ts';
import { edgesCross, meetingPoint, selfCrossings } from '../../src/geometry/crossings.ts';
import type { Point, Ring } from '../../src/geometry/point.ts';
import { chance } from '../random/chance.ts';

function ring(...places: readonly (readonly [number, number])[]): Ring {
  return places.map(([x, y]) => ({ x, y }));
}

describe('self crossings', () => {
  test('a bow tie crosses once, in the middle', () => {
    expect(selfCrossings(ring([0, 0], [10, 10], [10, 0], [0, 10]))).toEqual([{ x: 5, y: 5 }]);
  });

  test('a square, an L and a spiral do not', () => {
    expect(selfCrossings(ring([0, 0], [10, 0], [10, 10], [0, 10]))).toEqual([]);
    expect(selfCrossings(ring([0, 0], [10, 0], [10, 4], [4, 4], [4, 10], [0, 10]))).toEqual([]);
    expect(
      selfCrossings(
        ring([0, 0], [9, 0], [9, 9], [2, 9], [2, 4], [4, 4], [4, 6], [6, 6], [6, 2], [0, 2]),
      ),
    ).toEqual([]);
  });

  test('the way round and the corner it starts at make no difference', () => {
    const star = ring([0, 30], [18, -24], [-28, 9], [28, 9], [-18, -24]);
    const places = selfCrossings(star);
    expect(places).toHaveLength(5);
    expect(selfCrossings(star.toReversed())).toEqual(places);
    expect(selfCrossings([...star.slice(2), ...star.slice(0, 2)])).toEqual(places);
  });

  test('touching is not crossing: a corner on an edge, and two corners on one place', () => {
    expect(selfCrossings(ring([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]))).toEqual([]);
    expect(selfCrossings(ring([0, 0], [5, 5], [10, 0], [10, 10], [5, 5], [0, 10]))).toEqual([]);
  });

  test('passing through at a corner is crossing, on an edge and on a corner', () => {
    expect(selfCrossings(ring([0, 0], [10, 0], [10, 5], [5, 0], [5, -5], [0, -5]))).toEqual([
      { x: 5, y: 0 },
    ]);
    expect(selfCrossings(ring([0, 0], [5, 5], [10, 10], [10, 0], [5, 5], [0, 10]))).toEqual([
      { x: 5, y: 5 },
    ]);
  });

  test('running back over itself is reported where it begins', () => {
    expect(selfCrossings(ring([0, 0], [10, 0], [10, 10], [10, 4], [0, 4]))).toEqual([
      { x: 10, y: 4 },
    ]);
    expect(selfCrossings(ring([0, 0], [5, 0], [10, 0]))).not.toEqual([]);
  });

  test('a corner given twice is one corner', () => {
    expect(selfCrossings(ring([0, 0], [10, 0], [10, 0], [10, 10], [0, 10], [0, 0]))).toEqual([]);
  });

  test('one unit decides, 200 m apart', () => {
    const far = 64_000_000;
    const miss = ring([0, 0], [far, 1], [far, far], [far - 1, 1], [0, far]);
    expect(selfCrossings(miss)).toEqual([]);
    const hit = ring([0, 0], [far, 1], [far, far], [far - 1, 0], [0, far]);
    expect(selfCrossings(hit).length).toBeGreaterThan(0);
  });

  test('the index finds what comparing every pair finds, on 300 rings of up to 200 corners', () => {
    const draw = chance(11);
    for (let n = 0; n < 300; n++) {
      const corners = draw.whole(49, 200);
      const places = Array.from({ length: corners }, (_, i): Point => {
        const angle = (2 * Math.PI * i) / corners;
        const reach = 1000 + draw.between(-15, 15) * draw.oneOf([1, 1, 4]);
        return { x: Math.round(reach * Math.cos(angle)), y: Math.round(reach * Math.sin(angle)) };
      });
      if (draw.likely(0.5))
        places.splice(3, 1, { x: draw.whole(-900, 900), y: draw.whole(-900, 900) });
      expect(selfCrossings(places).length > 0).toBe(crossesByPairs(places));
    }
  });

  test('2,000 corners take well under a frame', () => {
    const places = Array.from({ length: 2000 }, (_, i): Point => {
      const angle = (2 * Math.PI * i) / 2000;
      const reach = 10_000_000 * (1 + 0.1 * Math.sin(9 * angle));
      return { x: Math.round(reach * Math.cos(angle)), y: Math.round(reach * Math.sin(angle)) };
    });
    selfCrossings(places);
    const start = performance.now();
    expect(selfCrossings(places)).toEqual([]);
    expect(performance.now() - start).toBeLessThan(100);
  });
});

/** Proper crossings pair by pair, plus anything that needs a closer look: none in these rings by construction. */
function crossesByPairs(places: readonly Point[]): boolean {
  const count = places.length;
  for (let i = 0; i < count; i++) {
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      const [a, b, c, d] = [i, i + 1, j, j + 1].map((k) => places[k % count]!) as [
        Point,
        Point,
        Point,
        Point,
      ];
      if (edgesCross(a, b, c, d)) return true;
    }
  }
  return false;
}

test('the place where two edges cross, to the nearest unit', () => {
  const at = meetingPoint({ x: 0, y: 0 }, { x: 10, y: 3 }, { x: 0, y: 4 }, { x: 9, y: -2 });
  expect(at).toEqual({ x: 4, y: 1 });
});

test('an arc that crosses a straight edge is seen through its chords', () => {
  const corners = [
    { x: 0, y: 0, rise: 0 },
    { x: 10_000, y: 0, rise: -6_000 },
    { x: 10_000, y: 8_000, rise: 0 },
    { x: 8_000, y: 8_000, rise: 0 },
    { x: 8_000, y: 2_000, rise: 0 },
    { x: 0, y: 2_000, rise: 0 },
  ];
  expect(selfCrossings(chainOf(corners, true, 32).points).length).toBeGreaterThan(0);
  const outward = corners.map((corner) => ({ ...corner, rise: -corner.rise }));
  expect(selfCrossings(chainOf(outward, true, 32).points)).toEqual([]);
});
