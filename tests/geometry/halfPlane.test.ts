import { describe, expect, test } from 'vitest';
import {
  alongOf,
  areaBehind,
  headingOf,
  lengthBehind,
  reachOf,
  ringBehind,
} from '../../src/geometry/halfPlane.ts';
import type { Polygon } from '../../src/geometry/point.ts';

const square: Polygon = {
  outer: [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
  ],
  // Clockwise, as holes run.
  holes: [
    [
      { x: 20, y: 20 },
      { x: 20, y: 40 },
      { x: 40, y: 40 },
      { x: 40, y: 20 },
    ],
  ],
};
/** Open to the right: a line square to x cuts it in two. */
const u: Polygon = {
  outer: [
    { x: 0, y: 0 },
    { x: 90, y: 0 },
    { x: 90, y: 10 },
    { x: 10, y: 10 },
    { x: 10, y: 20 },
    { x: 90, y: 20 },
    { x: 90, y: 30 },
    { x: 0, y: 30 },
  ],
  holes: [],
};

describe('what lies behind a line', () => {
  test('of a square with a hole: none, a part of both, all', () => {
    const east = headingOf(0);
    expect(areaBehind([square], east, -1)).toBe(0);
    expect(areaBehind([square], east, 30)).toBe(30 * 100 - 10 * 20);
    expect(areaBehind([square], east, 100)).toBe(10_000 - 400);
  });
  test('of a shape that it cuts into two pieces', () => {
    expect(areaBehind([u], headingOf(0), 50)).toBe(10 * 30 + 2 * 40 * 10);
  });
  test('turned about, it is the rest', () => {
    for (const degrees of [0, 30, 45, 90, 137, 180, 270]) {
      const heading = headingOf(degrees);
      const back = headingOf(degrees + 180);
      const along = alongOf({ x: 41, y: 57 }, heading);
      const both = areaBehind([square, u], heading, along) + areaBehind([square, u], back, -along);
      expect(both).toBeCloseTo(9600 + 300 + 1600, 6);
    }
  });
  test('on a slant: half of a square through its middle', () => {
    const heading = headingOf(45);
    const whole = { ...square, holes: [] };
    expect(areaBehind([whole], heading, alongOf({ x: 50, y: 50 }, heading))).toBeCloseTo(5000, 6);
  });
  test('is nothing of a ring ahead of it, and of none', () => {
    expect(ringBehind(square.outer, headingOf(90), -1)).toEqual([]);
    expect(ringBehind([], headingOf(90), 0)).toEqual([]);
  });
  test('of a straight length', () => {
    const east = headingOf(0);
    const [from, to] = [
      { x: 0, y: 0 },
      { x: 30, y: 40 },
    ];
    expect(lengthBehind(from, to, east, 12)).toBeCloseTo(20, 9);
    expect(lengthBehind(to, from, east, 12)).toBeCloseTo(20, 9);
    expect(lengthBehind(from, to, east, -1)).toBe(0);
    expect(lengthBehind(from, to, east, 30)).toBe(50);
  });
});

test('how far polygons reach along a heading', () => {
  expect(reachOf([square, u], headingOf(0))).toEqual([0, 100]);
  expect(reachOf([square], headingOf(180))).toEqual([-100, 0]);
});
