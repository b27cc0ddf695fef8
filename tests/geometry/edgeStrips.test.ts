import { describe, expect, test } from 'vitest';
import { arcOf } from '../../src/geometry/arc.ts';
import { areaAlong, type EdgeWay, type StripEdge } from '../../src/geometry/edgeStrips.ts';
import type { Point, Polygon } from '../../src/geometry/point.ts';

/** A hundred units to the side make rounding to the grid small. */
const UNIT = 1_000;

function ring(...places: readonly (readonly [number, number])[]): Point[] {
  return places.map(([x, y]) => ({ x: x * UNIT, y: y * UNIT }));
}

function polygon(outer: Point[], ...holes: Point[][]): Polygon {
  return { outer, holes };
}

function edges(points: readonly Point[], closed: boolean): EdgeWay {
  const count = closed ? points.length : points.length - 1;
  return {
    closed,
    edges: Array.from({ length: count }, (_, i): StripEdge => {
      return { points: [points[i]!, points[(i + 1) % points.length]!] };
    }),
  };
}

function along(shape: Polygon, ways: readonly EdgeWay[], reach: number): number {
  return areaAlong([shape], ways, reach * UNIT) / UNIT ** 2;
}

const SQUARE = ring([0, 0], [10, 0], [10, 10], [0, 10]);

describe('all round a square of 10', () => {
  test.each([
    [1, 36],
    [2, 64],
    // Strips meet in the middle: all of it, and no more.
    [5, 100],
    [8, 100],
  ])('within %d of its edges: %d', (reach, area) => {
    expect(along(polygon(SQUARE), [edges(SQUARE, true)], reach)).toBeCloseTo(area, 6);
  });

  test('moved far off and told in another order it is the same', () => {
    const far = SQUARE.map(({ x, y }) => ({ x: x + 5e7, y: y - 3e7 }));
    const turned = [...far.slice(2), ...far.slice(0, 2)];
    expect(along(polygon(far), [edges(turned, true)], 1)).toBeCloseTo(36, 6);
  });
});

test('one edge of it: its length times the reach', () => {
  expect(along(polygon(SQUARE), [edges(SQUARE.slice(0, 2), false)], 2)).toBeCloseTo(20, 6);
});

test('two edges that meet share their corner once', () => {
  expect(along(polygon(SQUARE), [edges(SQUARE.slice(0, 3), false)], 2)).toBeCloseTo(36, 6);
});

test('an inside corner is filled to its mitre', () => {
  // An L of 10 × 10 with a notch of 4 × 4: 40 round by 1, five corners out and one in.
  const ell = ring([0, 0], [10, 0], [10, 6], [6, 6], [6, 10], [0, 10]);
  expect(along(polygon(ell), [edges(ell, true)], 1)).toBeCloseTo(40 - 5 + 1, 6);
});

test('an inside corner too sharp for a mitre is cut off', () => {
  // A slot with its tip at (5, 5), a tenth of a unit wide at its mouth: of the mitre, a triangle is left.
  const slot = ring([0, 0], [10, 0], [10, 10], [5.05, 10], [5, 5], [4.95, 10], [0, 10]);
  const area = along(polygon(slot), [edges(slot.slice(3, 6), false)], 1);
  const side = Math.hypot(5, 0.05);
  expect(area).toBeGreaterThan(2 * side * 0.97);
  expect(area).toBeLessThan(2 * side + 0.5);
});

test('a hole takes its part of the strip', () => {
  const hole = ring([4, 0.5], [4, 2.5], [6, 2.5], [6, 0.5]);
  const shape = polygon(SQUARE, hole);
  // Along the bottom edge, 2 wide: 20 less the 2 × 1.5 of the hole within it.
  expect(along(shape, [edges(SQUARE.slice(0, 2), false)], 2)).toBeCloseTo(17, 6);
});

test('where the edge ends its strip ends square, and what bounds it leans over it cuts it', () => {
  // The left side leans in over the bottom edge: a triangle of 2 × 1 is cut off, its half.
  const leaning = ring([0, 0], [10, 0], [10, 10], [5, 10]);
  expect(along(polygon(leaning), [edges(leaning.slice(0, 2), false)], 2)).toBeCloseTo(19, 6);
  // It leans out: the wedge past the square end isn't counted.
  const wide = ring([0, 0], [10, 0], [10, 10], [-5, 10]);
  expect(along(polygon(wide), [edges(wide.slice(0, 2), false)], 2)).toBeCloseTo(20, 6);
});

describe('a half disc of radius 10', () => {
  const [east, west] = ring([10, 0], [-10, 0]) as [Point, Point];
  // A quarter circle on each side of the top, turning left round what it bounds.
  const top = { x: 0, y: 10 * UNIT };
  const rise = (from: Point, to: Point) => {
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    return 10 * UNIT - Math.sqrt((10 * UNIT) ** 2 - (chord / 2) ** 2);
  };
  const arc = (from: Point, to: Point): StripEdge => {
    const circle = arcOf(from, to, rise(from, to));
    const begin = Math.atan2(from.y - circle.cy, from.x - circle.cx);
    const points = Array.from({ length: 401 }, (_, i) => {
      if (i === 0) return from;
      if (i === 400) return to;
      const angle = begin + (circle.sweep * i) / 400;
      return {
        x: Math.round(circle.cx + circle.radius * Math.cos(angle)),
        y: Math.round(circle.cy + circle.radius * Math.sin(angle)),
      };
    });
    return { points, arc: circle };
  };
  const sides = [arc(east, top), arc(top, west)];
  const shape = polygon([...sides[0]!.points, ...sides[1]!.points.slice(1)]);
  const way: EdgeWay = { edges: sides, closed: false };

  test.each([1, 4, 9])('a half ring within %d', (reach) => {
    const area = (Math.PI / 2) * (100 - (10 - reach) ** 2);
    expect(along(shape, [way], reach)).toBeCloseTo(area, 1);
  });

  test('no farther than to the centre', () => {
    expect(along(shape, [way], 14)).toBeCloseTo((Math.PI / 2) * 100, 1);
  });
});
