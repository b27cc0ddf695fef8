import { expect, test } from 'vitest';
import { placeAlong } from '../../../src/takeoff/forms/along.ts';
import type { PourEdge } from '../../../src/takeoff/outline/pour.ts';

const straight = (from: [number, number], to: [number, number]): PourEdge => ({
  from: { x: from[0], y: from[1] },
  to: { x: to[0], y: to[1] },
  kind: 'free',
  patch: false,
  feature: 'pad',
  length: Math.hypot(to[0] - from[0], to[1] - from[1]),
});

test('along a straight: outward is to the right of the way', () => {
  const edges = [straight([0, 0], [100, 0]), straight([100, 0], [300, 0])];
  const place = placeAlong(edges, 150);
  expect([place.x, place.y]).toEqual([150, 0]);
  expect(place.outward).toBeCloseTo(-Math.PI / 2, 12);
});

test('along an arc: outward of a bulge, inward of a bay', () => {
  const arc = { cx: 0, cy: 0, radius: 100, sweep: Math.PI / 2 };
  const bulge: PourEdge = { ...straight([100, 0], [0, 100]), arc, length: 157 };
  const place = placeAlong([bulge], 157 / 2);
  expect(place.x).toBeCloseTo(70.71, 2);
  expect(place.y).toBeCloseTo(70.71, 2);
  expect(place.outward).toBeCloseTo(Math.PI / 4, 12);
  const bay: PourEdge = {
    ...straight([0, 100], [100, 0]),
    arc: { ...arc, sweep: -Math.PI / 2 },
    length: 157,
  };
  expect(Math.cos(placeAlong([bay], 157 / 2).outward)).toBeCloseTo(-Math.SQRT1_2, 12);
});
