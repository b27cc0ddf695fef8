import { expect, test } from 'vitest';
import { carriedTo } from '../../../src/sketch/paint/carried.ts';
import { toScreen, zoomAt } from '../../../src/sketch/view.ts';

const SIZE = { width: 300, height: 200 };
const PAINTED = { center: { x: 4000, y: -1000 }, gridPerPx: 20 };

/** Where the transform puts a spot of the painted picture. */
function carried(transform: string, spot: { x: number; y: number }) {
  const [x = 0, y = 0, scale = 1] = [...transform.matchAll(/-?[\d.]+(?:e-?\d+)?/g)].map(Number);
  return { x: x + scale * spot.x, y: y + scale * spot.y };
}

test.each([
  ['moved aside', { center: { x: 4600, y: -700 }, gridPerPx: 20 }],
  ['looked at closer', zoomAt(PAINTED, SIZE, { x: 30, y: 170 }, 1.7)],
  ['from farther off', zoomAt(PAINTED, SIZE, { x: 250, y: 10 }, 0.4)],
])('a picture carried along lies where it would be painted: %s', (_, view) => {
  const transform = carriedTo(PAINTED, view, SIZE);
  for (const place of [
    { x: 0, y: 0 },
    { x: 5000, y: -2500 },
    { x: 4100, y: 900 },
  ]) {
    const there = carried(transform, toScreen(PAINTED, SIZE, place));
    const wanted = toScreen(view, SIZE, place);
    expect(there.x).toBeCloseTo(wanted.x, 6);
    expect(there.y).toBeCloseTo(wanted.y, 6);
  }
});
