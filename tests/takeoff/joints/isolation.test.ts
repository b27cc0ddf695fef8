import { expect, test } from 'vitest';
import type { Practices } from '../../../src/job/job.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { jobOf, post, shape, wall } from '../outline/site.ts';

//   ====== house =======
//   +-----------------+
//   |           o     |------  patio from 2 to 8 ft
//   |                 |------
//   +---+       +-----+
//       | steps |
const site = jobOf([
  shape('pad', 'pad', [
    [0, 0],
    [12, 0],
    [12, 10],
    [0, 10],
  ]),
  shape('existing-slab', 'patio', [
    [12, 2],
    [20, 2],
    [20, 8],
    [12, 8],
  ]),
  wall('house', [
    [-2, 10],
    [14, 10],
    [14, 24],
    [-2, 24],
  ]),
  shape('steps', 'steps', [
    [3, -3],
    [7, -3],
    [7, 1],
    [3, 1],
  ]),
  post('post', 6, 6, 1),
]);

function strips(change: Partial<Practices['isolation']>) {
  const isolation = { ...site.practices.isolation, ...change };
  return takeoff({ ...site, practices: { ...site.practices, isolation } });
}

test('goes on all that stays, once round each thing', () => {
  const { joints } = strips({});
  expect(joints!.isolation.map(({ kind, length }) => [kind, Math.round(length / FOOT)])).toEqual([
    // The steps stand 1 ft into the pad: 1 + 4 + 1.
    ['steps', 6],
    ['existing-slab', 6],
    ['wall', 12],
    ['block-out', 3],
  ]);
  expect(joints!.total / FOOT).toBeCloseTo(24 + Math.PI, 4);
  expect(joints!.pieces).toBe(3);
});

test.each([
  [{ existing: false }, 18 + Math.PI],
  [{ wall: false }, 12 + Math.PI],
  [{ steps: false }, 18 + Math.PI],
  [{ blockOut: false }, 24],
] as const)('%o leaves those edges out', (change, feet) => {
  expect(strips(change).joints!.total / FOOT).toBeCloseTo(feet, 4);
});

//   | p |        the patio goes round the pad's first corner: one strip, bent
//   | a |  pad
//   | t +------
//   | i   o
test('goes on round the corner where the ring was opened', () => {
  const bent = jobOf([
    site.features[0]!,
    shape('existing-slab', 'patio', [
      [-4, -4],
      [5, -4],
      [5, 0],
      [0, 0],
      [0, 6],
      [-4, 6],
    ]),
  ]);
  expect(takeoff(bent).joints!.isolation.map(({ length }) => length / FOOT)).toEqual([11]);
});

test('a length that comes out even takes no piece more', () => {
  expect(strips({ blockOut: false, pieceLength: 8 * FOOT }).joints!.pieces).toBe(3);
  expect(strips({ blockOut: false, pieceLength: 8 * FOOT - 1 }).joints!.pieces).toBe(4);
});

test('none chosen: nothing, and that is said', () => {
  const { joints, notes } = strips({ existing: false, wall: false, steps: false, blockOut: false });
  expect(joints).toMatchObject({ isolation: [], total: 0, pieces: 0 });
  expect(notes.map(({ code }) => code)).toContain('strip-none');
});

test('a piece without length: withheld', () => {
  const { joints, notes } = strips({ pieceLength: 0 });
  expect(joints?.pieces).toBeUndefined();
  expect(notes.find(({ code }) => code === 'strip-piece-zero')?.weight).toBe('stop');
});
