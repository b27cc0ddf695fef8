import { describe, expect, test } from 'vitest';
import { arcOf } from '../../src/geometry/arc.ts';
import { nearestOnEdge } from '../../src/geometry/nearest.ts';

const from = { x: 0, y: 0 };
const to = { x: 100, y: 0 };

describe('on a straight', () => {
  test.each([
    [{ x: 30, y: 40 }, 0.3, 40],
    [{ x: -30, y: 40 }, 0, 50],
    [{ x: 160, y: -80 }, 1, 100],
  ])('from %o', (at, t, distance) => {
    expect(nearestOnEdge(from, to, null, at)).toMatchObject({ t, distance });
  });

  test('without length: its one place', () => {
    expect(nearestOnEdge(from, from, null, { x: 3, y: 4 })).toMatchObject({ t: 0, distance: 5 });
  });
});

describe.each([
  ['to the right of the way', 50],
  ['to the left of it', -50],
])('on a half circle %s', (_, rise) => {
  const arc = arcOf(from, to, rise);
  const side = rise > 0 ? -1 : 1;

  test('above its middle: half way', () => {
    const near = nearestOnEdge(from, to, arc, { x: 50, y: side * 80 });
    expect(near.t).toBeCloseTo(0.5, 12);
    expect(near.distance).toBeCloseTo(30, 9);
    expect([near.x, near.y].map(Math.round)).toEqual([50, side * 50]);
  });

  test('on its other side: the nearer end', () => {
    expect(nearestOnEdge(from, to, arc, { x: 10, y: -side * 40 }).t).toBe(0);
    expect(nearestOnEdge(from, to, arc, { x: 90, y: -side * 40 }).t).toBe(1);
  });
});
