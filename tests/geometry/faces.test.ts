import { describe, expect, test } from 'vitest';
import { doubledArea } from '../../src/geometry/area.ts';
import { faces } from '../../src/geometry/faces.ts';
import type { Point, Polygon, Ring } from '../../src/geometry/point.ts';

function ring(...places: readonly (readonly [number, number])[]): Ring {
  return places.map(([x, y]) => ({ x, y }));
}
function cut(ax: number, ay: number, bx: number, by: number) {
  return { from: { x: ax, y: ay }, to: { x: bx, y: by } };
}
function areaOf({ outer, holes }: Polygon): number {
  return [outer, ...holes].reduce((sum, one) => sum + doubledArea(one), 0) / 2;
}
function areas(parts: readonly Polygon[]): readonly number[] {
  return parts.map(areaOf).toSorted((a, b) => a - b);
}

const square: Polygon = { outer: ring([0, 0], [1000, 0], [1000, 1000], [0, 1000]), holes: [] };
const holed: Polygon = {
  ...square,
  holes: [ring([400, 400], [400, 600], [600, 600], [600, 400])],
};

describe('parts of a square', () => {
  test('no cut: itself', () => {
    expect(faces([square], [])).toEqual([square]);
  });
  test('one cut across: two', () => {
    expect(areas(faces([square], [cut(300, 0, 300, 1000)]))).toEqual([300_000, 700_000]);
  });
  test('two that cross: four', () => {
    const parts = faces([square], [cut(300, 0, 300, 1000), cut(0, 500, 1000, 500)]);
    expect(areas(parts)).toEqual([150_000, 150_000, 350_000, 350_000]);
  });
  test('one that ends on another: three', () => {
    const parts = faces([square], [cut(300, 0, 300, 1000), cut(300, 500, 1000, 500)]);
    expect(areas(parts)).toEqual([300_000, 350_000, 350_000]);
  });
  test('one that ends inside parts nothing', () => {
    expect(areas(faces([square], [cut(300, 0, 300, 600)]))).toEqual([1_000_000]);
  });
  test('corner to corner', () => {
    expect(areas(faces([square], [cut(0, 0, 1000, 1000)]))).toEqual([500_000, 500_000]);
  });
});

describe('round a hole', () => {
  test('a cut to one side of it joins it to the outside and parts nothing', () => {
    expect(areas(faces([holed], [cut(500, 0, 500, 400)]))).toEqual([960_000]);
  });
  test('cuts on both sides part it', () => {
    const parts = faces([holed], [cut(500, 0, 500, 400), cut(500, 600, 500, 1000)]);
    expect(areas(parts)).toEqual([480_000, 480_000]);
  });
  test('a cut beside it leaves it in the part that it lies in', () => {
    const parts = faces([holed], [cut(200, 0, 200, 1000)]);
    expect(areas(parts)).toEqual([200_000, 760_000]);
    expect(parts.map(({ holes }) => holes.length).toSorted()).toEqual([0, 1]);
  });
});

test('parts of sloping cuts fit together exactly, and to the whole but for rounding', () => {
  let seed = 7;
  const draw = (most: number) => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed % most;
  };
  const side = 1_000_000;
  const big: Polygon = {
    outer: ring([0, 0], [side, 0], [side + 137, side], [-251, side - 977]),
    holes: [],
  };
  for (let round = 0; round < 300; round++) {
    const cuts = Array.from({ length: 1 + draw(4) }, () => {
      const a = 1_000 + draw(side - 2_000);
      const b = 1_000 + draw(side - 2_000);
      return draw(2) === 0 ? between(big, 0, a, 2, b) : between(big, 3, a, 1, b);
    });
    const parts = faces([big], cuts);
    const whole = areaOf(big);
    const sum = parts.reduce((all, part) => all + areaOf(part), 0);
    expect(Math.abs(sum - whole)).toBeLessThan(side * 2 * (cuts.length + 1));
    // Euler: a part more for every cut and for every crossing of two.
    const crossings = cuts.reduce(
      (count, one, i) => count + cuts.slice(0, i).filter((other) => cross(one, other)).length,
      0,
    );
    expect(parts.length).toBe(1 + cuts.length + crossings);
  }
});

/** From `a` along one edge to `b` along another, both counted in x or y, rounded to the grid. */
function between({ outer }: Polygon, edge: number, a: number, other: number, b: number) {
  const on = (index: number, t: number): Point => {
    const from = outer[index]!;
    const to = outer[(index + 1) % outer.length]!;
    const share = t / 1_000_000;
    return {
      x: Math.round(from.x + share * (to.x - from.x)),
      y: Math.round(from.y + share * (to.y - from.y)),
    };
  };
  return { from: on(edge, a), to: on(other, b) };
}

function cross(p: ReturnType<typeof cut>, q: ReturnType<typeof cut>): boolean {
  const side = (a: Point, b: Point, c: Point) =>
    Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  return (
    side(p.from, p.to, q.from) !== side(p.from, p.to, q.to) &&
    side(q.from, q.to, p.from) !== side(q.from, q.to, p.to)
  );
}
