import { expect, test } from 'vitest';
import { doubledArea } from '../../src/geometry/area.ts';
import { faces } from '../../src/geometry/faces.ts';
import type { Point, Polygon } from '../../src/geometry/point.ts';
import { chordsIn, splitAlong } from '../../src/geometry/split.ts';
import { chance } from '../random/chance.ts';

function areas(parts: readonly Polygon[]): readonly number[] {
  return parts
    .map(
      ({ outer, holes }) => [outer, ...holes].reduce((sum, ring) => sum + doubledArea(ring), 0) / 2,
    )
    .toSorted((a, b) => a - b);
}

const at = (x: number, y: number): Point => ({ x, y });
const SIDE = 1_000_000;
/** A U with a square hole in its foot and another in its left leg. */
const slab: Polygon = {
  outer: [
    at(0, 0),
    at(3 * SIDE, 0),
    at(3 * SIDE, 3 * SIDE),
    at(2 * SIDE, 3 * SIDE),
    at(2 * SIDE, SIDE),
    at(SIDE, SIDE),
    at(SIDE, 3 * SIDE),
    at(0, 3 * SIDE),
  ],
  holes: [
    [
      at(1_400_000, 400_000),
      at(1_400_000, 600_000),
      at(1_600_000, 600_000),
      at(1_600_000, 400_000),
    ],
    [
      at(300_000, 2_000_000),
      at(300_000, 2_200_000),
      at(600_000, 2_200_000),
      at(600_000, 2_000_000),
    ],
  ],
};

test('a line across both legs of a U parts both; one beside a hole leaves it in its part', () => {
  const chords = chordsIn(slab, at(0, 1_500_000), at(3 * SIDE, 1_500_000));
  expect(chords.length).toBe(2);
  const parts = splitAlong(slab, chords);
  expect(parts.map(({ holes }) => holes.length).toSorted()).toEqual([0, 1, 1]);
});

test('to a hole and on from its far side: in two only when both are cut', () => {
  const chords = chordsIn(slab, at(1_500_000, 0), at(1_500_000, SIDE));
  expect(chords.length).toBe(2);
  expect(splitAlong(slab, chords.slice(0, 1)).length).toBe(1);
  expect(splitAlong(slab, chords).length).toBe(2);
});

test('cut by cut, lines part a slab as they do all at once', () => {
  for (let seed = 1; seed <= 300; seed++) {
    const draw = chance(seed);
    let parts: readonly Polygon[] = [slab];
    const cuts: { from: Point; to: Point }[] = [];
    for (let i = draw.whole(1, 5); i > 0; i--) {
      const across = draw.likely(0.5);
      const [a, b] = [draw.whole(10, 3 * SIDE - 10), draw.whole(10, 3 * SIDE - 10)];
      const from = across ? at(0, a) : at(a, 0);
      const to = across ? at(3 * SIDE, b) : at(b, 3 * SIDE);
      cuts.push(...chordsIn(slab, from, to));
    }
    for (const { from, to } of cuts) {
      parts = parts.flatMap((part) => splitAlong(part, chordsIn(part, from, to)));
    }
    const whole = areas(faces([slab], cuts));
    const found = areas(parts);
    expect(found.length, `seed ${seed}`).toBe(whole.length);
    found.forEach((area, i) => {
      // Corners on sloping cuts are rounded to the grid, more than once when one cut is crossed by the next.
      expect(Math.abs(area - whole[i]!), `seed ${seed}`).toBeLessThan(40 * SIDE);
    });
  }
});
