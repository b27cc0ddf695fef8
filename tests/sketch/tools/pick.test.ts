import { describe, expect, test } from 'vitest';
import { takeUp } from '../../../src/sketch/tools/hand.ts';
import type { Effect } from '../../../src/sketch/tools/tool.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, outline, PAD, POST } from '../jobs.ts';
import { commits, play, pointer, sceneOf, swipe, tap } from './scene.ts';

const job = jobOf(PAD, POST);
const free = sceneOf(job);
const onPad = sceneOf(job, { feature: 'pad' });

function previews(effects: readonly Effect[]) {
  return effects.filter((effect) => effect.do === 'preview');
}

describe('a tap', () => {
  test('selects a corner, an edge by the corner it leaves, a shape, or nothing', () => {
    const selected = (x: number, y: number) => play(takeUp('pick'), free, tap(x, y)).effects;
    expect(selected(20, 10)).toEqual([
      { do: 'select', selection: { feature: 'pad', corner: 'pad-2' } },
    ]);
    expect(selected(20, 4)).toEqual([
      { do: 'select', selection: { feature: 'pad', corner: 'pad-1' } },
    ]);
    expect(selected(5, 5)).toEqual([{ do: 'select', selection: { feature: 'post' } }]);
    expect(selected(-3, 5)).toEqual([{ do: 'select', selection: null }]);
  });

  test('on a dimension asks for its length', () => {
    const text = {
      feature: 'pad',
      corner: 'pad-1',
      middle: { x: 22 * FOOT, y: 5 * FOOT },
      halfLength: FOOT,
      halfHeight: FOOT / 3,
      angle: Math.PI / 2,
    };
    const { effects } = play(takeUp('pick'), sceneOf(job, null, [text]), tap(22, 5));
    expect(effects).toEqual([
      { do: 'select', selection: { feature: 'pad', corner: 'pad-1' } },
      { do: 'ask-length' },
    ]);
  });
});

describe('dragging a corner', () => {
  test('previews on the way and commits once, on whole steps', () => {
    const { hand, effects } = play(takeUp('pick'), free, swipe([20, 10], [22.02, 11.01]));
    expect(previews(effects).length).toBeGreaterThan(1);
    expect(commits(effects)).toEqual([
      { do: 'move-corner', feature: 'pad', corner: 'pad-2', to: { x: 22 * FOOT, y: 11 * FOOT } },
    ]);
    expect(hand.idle).toBe(true);
  });

  test('keeps the pointer’s own distance from the corner', () => {
    const { effects } = play(takeUp('pick'), free, swipe([20.2, 10.2], [22.2, 12.2]));
    expect(commits(effects)).toMatchObject([{ to: { x: 22 * FOOT, y: 12 * FOOT } }]);
  });

  test('back where it was changes nothing', () => {
    const out = swipe([20, 10], [22, 12]).slice(0, -1);
    const back = [pointer('move', 20, 10), pointer('release', 20, 10)];
    const { effects } = play(takeUp('pick'), free, [...out, ...back]);
    expect(commits(effects)).toEqual([]);
    expect(effects[effects.length - 1]).toEqual({ do: 'discard' });
  });

  test('a second finger in the middle of it voids it', () => {
    const begun = swipe([20, 10], [22, 12]).slice(0, -1);
    const { hand, effects } = play(takeUp('pick'), free, [...begun, { kind: 'interrupt' }]);
    expect(commits(effects)).toEqual([]);
    expect(effects[effects.length - 1]).toEqual({ do: 'discard' });
    expect(hand.idle).toBe(true);
  });

  test('onto another shape’s edge keeps it there', () => {
    const slab = outline('slab', 'existing-slab', [
      [24, 0],
      [34, 0],
      [34, 20],
      [24, 20],
    ]);
    const scene = sceneOf(jobOf(PAD, slab));
    const { effects } = play(takeUp('pick'), scene, swipe([20, 10], [24.1, 8]));
    expect(commits(effects)).toMatchObject([
      {
        do: 'move-corner',
        to: { x: 24 * FOOT, y: 8 * FOOT },
        on: { feature: 'slab', corner: 'slab-3', t: 0.6 },
      },
    ]);
  });

  test('onto an edge that rests on this corner: it lies there, but neither holds the other', () => {
    const slab = outline('slab', 'existing-slab', [
      [24, 0],
      [34, 0],
      [34, 20],
      [24, 20],
    ]);
    if (slab.shape.form !== 'outline') throw new Error('an outline was made');
    const [first, ...rest] = slab.shape.corners;
    if (!first) throw new Error('it has corners');
    const resting = { ...first, x: 20 * FOOT, on: { feature: 'pad', corner: 'pad-1', t: 0 } };
    const shape = { ...slab.shape, corners: [resting, ...rest] };
    const scene = sceneOf(jobOf(PAD, { ...slab, kind: 'existing-slab', shape }));
    const { effects } = play(takeUp('pick'), scene, swipe([20, 10], [24, 20]));
    const [command] = commits(effects);
    expect(command).toMatchObject({ do: 'move-corner', to: { x: 24 * FOOT, y: 20 * FOOT } });
    expect(command && 'on' in command).toBe(false);
  });

  test('with a finger only when its shape is selected; else the view moves', () => {
    const loose = play(takeUp('pick'), free, swipe([20, 10], [22, 12], true)).effects;
    expect(commits(loose)).toEqual([]);
    expect(loose.every((effect) => effect.do === 'look')).toBe(true);
    const held = play(takeUp('pick'), onPad, swipe([20, 10], [22, 12], true)).effects;
    expect(commits(held)).toMatchObject([{ do: 'move-corner', corner: 'pad-2' }]);
  });
});

describe('dragging a shape', () => {
  test('moves it by whole steps when it is selected', () => {
    const { effects } = play(takeUp('pick'), onPad, swipe([10, 5], [13.01, 7.02]));
    expect(commits(effects)).toEqual([
      { do: 'move-feature', feature: 'pad', by: { x: 3 * FOOT, y: 2 * FOOT } },
    ]);
  });

  test('moves the view when it is not', () => {
    const { effects } = play(takeUp('pick'), free, swipe([10, 5], [13, 7]));
    expect(effects.map((effect) => effect.do)).toEqual(['look', 'look', 'look', 'look']);
  });

  test('a round one is moved by its middle', () => {
    const scene = sceneOf(job, { feature: 'post' });
    const { effects } = play(takeUp('pick'), scene, swipe([5, 5], [7, 5]));
    expect(commits(effects)).toEqual([
      { do: 'move-feature', feature: 'post', by: { x: 2 * FOOT, y: 0 } },
    ]);
  });
});

describe('holding', () => {
  test('on an edge puts a corner there; the release after it does no more', () => {
    const held = [pointer('press', 12, 0, true), pointer('hold', 12, 0, true)];
    const { effects } = play(takeUp('pick'), free, [...held, pointer('release', 12, 0, true)]);
    expect(commits(effects)).toEqual([
      { do: 'insert-corner', feature: 'pad', after: 'pad-0', at: { x: 12 * FOOT, y: 0 } },
    ]);
    expect(effects.filter((effect) => effect.do === 'select')).toEqual([
      { do: 'select', selection: { feature: 'pad' } },
    ]);
  });

  test('a double click does the same; on a corner or inside it does nothing', () => {
    const twice = (x: number, y: number) =>
      commits(play(takeUp('pick'), free, [pointer('hold', x, y)]).effects);
    expect(twice(12, 0)).toHaveLength(1);
    expect(twice(20, 10)).toEqual([]);
    expect(twice(10, 5)).toEqual([]);
  });
});

describe('keys', () => {
  const key = (name: 'Delete' | 'Enter' | 'ArrowRight' | 'ArrowDown', far = false) =>
    ({ kind: 'key', key: name, far }) as const;

  test('Delete takes away the corner, or the shape, or nothing', () => {
    const onCorner = sceneOf(job, { feature: 'pad', corner: 'pad-1' });
    expect(commits(play(takeUp('pick'), onCorner, [key('Delete')]).effects)).toEqual([
      { do: 'remove-corner', feature: 'pad', corner: 'pad-1' },
    ]);
    expect(commits(play(takeUp('pick'), onPad, [key('Delete')]).effects)).toEqual([
      { do: 'remove-feature', feature: 'pad' },
    ]);
    expect(play(takeUp('pick'), free, [key('Delete')]).effects).toEqual([]);
  });

  test('arrows nudge what is selected by one step, ten with Shift; else they look aside', () => {
    const onCorner = sceneOf(job, { feature: 'pad', corner: 'pad-1' });
    expect(commits(play(takeUp('pick'), onCorner, [key('ArrowRight')]).effects)).toMatchObject([
      { do: 'move-corner', to: { x: 20 * FOOT + 3 * INCH, y: 0 } },
    ]);
    expect(commits(play(takeUp('pick'), onPad, [key('ArrowDown', true)]).effects)).toEqual([
      { do: 'move-feature', feature: 'pad', by: { x: 0, y: -30 * INCH } },
    ]);
    const looked = play(takeUp('pick'), free, [key('ArrowRight')]).effects;
    expect(looked).toMatchObject([{ do: 'look' }]);
  });

  test('Enter asks for the length of the selected edge', () => {
    const onCorner = sceneOf(job, { feature: 'pad', corner: 'pad-1' });
    expect(play(takeUp('pick'), onCorner, [key('Enter')]).effects).toEqual([{ do: 'ask-length' }]);
    expect(play(takeUp('pick'), onPad, [key('Enter')]).effects).toEqual([]);
  });
});
