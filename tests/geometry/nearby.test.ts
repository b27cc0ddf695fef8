import { expect, test } from 'vitest';
import { boxesMeet, boxOfEdge } from '../../src/geometry/box.ts';
import { chainOf, edgeCount } from '../../src/geometry/chain.ts';
import { edgeEnd, edgeStart, passesThroughBox, visitEdgesNear } from '../../src/geometry/nearby.ts';
import { chance } from '../random/chance.ts';

test('finds the edges near a box that walking them all finds, once each, with and without an index', () => {
  const draw = chance(4);
  for (let n = 0; n < 200; n++) {
    const corners = draw.whole(3, 300);
    const spread = draw.oneOf([10, 1000, 1_000_000]);
    const at = () => draw.whole(-spread, spread);
    const flat = draw.likely(0.2);
    const places = Array.from({ length: corners }, () => ({
      x: at(),
      y: flat ? 0 : at(),
      rise: 0,
    }));
    const chain = { ...chainOf(places, false, 32), closed: draw.likely(0.5) };
    for (let k = 0; k < 5; k++) {
      const box = boxOfEdge({ x: at(), y: at() }, { x: at(), y: at() });
      const reach = draw.oneOf([0, 1, spread / 10]);
      const found: number[] = [];
      visitEdgesNear(chain, box, reach, (edge) => found.push(edge));
      const all = Array.from({ length: edgeCount(chain) }, (_, i) => i);
      const near = all.filter((i) =>
        boxesMeet(boxOfEdge(edgeStart(chain, i), edgeEnd(chain, i)), box, reach),
      );
      expect(found.sort((a, b) => a - b)).toEqual(near);
    }
  }
});

test('an edge may pass a box by though its own box meets it', () => {
  const slanted = chainOf(
    [
      [0, 0],
      [100, 100],
    ].map(([x, y]) => ({ x: x!, y: y!, rise: 0 })),
    false,
    32,
  );
  expect(passesThroughBox(slanted, { minX: 60, minY: 10, maxX: 80, maxY: 40 }, 0)).toBe(false);
  expect(passesThroughBox(slanted, { minX: 60, minY: 10, maxX: 80, maxY: 40 }, 20)).toBe(true);
  expect(passesThroughBox(slanted, { minX: 60, minY: 10, maxX: 80, maxY: 60 }, 0)).toBe(true);
});
