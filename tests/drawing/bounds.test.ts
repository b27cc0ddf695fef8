import { expect, test } from 'vitest';
import { boundsOf } from '../../src/drawing/bounds.ts';
import type { Mark } from '../../src/drawing/marks.ts';
import { circlePath } from '../../src/drawing/paths.ts';
import { textWidth } from '../../src/drawing/textSize.ts';

const scale = { gridPerMm: 100 };

test('nothing drawn has no bounds', () => {
  expect(boundsOf([], scale)).toBeUndefined();
});

test('a circle by its circle, not by its ends', () => {
  const mark: Mark = {
    kind: 'line',
    layer: 'edges',
    style: 'outline',
    path: circlePath({ x: 5000, y: 0 }, 1000),
  };
  const box = boundsOf([mark], scale)!;
  for (const [seen, expected] of [
    [box.minX, 4000],
    [box.maxX, 6000],
    [box.minY, -1000],
    [box.maxY, 1000],
  ] as const) {
    expect(seen).toBeCloseTo(expected, 6);
  }
});

test('a text by its letters, turned as it stands', () => {
  const mark: Mark = {
    kind: 'text',
    layer: 'labels',
    style: 'label',
    text: 'HOUSE',
    at: { x: 0, y: 0 },
    height: 3,
    angle: Math.PI / 2,
    anchor: 'start',
    halo: false,
  };
  const box = boundsOf([mark], scale)!;
  expect(box.maxY - box.minY).toBeCloseTo(textWidth('HOUSE', 3) * 100, 6);
  expect(box.minX).toBeLessThanOrEqual(-300);
  expect(box.maxX).toBeGreaterThanOrEqual(0);
});
