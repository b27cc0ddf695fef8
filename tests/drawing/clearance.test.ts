import { describe, expect, test } from 'vitest';
import {
  addBox,
  addLine,
  boxesOverlap,
  DIMENSION,
  EVERYTHING,
  emptyClearance,
  isBoxFree,
  isLineFree,
  lineMeetsBox,
  linesCross,
  TEXT,
  type TurnedBox,
} from '../../src/drawing/clearance.ts';
import { randomFrom } from './randomPads.ts';

function box(x: number, y: number, halfWidth: number, halfHeight: number, angle = 0): TurnedBox {
  return { x, y, halfWidth, halfHeight, cos: Math.cos(angle), sin: Math.sin(angle) };
}

/** Whether a place lies in a turned box, straight from its meaning. */
function holds(
  { x, y, halfWidth, halfHeight, cos, sin }: TurnedBox,
  at: { x: number; y: number },
): boolean {
  const u = (at.x - x) * cos + (at.y - y) * sin;
  const v = (at.y - y) * cos - (at.x - x) * sin;
  return Math.abs(u) < halfWidth && Math.abs(v) < halfHeight;
}

describe('boxes and lines', () => {
  test('a line through a turned box meets it, as points along it say', () => {
    const random = randomFrom(7);
    let met = 0;
    for (let i = 0; i < 4000; i++) {
      const one = box(
        random() * 10,
        random() * 10,
        0.2 + random() * 4,
        0.2 + random() * 2,
        random() * 7,
      );
      const a = { x: random() * 14 - 2, y: random() * 14 - 2 };
      const b = { x: random() * 14 - 2, y: random() * 14 - 2 };
      const seen = Array.from({ length: 400 }, (_, k) => ({
        x: a.x + ((b.x - a.x) * k) / 399,
        y: a.y + ((b.y - a.y) * k) / 399,
      })).some((at) => holds(one, at));
      // Points may miss a corner that is just clipped; they never see what isn't there.
      if (seen) {
        met++;
        expect(lineMeetsBox(a, b, one)).toBe(true);
      } else if (lineMeetsBox(a, b, one)) {
        const grown = { ...one, halfWidth: one.halfWidth + 0.1, halfHeight: one.halfHeight + 0.1 };
        expect(holds(grown, a) || lineMeetsBox(a, b, grown)).toBe(true);
        const shrunk = { ...one, halfWidth: one.halfWidth - 0.1, halfHeight: one.halfHeight - 0.1 };
        expect(lineMeetsBox(a, b, shrunk)).toBe(false);
      }
    }
    expect(met).toBeGreaterThan(500);
  });

  test('two turned boxes', () => {
    expect(boxesOverlap(box(0, 0, 2, 1), box(3.9, 0, 2, 1))).toBe(true);
    expect(boxesOverlap(box(0, 0, 2, 1), box(4.1, 0, 2, 1))).toBe(false);
    // A square on its corner reaches √2 far.
    expect(boxesOverlap(box(0, 0, 1, 1), box(2.3, 0, 1, 1, Math.PI / 4))).toBe(true);
    expect(boxesOverlap(box(0, 0, 1, 1), box(2.5, 0, 1, 1, Math.PI / 4))).toBe(false);
    // Crossed bars, none of whose corners is in the other.
    expect(boxesOverlap(box(0, 0, 5, 0.2), box(0, 0, 0.2, 5))).toBe(true);
  });

  test('lines that only meet at their ends don’t cross', () => {
    const [a, b, c] = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 5 },
    ];
    expect(linesCross(a, b, b, c)).toBe(false);
    expect(linesCross(a, c, b, { x: 0, y: 5 })).toBe(true);
  });
});

describe('the cells', () => {
  test('find what is there, wherever it lies, and only of the kinds asked for', () => {
    for (const extent of [1, 200, 40_000]) {
      const clearance = emptyClearance(extent);
      addLine(clearance, DIMENSION, { x: -300, y: -100 }, { x: 900, y: 500 });
      addBox(clearance, TEXT, box(-777, 333, 12, 2, 1));
      expect(isBoxFree(clearance, box(300, 200, 1, 1), EVERYTHING)).toBe(false);
      expect(isBoxFree(clearance, box(300, 200, 1, 1), TEXT)).toBe(true);
      expect(isBoxFree(clearance, box(300, 210, 1, 1), EVERYTHING)).toBe(true);
      expect(isBoxFree(clearance, box(-777, 333, 1, 1), TEXT)).toBe(false);
      expect(isLineFree(clearance, { x: 300, y: 0 }, { x: 300, y: 400 }, DIMENSION)).toBe(false);
      expect(isLineFree(clearance, { x: 300, y: 201 }, { x: 300, y: 400 }, DIMENSION)).toBe(true);
      expect(isLineFree(clearance, { x: -900, y: 333 }, { x: 0, y: 333 }, TEXT)).toBe(false);
    }
  });
});
