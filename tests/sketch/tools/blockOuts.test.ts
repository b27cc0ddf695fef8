import { describe, expect, test } from 'vitest';
import { takeUp } from '../../../src/sketch/tools/hand.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, PAD } from '../jobs.ts';
import { commits, play, pointer, sceneOf, swipe, tap } from './scene.ts';

const scene = sceneOf(jobOf(PAD));

describe('round', () => {
  test('a drag from the middle outward previews and adds it', () => {
    const { hand, effects } = play(takeUp('block-out-round'), scene, swipe([5, 5], [6, 5]));
    expect(effects.some((effect) => effect.do === 'preview')).toBe(true);
    expect(commits(effects)).toMatchObject([
      {
        do: 'add-feature',
        feature: {
          kind: 'block-out',
          shape: { form: 'round', center: { x: 5 * FOOT, y: 5 * FOOT }, diameter: 2 * FOOT },
        },
      },
    ]);
    expect(hand.idle).toBe(true);
  });

  test('a tap places the middle, a typed diameter adds it', () => {
    const placed = play(takeUp('block-out-round'), scene, tap(5, 5)).hand;
    expect(placed.show().asks).toEqual({ for: 'diameter' });
    const { effects } = placed.step(
      { kind: 'typed', typed: { what: 'diameter', diameter: 4 * INCH } },
      scene,
    );
    expect(commits(effects)).toMatchObject([{ feature: { shape: { diameter: 4 * INCH } } }]);
  });

  test('a diameter of nothing adds nothing and keeps the middle', () => {
    const placed = play(takeUp('block-out-round'), scene, tap(5, 5)).hand;
    const after = placed.step({ kind: 'typed', typed: { what: 'diameter', diameter: 0 } }, scene);
    expect(commits(after.effects)).toEqual([]);
    expect(after.hand.show().asks).toEqual({ for: 'diameter' });
  });

  test('a second tap sizes it', () => {
    const { effects } = play(takeUp('block-out-round'), scene, [...tap(5, 5), ...tap(5, 5.5)]);
    expect(commits(effects)).toMatchObject([{ feature: { shape: { diameter: FOOT } } }]);
  });
});

describe('square', () => {
  const corners = [
    { x: 5 * FOOT, y: 5 * FOOT },
    { x: 7 * FOOT, y: 5 * FOOT },
    { x: 7 * FOOT, y: 6 * FOOT },
    { x: 5 * FOOT, y: 6 * FOOT },
  ];

  test.each([
    ['lower left to upper right', swipe([5, 5], [7, 6])],
    ['upper right to lower left', swipe([7, 6], [5, 5])],
    ['by two taps', [...tap(5, 6), ...tap(7, 5)]],
  ])('%s: the same counter-clockwise outline', (_, inputs) => {
    const { effects } = play(takeUp('block-out-square'), scene, inputs);
    expect(commits(effects)).toMatchObject([
      { do: 'add-feature', feature: { kind: 'block-out', shape: { closed: true, corners } } },
    ]);
  });

  test('by sizes from its first corner, also to the left and down', () => {
    const placed = play(takeUp('block-out-square'), scene, tap(7, 6)).hand;
    const { effects } = placed.step(
      { kind: 'typed', typed: { what: 'sizes', across: -2 * FOOT, up: -FOOT } },
      scene,
    );
    expect(commits(effects)).toMatchObject([{ feature: { shape: { corners } } }]);
  });

  test('without a width nothing is added', () => {
    const flat = [pointer('press', 5, 5), pointer('move', 5, 8), pointer('release', 5, 8)];
    expect(commits(play(takeUp('block-out-square'), scene, flat).effects)).toEqual([]);
  });
});
