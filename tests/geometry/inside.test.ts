import { expect, test } from 'vitest';
import { isInsideAny } from '../../src/geometry/inside.ts';
import { locate } from '../../src/geometry/locate.ts';
import type { Point, Polygon } from '../../src/geometry/point.ts';
import { chance } from '../random/chance.ts';

test('as locate has it, place by place, with holes and several polygons', () => {
  const draw = chance(12);
  const lumpy = (x: number, y: number, reach: number): Point[] => {
    const corners = draw.whole(3, 40);
    return Array.from({ length: corners }, (_, i) => {
      const angle = (2 * Math.PI * i) / corners;
      const far = reach * draw.between(0.7, 1);
      return { x: Math.round(x + far * Math.cos(angle)), y: Math.round(y + far * Math.sin(angle)) };
    });
  };
  let inside = 0;
  for (let n = 0; n < 100; n++) {
    const polygons: Polygon[] = [
      { outer: lumpy(0, 0, 50), holes: [lumpy(0, 0, 15).toReversed()] },
      { outer: lumpy(200, 10, 50), holes: [] },
    ];
    for (let k = 0; k < 400; k++) {
      const corners = polygons[0]!.outer;
      const place = draw.likely(0.1)
        ? draw.oneOf(corners)
        : { x: draw.whole(-60, 260), y: draw.whole(-60, 60) };
      const expected = polygons.some(
        ({ outer, holes }) =>
          locate(place, outer) === 'inside' &&
          holes.every((hole) => locate(place, hole) === 'outside'),
      );
      expect(isInsideAny(place, polygons)).toBe(expected);
      if (expected) inside++;
    }
  }
  expect(inside).toBeGreaterThan(5_000);
});

test('level edges, places beside and above, and nothing at all', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
  ];
  const polygons = [{ outer: square, holes: [] }];
  expect(isInsideAny({ x: 5, y: 5 }, polygons)).toBe(true);
  for (const place of [
    { x: 5, y: 0 },
    { x: 5, y: 10 },
    { x: 0, y: 5 },
    { x: 10, y: 10 },
  ]) {
    expect(isInsideAny(place, polygons)).toBe(false);
  }
  for (const place of [
    { x: -5, y: 0 },
    { x: 15, y: 10 },
    { x: 5, y: 11 },
    { x: 5, y: -1 },
  ]) {
    expect(isInsideAny(place, polygons)).toBe(false);
  }
  expect(isInsideAny({ x: 0, y: 0 }, [])).toBe(false);
});
