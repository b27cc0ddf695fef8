import { expect, test } from 'vitest';
import { handlesToPaint } from '../../../src/sketch/paint/handles.ts';

const SIZE = { width: 200, height: 200 };
const VIEW = { center: { x: 0, y: 0 }, gridPerPx: 10 };

/** Corners on a ring of so many pixels about the middle of the screen. */
function ring(count: number, pixels: number) {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return {
      id: `c${i}`,
      x: Math.round(10 * pixels * Math.cos(angle)),
      y: Math.round(10 * pixels * Math.sin(angle)),
    };
  });
}

test('every corner in sight has its handle, those out of sight have none', () => {
  expect(handlesToPaint(ring(4, 80), null, VIEW, SIZE)).toEqual([0, 1, 2, 3]);
  expect(handlesToPaint(ring(4, 500), null, VIEW, SIZE)).toEqual([]);
  const [left] = ring(1, 80);
  expect(handlesToPaint([left!, { id: 'far', x: 9000, y: 0 }], null, VIEW, SIZE)).toEqual([0]);
});

test('of a great many only as many as can be told apart, and the chosen one', () => {
  const corners = ring(2000, 80);
  const some = handlesToPaint(corners, null, VIEW, SIZE);
  expect(some.length).toBeGreaterThan(8);
  expect(some.length).toBeLessThan(60);
  const hidden = corners.findIndex((_, index) => index > 0 && !some.includes(index));
  expect(handlesToPaint(corners, `c${hidden}`, VIEW, SIZE)).toContain(hidden);
});

test('closer up every handle comes back', () => {
  const near = { center: { x: 800, y: 0 }, gridPerPx: 0.5 };
  const shown = handlesToPaint(ring(2000, 80), null, near, SIZE);
  expect(shown.length).toBeGreaterThan(10);
  const alone = ring(2000, 80).flatMap(({ x, y }, index) =>
    Math.abs(x - 800) < 64 && Math.abs(y) < 64 ? [index] : [],
  );
  expect(shown).toEqual(alone);
});
