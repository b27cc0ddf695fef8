import { describe, expect, test } from 'vitest';
import type { Feature } from '../../../src/job/job.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, type Places, shape, utilityLine, wall } from '../outline/site.ts';
import { staked } from './staked.ts';

const pad = shape('pad', 'pad', [
  [0, 0],
  [12, 0],
  [12, 10],
  [0, 10],
]);

const box = (x: number, y: number, wide: number, deep: number): Places => [
  [x, y],
  [x + wide, y],
  [x + wide, y + deep],
  [x, y + deep],
];

/** What holds the front edge, y = 0, with the pour above it. */
function front(...features: readonly Feature[]) {
  const { stakes } = staked(jobOf([pad, ...features]));
  return stakes!.held.filter(({ run }) => run === 'R1');
}

const hows = (held: ReturnType<typeof front>) => [...new Set(held.map(({ how }) => how))];

describe('where no stake can be driven behind a form, it is held', () => {
  test('off a wall that stands near, by a spreader to it', () => {
    // Roots all along the edge, and a wall 2 ft off.
    const roots = shape('no-stake-zone', 'roots', box(-1, -5, 14, 4.99));
    const shed = wall('shed', box(-1, -4, 14, 2));
    const held = front(roots, shed);
    expect(held.length).toBe(5);
    expect(hows(held)).toEqual(['spreader']);
    expect(held[0]).toMatchObject({ why: 'no-stake-zone', feature: 'roots' });
    for (const { to, along } of held) expect(to).toEqual({ x: along, y: -2 * FOOT });
    // An open wall line does as well; one farther off than 3 ft doesn't, and the kicker can't go through it.
    const line = (y: number) =>
      wall(
        'line',
        [
          [-1, y],
          [13, y],
        ],
        { closed: false },
      );
    expect(hows(front(roots, line(-2.5)))).toEqual(['spreader']);
    expect(hows(front(roots, line(-3.5)))).toEqual(['inside-stake']);
  });

  test('by a kicker from beyond what is in the way, where that isn’t too far', () => {
    const roots = (deep: number) =>
      shape('no-stake-zone', 'roots', box(-1, -deep, 14, deep - 0.01));
    const held = front(roots(2));
    expect(hows(held)).toEqual(['kicker']);
    // The side of its stake touches the roots' edge: half a stake farther.
    for (const { to, along } of held) expect(to).toEqual({ x: along, y: -2 * FOOT - 0.75 * INCH });
    // 4 ft less half a stake is the farthest that roots may go.
    expect(hows(front(roots(3.9)))).toEqual(['kicker']);
    expect(hows(front(roots(3.95)))).toEqual(['inside-stake']);
    // No nearer than a foot: less has no slant.
    expect(front(roots(0.5))[0]!.to!.y).toBe(-FOOT);
  });

  test('by a stake inside, to be pulled, where nothing is buried there', () => {
    const held = front(shape('no-stake-zone', 'roots', box(-1, -9, 14, 8.99)));
    expect(hows(held)).toEqual(['inside-stake']);
    for (const { to, along, at } of held) {
      expect(to).toEqual({ x: along, y: 0.75 * INCH });
      expect(at).toEqual({ x: along, y: -2.25 * INCH });
    }
  });

  test('by weight, where neither side can be driven', () => {
    const held = front(shape('no-stake-zone', 'tank', box(-1, -9, 14, 12)));
    expect(hows(held)).toEqual(['weight']);
    expect(held[0]).not.toHaveProperty('to');
  });

  test('on an old slab too near for the board: over it by a kicker, or else from inside', () => {
    // 1 in from the face: no room for a board of 1 1/2 in, so none for a strut.
    const slab = (deep: number) => shape('existing-slab', 'old', box(-1, -deep, 14, deep - 1 / 12));
    expect(hows(front(slab(2)))).toEqual(['kicker']);
    expect(hows(front(slab(6)))).toEqual(['inside-stake']);
    // 2 in away the board is wedged off its side.
    const away = shape('existing-slab', 'old', box(-1, -6, 14, 6 - 2 / 12));
    expect(hows(front(away))).toEqual(['spreader']);
    expect(front(away)[0]!.why).toBe('existing-slab');
  });

  //   +----+  +----+    a slot 8 in wide, boards of 1 1/2 in on either side: a strut across it holds both
  //   |    |__|    |
  test('across a slot, by a spreader to the form opposite', () => {
    const slot = (wide: number) =>
      jobOf([
        shape('pad', 'pad', [
          [0, 0],
          [10, 0],
          [10, 8],
          [5 + wide / 12, 8],
          [5 + wide / 12, 2],
          [5, 2],
          [5, 8],
          [0, 8],
        ]),
        // Nothing can be driven in it.
        shape('no-stake-zone', 'pipe', box(5, 2, wide / 12, 6)),
      ]);
    const held = staked(slot(8)).stakes!.held.filter(({ run }) => run === 'R4' || run === 'R6');
    expect(held.length).toBeGreaterThan(4);
    expect(hows(held)).toEqual(['spreader']);
    // Too narrow for the boards themselves.
    const narrow = staked(slot(2)).stakes!.held.filter(({ run }) => run === 'R4');
    expect(hows(narrow)).toEqual(['inside-stake']);
  });

  test('along a wall that can’t be poured against, off that wall', () => {
    const skirting = wall(
      'skirting',
      [
        [0, 0],
        [12, 0],
      ],
      { closed: false, pourAgainst: false },
    );
    const held = front(skirting);
    expect(hows(held)).toEqual(['spreader']);
    expect(held[0]!.why).toBe('no-room');
  });
});

describe('buried lines', () => {
  const line = utilityLine('gas', [
    [-20, -1],
    [30, -1],
  ]);

  test('nothing is driven within the tolerance on either side: half a stake from its side', () => {
    // 1 ft off the front edge: no stake behind it; kickers come from 2 ft beyond the line, or 3 ft 3/4 in off the form.
    const { stakes, notes } = staked(jobOf([pad, line]));
    const held = stakes!.held.filter(({ run }) => run === 'R1');
    expect(held.map(({ how, why, feature }) => [how, why, feature])).toEqual(
      held.map(() => ['kicker', 'utility-line', 'gas']),
    );
    expect(held).toHaveLength(5);
    for (const { to } of held) expect(to!.y).toBe(-3 * FOOT - 0.75 * INCH);
    const note = notes.find(({ code }) => code === 'dig-by-hand')!;
    expect(note.features).toEqual(['gas']);
    expect(notes.map(({ code }) => code)).toContain('call-before-digging');
    // The sides that run up to it have their first stake beyond the tolerance.
    const side = stakes!.stakes.filter(({ run }) => run === 'R2' || run === 'R4');
    expect(Math.min(...side.map(({ at }) => at.y))).toBeGreaterThanOrEqual(FOOT + 0.75 * INCH);
  });

  test('with no tolerance it still isn’t driven into', () => {
    const under = utilityLine('gas', [
      [6, -20],
      [6, 30],
    ]);
    const { stakes } = staked(jobOf([pad, under]), { utilityTolerance: 0 });
    expect(stakes!.held).toEqual([]);
    for (const { at } of stakes!.stakes) {
      expect(Math.abs(at.x - 6 * FOOT)).toBeGreaterThanOrEqual(0.75 * INCH);
    }
  });

  test('change nothing about the pour, and one far off isn’t spoken of', () => {
    const far = utilityLine('far', [
      [-20, -60],
      [30, -60],
    ]);
    const bare = staked(jobOf([pad]));
    const lined = staked(jobOf([pad, far]));
    expect(lined.pour).toEqual(bare.pour);
    expect(lined.stakes).toEqual(bare.stakes);
    expect(lined.notes.map(({ code }) => code)).not.toContain('dig-by-hand');
    expect(staked(jobOf([pad, line])).pour).toEqual(bare.pour);
  });
});

describe('kickers', () => {
  test('at every stake where the form stands higher than the practice says', () => {
    const low = staked(jobOf([pad]), { formBoard: '2x6' });
    expect(low.stakes!.stakes.some(({ kicker }) => kicker)).toBe(false);
    // 7 1/4 in and the gap of 1/2 in.
    const high = staked(jobOf([pad]), { formBoard: '2x8' });
    expect(high.stakes!.stakes.every(({ kicker }) => kicker)).toBe(true);
    expect(high.notes.map(({ code }) => code)).toContain('kickers-high');
    const plain = staked(jobOf([pad]), { formBoard: '2x8', kickersAbove: 7.75 * INCH });
    expect(plain.stakes!.stakes.some(({ kicker }) => kicker)).toBe(false);
  });
});
