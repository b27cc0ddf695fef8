import { expect, test } from 'vitest';
import { detailFor, UNKNOWN_COST, withCost } from '../../src/sketch/drawingPace.ts';

const FEW = 200;
const MANY = 3000;

test('when all is settled everything is drawn, whatever it costs', () => {
  expect(detailFor(true, { full: [500, 500], plain: [100, 100] }, MANY)).toBe('full');
  expect(detailFor(true, UNKNOWN_COST, FEW)).toBe('full');
});

test('on the move as much as fits in half a frame', () => {
  expect(detailFor(false, UNKNOWN_COST, FEW)).toBe('full');
  expect(detailFor(false, { full: [7, 30], plain: [] }, FEW)).toBe('full');
  expect(detailFor(false, { full: [20, 20], plain: [3, 3] }, FEW)).toBe('plain');
  expect(detailFor(false, { full: [14, 14], plain: [] }, FEW)).toBe('plain');
  expect(detailFor(false, { full: [60, 60], plain: [] }, FEW)).toBe('last');
  expect(detailFor(false, { full: [60, 60], plain: [25, 25] }, FEW)).toBe('last');
});

test('one slow time is forgiven, two are believed; older ones are forgotten', () => {
  const once = withCost(UNKNOWN_COST, 'full', 14);
  expect(detailFor(false, once, FEW)).toBe('full');
  const twice = withCost(once, 'full', 14);
  expect(detailFor(false, twice, FEW)).toBe('plain');
  expect(withCost(twice, 'full', 5).full).toEqual([5, 14]);
});

test('of a large drawing nothing is tried on the move that was not seen to fit', () => {
  expect(detailFor(false, UNKNOWN_COST, MANY)).toBe('last');
  expect(detailFor(false, { full: [60], plain: [] }, MANY)).toBe('last');
  expect(detailFor(false, { full: [14], plain: [] }, MANY)).toBe('plain');
  expect(detailFor(false, { full: [60], plain: [25] }, MANY)).toBe('last');
  expect(detailFor(false, { full: [7], plain: [] }, MANY)).toBe('full');
});
