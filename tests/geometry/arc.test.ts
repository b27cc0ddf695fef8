import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcLength,
  arcOf,
  flattenArc,
  flattenCircle,
  segmentArea,
} from '../../src/geometry/arc.ts';
import { doubledArea } from '../../src/geometry/area.ts';
import { distanceToEdge } from '../../src/geometry/locate.ts';
import type { Point } from '../../src/geometry/point.ts';
import { FOOT } from '../../src/units/grid.ts';

const origin = { x: 0, y: 0 };

describe('the circle of an arc', () => {
  test('chord 24, rise 8: radius 13 (worked by hand: (144 + 64) / 16)', () => {
    const arc = arcOf(origin, { x: 24, y: 0 }, 8);
    expect(arc.radius).toBeCloseTo(13, 12);
    // Going east with the arc to the right, below: the centre lies above the chord.
    expect(arc.cx).toBeCloseTo(12, 12);
    expect(arc.cy).toBeCloseTo(5, 12);
    expect(arc.sweep).toBeCloseTo(2 * Math.asin(12 / 13), 12);
  });

  test('a negative rise lies to the left and turns clockwise', () => {
    const arc = arcOf(origin, { x: 24, y: 0 }, -8);
    expect(arc.cy).toBeCloseTo(-5, 12);
    expect(arc.sweep).toBeCloseTo(-2 * Math.asin(12 / 13), 12);
  });

  test('half a circle', () => {
    const arc = arcOf(origin, { x: 0, y: 20 }, 10);
    expect(arc.radius).toBe(10);
    expect(arc.sweep).toBeCloseTo(Math.PI, 14);
    expect(arcLength(arc)).toBeCloseTo(10 * Math.PI, 12);
    expect(segmentArea(arc)).toBeCloseTo(50 * Math.PI, 12);
  });

  test('a rise of more than half the chord goes more than half way round', () => {
    const arc = arcOf(origin, { x: 6, y: 0 }, 9);
    expect(arc.radius).toBeCloseTo(5, 12);
    expect(arc.sweep).toBeCloseTo(2 * Math.PI - 2 * Math.asin(0.6), 12);
  });
});

const away = fc.integer({ min: -40 * FOOT, max: 40 * FOOT });
const arcs = fc
  .record({
    x: away,
    y: away,
    share: fc.double({ min: 0.01, max: 1.6, noNaN: true }),
    left: fc.boolean(),
  })
  .filter(({ x, y }) => Math.hypot(x, y) > FOOT)
  .map(({ x, y, share, left }) => ({
    to: { x, y },
    rise: (left ? -1 : 1) * Math.max(1, Math.round((share * Math.hypot(x, y)) / 2)),
  }));

describe('flattening', () => {
  test('every point lies on the circle to rounding, every chord within the tolerance', () => {
    fc.assert(
      fc.property(arcs, ({ to, rise }) => {
        const arc = arcOf(origin, to, rise);
        const points = [origin, ...flattenArc(origin, to, rise, 32), to];
        for (const { x, y } of points) {
          expect(Math.abs(Math.hypot(x - arc.cx, y - arc.cy) - arc.radius)).toBeLessThan(0.8);
        }
        for (let i = 1; i < points.length; i++) {
          const a = points[i - 1]!;
          const b = points[i]!;
          const chord = Math.hypot(b.x - a.x, b.y - a.y);
          const sagitta = arc.radius - Math.sqrt(arc.radius ** 2 - (chord / 2) ** 2);
          expect(sagitta).toBeLessThan(32 + 1);
        }
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  test('the chords and the exact segment enclose the same area, but for what the chords cut off', () => {
    fc.assert(
      fc.property(arcs, ({ to, rise }) => {
        const arc = arcOf(origin, to, rise);
        const chords = doubledArea([origin, ...flattenArc(origin, to, rise, 4), to]) / 2;
        const short = Math.abs(segmentArea(arc) - chords);
        expect(short).toBeLessThan(arcLength(arc) * 5);
      }),
      { seed: 6, numRuns: 300 },
    );
  });

  test('a quarter turn of the arc is a quarter turn of its points', () => {
    fc.assert(
      fc.property(arcs, ({ to, rise }) => {
        const turned = flattenArc(origin, { x: -to.y, y: to.x }, rise, 32);
        const plain = flattenArc(origin, to, rise, 32);
        expect(turned).toEqual(plain.map(({ x, y }): Point => ({ x: -y + 0, y: x })));
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  test('a straight edge and an edge without length have no points between', () => {
    expect(flattenArc(origin, { x: 9, y: 9 }, 0, 32)).toEqual([]);
    expect(flattenArc(origin, origin, 5, 32)).toEqual([]);
  });

  test('a circle: counter-clockwise, and the same ring turned by a quarter', () => {
    const points = flattenCircle({ x: 0, y: 0 }, 32_513, 32);
    expect(points.length % 4).toBe(0);
    expect(doubledArea(points)).toBeGreaterThan(0);
    const turned = points.map(({ x, y }) => `${-y + 0} ${x + 0}`);
    expect(new Set(turned)).toEqual(new Set(points.map(({ x, y }) => `${x + 0} ${y + 0}`)));
    const off = points.map((p, i) => distanceToEdge(origin, p, points[(i + 1) % points.length]!));
    expect(Math.min(...off)).toBeGreaterThan(32_513 / 2 - 33);
  });
});
