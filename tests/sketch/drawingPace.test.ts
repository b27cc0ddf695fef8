import { expect, test } from 'vitest';
import { detailFor, UNKNOWN_COST, withCost } from '../../src/sketch/drawingPace.ts';

test('at rest everything is drawn, whatever it costs', () => {
  expect(detailFor(true, { full: [500, 500], plain: [100, 100] })).toBe('full');
  expect(detailFor(true, UNKNOWN_COST)).toBe('full');
});

test('on the move as much as fits in half a frame', () => {
  expect(detailFor(false, UNKNOWN_COST)).toBe('full');
  expect(detailFor(false, { full: [7, 30], plain: [] })).toBe('full');
  expect(detailFor(false, { full: [20, 20], plain: [3, 3] })).toBe('plain');
  expect(detailFor(false, { full: [20, 20], plain: [] })).toBe('plain');
  expect(detailFor(false, { full: [60, 60], plain: [25, 25] })).toBe('last');
});

test('one slow time is forgiven, two are believed; older ones are forgotten', () => {
  const once = withCost(UNKNOWN_COST, 'full', 40);
  expect(detailFor(false, once)).toBe('full');
  const twice = withCost(once, 'full', 40);
  expect(detailFor(false, twice)).toBe('plain');
  expect(withCost(twice, 'full', 5).full).toEqual([5, 40]);
});
