import { expect, test } from 'vitest';
import { lengthsBesideMoving, lengthsOf } from '../../src/sketch/lengthsInHand.ts';
import { NOTHING } from '../../src/sketch/tools/machine.ts';
import { FOOT } from '../../src/units/grid.ts';
import { jobOf, PAD } from './jobs.ts';

test('one length for each edge in hand, the closing one when it closes', () => {
  const path = [
    { x: 0, y: 0 },
    { x: 4 * FOOT, y: 0 },
    { x: 4 * FOOT, y: 3 * FOOT },
  ];
  const open = lengthsOf({ ...NOTHING, path }, 'feet-inches');
  expect(open).toEqual(['4\'-0"', '3\'-0"']);
  const closed = lengthsOf({ ...NOTHING, path, closed: true }, 'feet-inches');
  expect(closed).toEqual(['4\'-0"', '3\'-0"', '5\'-0"']);
  expect(lengthsOf(NOTHING, 'metric')).toEqual([]);
});

test('the two edges at a dragged corner, each at its middle', () => {
  const moving = { feature: 'pad', corner: 'pad-0' };
  expect(lengthsBesideMoving(jobOf(PAD), { ...NOTHING, moving })).toEqual([
    { at: { x: 10 * FOOT, y: 0 }, text: '20\'-0"' },
    { at: { x: 0, y: 5 * FOOT }, text: '10\'-0"' },
  ]);
  expect(lengthsBesideMoving(jobOf(PAD), NOTHING)).toEqual([]);
});
