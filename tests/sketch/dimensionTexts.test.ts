import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/marks.ts';
import { dimensionTexts } from '../../src/sketch/dimensionTexts.ts';

const GRID_PER_PX = 1000;

function text(part: Partial<Extract<Mark, { kind: 'text' }>>): Mark {
  return {
    kind: 'text',
    layer: 'dimensions',
    style: 'dimension',
    text: '12\'-4 1/2"',
    at: { x: 0, y: 0 },
    height: 2.5,
    angle: 0,
    anchor: 'middle',
    halo: true,
    measures: { feature: 'pad', corner: 'c1' },
    ...part,
  };
}

describe('boxes of dimension texts', () => {
  test('stand on the line of the letters, as wide as the text', () => {
    const [box] = dimensionTexts([text({})], GRID_PER_PX);
    expect(box).toMatchObject({ feature: 'pad', corner: 'c1', angle: 0 });
    // Capitals of 2.5 mm are 9.45 px of 96 to the inch.
    expect(box?.halfHeight).toBeCloseTo(4724, -1);
    expect(box?.middle).toEqual({ x: 0, y: box?.halfHeight });
    expect(box?.halfLength).toBeGreaterThan(25 * GRID_PER_PX);
  });

  test('start or end at their anchor, turned with the text', () => {
    const [start] = dimensionTexts([text({ anchor: 'start' })], GRID_PER_PX);
    expect(start?.middle.x).toBeCloseTo(start?.halfLength ?? 0, 6);
    const [upward] = dimensionTexts([text({ anchor: 'end', angle: Math.PI / 2 })], GRID_PER_PX);
    expect(upward?.middle.x).toBeCloseTo(-(upward?.halfHeight ?? 0), 6);
    expect(upward?.middle.y).toBeCloseTo(-(upward?.halfLength ?? 0), 6);
  });

  test('only of what can be typed anew', () => {
    const { measures: _, ...plain } = text({}) as Extract<Mark, { kind: 'text' }>;
    expect(dimensionTexts([plain], GRID_PER_PX)).toEqual([]);
  });
});
