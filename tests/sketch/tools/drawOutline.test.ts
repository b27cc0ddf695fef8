import { describe, expect, test } from 'vitest';
import { alongBearing } from '../../../src/sketch/tools/drawOutline.ts';
import { type Hand, takeUp } from '../../../src/sketch/tools/hand.ts';
import type { Heading, ToolInput, Typed } from '../../../src/sketch/tools/tool.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { jobOf, PAD } from '../jobs.ts';
import { commits, play, pointer, sceneOf, tap } from './scene.ts';

const empty = sceneOf(jobOf());

function typed(what: Typed): ToolInput {
  return { kind: 'typed', typed: what };
}
function edge(feet: number, heading: Heading, degrees: number | null): ToolInput {
  return typed({ what: 'corner', length: feet * FOOT, heading, degrees });
}
function pathOf(hand: Hand) {
  return hand.show().path.map(({ x, y }) => [x / FOOT, y / FOOT]);
}
function added(inputs: readonly ToolInput[], tool: Hand = takeUp('draw-pad'), scene = empty) {
  const result = play(tool, scene, inputs);
  const [command] = commits(result.effects);
  if (command?.do !== 'add-feature') return null;
  const { shape } = command.feature;
  if (shape.form !== 'outline') return null;
  return { ...result, feature: command.feature, shape };
}
const enter: ToolInput = { kind: 'key', key: 'Enter', far: false };

describe('by taps', () => {
  const three = [...tap(0, 0), ...tap(8, 0), ...tap(8, 6)];

  test('a tap on the first corner closes and adds it once, with new ids', () => {
    const result = added([...three, ...tap(0.1, 0.1)]);
    expect(result?.feature).toMatchObject({ id: 'f100', kind: 'pad', name: '' });
    expect(result?.shape).toEqual({
      form: 'outline',
      closed: true,
      corners: [
        { id: 'c101', x: 0, y: 0, rise: 0 },
        { id: 'c102', x: 8 * FOOT, y: 0, rise: 0 },
        { id: 'c103', x: 8 * FOOT, y: 6 * FOOT, rise: 0 },
      ],
    });
    expect(result?.effects).toMatchObject([
      { do: 'commit' },
      { do: 'select', selection: { feature: 'f100' } },
      { do: 'finish' },
    ]);
    expect(result?.hand.idle).toBe(true);
  });

  test('the first corner closes only when there are three', () => {
    const { hand, effects } = play(takeUp('draw-pad'), empty, [
      ...tap(0, 0),
      ...tap(8, 0),
      ...tap(0.1, 0.1),
    ]);
    expect(commits(effects)).toEqual([]);
    expect(pathOf(hand)).toHaveLength(3);
  });

  test('Enter closes; with two corners it waits', () => {
    expect(added([...three, enter])?.shape.corners).toHaveLength(3);
    const { effects, hand } = play(takeUp('draw-pad'), empty, [...three.slice(0, 4), enter]);
    expect(effects).toEqual([]);
    expect(pathOf(hand)).toHaveLength(2);
  });

  test('Backspace takes back the last corner, down to none', () => {
    const back: ToolInput = { kind: 'key', key: 'Backspace', far: false };
    const two = play(takeUp('draw-pad'), empty, [...three, back]).hand;
    expect(pathOf(two)).toEqual([
      [0, 0],
      [8, 0],
    ]);
    expect(pathOf(play(two, empty, [back, back, back]).hand)).toEqual([]);
  });

  test('a corner lands where the finger is lifted, not where it came down', () => {
    const slid = [
      pointer('press', 3, 3, true),
      pointer('move', 4, 4, true),
      pointer('release', 4, 4, true),
    ];
    expect(pathOf(play(takeUp('draw-pad'), empty, slid).hand)).toEqual([[4, 4]]);
  });

  test('a tap on the same place twice makes no edge without length', () => {
    const { hand } = play(takeUp('draw-pad'), empty, [...tap(0, 0), ...tap(0, 0)]);
    expect(pathOf(hand)).toHaveLength(1);
  });

  test('a pinch in the middle keeps the corners placed, not the press', () => {
    const begun = [...three, pointer('press', 2, 9, true), { kind: 'interrupt' } as const];
    const { hand } = play(takeUp('draw-pad'), empty, begun);
    expect(pathOf(hand)).toHaveLength(3);
    expect(hand.idle).toBe(false);
  });

  test('a corner put on an edge stays on it', () => {
    const scene = sceneOf(jobOf(PAD));
    const onEdge = [...tap(4, 0), ...tap(4, -5), ...tap(9, -5), ...tap(9, 0), enter];
    const result = added(onEdge, takeUp('draw-existing-slab'), scene);
    expect(result?.shape.corners[0]?.on).toEqual({ feature: 'pad', corner: 'pad-0', t: 0.2 });
    expect(result?.shape.corners[1]?.on).toBeUndefined();
  });

  test('an outline that crosses itself is kept as drawn: the takeoff says where', () => {
    const bow = [...tap(0, 0), ...tap(8, 6), ...tap(8, 0), ...tap(0, 6), enter];
    expect(added(bow)?.shape.corners).toHaveLength(4);
  });
});

describe('a utility line', () => {
  const three = [...tap(0, 0), ...tap(8, 0), ...tap(8, 6)];

  test('ends open on Enter, from two corners on', () => {
    const result = added([...three.slice(0, 4), enter], takeUp('draw-utility-line'));
    expect(result?.feature).toMatchObject({ kind: 'utility-line', service: 'electric' });
    expect(result?.shape).toMatchObject({ closed: false, corners: [{ x: 0 }, { x: 8 * FOOT }] });
  });

  test('goes on through its first corner instead of closing there', () => {
    const { hand, effects } = play(takeUp('draw-utility-line'), empty, [
      ...three,
      ...tap(0.1, 0.1),
    ]);
    expect(commits(effects)).toEqual([]);
    expect(hand.show().path).toHaveLength(4);
    expect(hand.show()).toMatchObject({ closed: false });
    expect(hand.show().asks).toMatchObject({ canClose: false, canEndOpen: true });
    expect(added([...three, typed({ what: 'close' })], takeUp('draw-utility-line'))).toBeNull();
  });
});

describe('by typing', () => {
  test('a rectangle by directions from east', () => {
    const result = added([
      typed({ what: 'start', across: FOOT, up: 2 * FOOT }),
      edge(12, 'direction', 0),
      edge(8, 'direction', 90),
      edge(12, 'direction', 180),
      typed({ what: 'close' }),
    ]);
    expect(result?.shape.corners.map(({ x, y }) => [x / FOOT, y / FOOT])).toEqual([
      [1, 2],
      [13, 2],
      [13, 10],
      [1, 10],
    ]);
  });

  test('the same by turns from the last edge, left and right', () => {
    const { hand } = play(takeUp('draw-pad'), empty, [
      typed({ what: 'start', across: 0, up: 0 }),
      edge(12, 'left', 0),
      edge(8, 'left', 90),
      edge(3, 'right', 90),
    ]);
    expect(pathOf(hand)).toEqual([
      [0, 0],
      [12, 0],
      [12, 8],
      [15, 8],
    ]);
  });

  test('a length alone goes where the pointer aims; without an aim nothing is placed', () => {
    const start = typed({ what: 'start', across: 0, up: 0 });
    const aimed = play(takeUp('draw-pad'), empty, [
      start,
      pointer('move', 0.1, 5),
      edge(7, 'direction', null),
    ]).hand;
    expect(pathOf(aimed)).toEqual([
      [0, 0],
      [0, 7],
    ]);
    const blind = play(takeUp('draw-pad'), empty, [start, edge(7, 'direction', null)]).hand;
    expect(pathOf(blind)).toEqual([[0, 0]]);
  });

  test('quarter turns are exact, other angles are put on the grid once', () => {
    expect(alongBearing({ x: 1, y: 1 }, 97_537, 270)).toEqual({ x: 1, y: -97_536 });
    expect(alongBearing({ x: 0, y: 0 }, 10_000, -90)).toEqual({ x: 0, y: -10_000 });
    expect(alongBearing({ x: 0, y: 0 }, 10_000, 30)).toEqual({ x: 8660, y: 5000 });
  });
});

describe('a building line', () => {
  const wall = [...tap(0, 0), ...tap(8, 0), ...tap(8, 6)];

  test('Enter ends it open, a tap on the first corner closes it', () => {
    const open = added([...wall, enter], takeUp('draw-building-line'));
    expect(open?.shape).toMatchObject({ closed: false });
    expect(open?.shape.corners).toHaveLength(3);
    const closed = added([...wall, ...tap(0, 0)], takeUp('draw-building-line'));
    expect(closed?.shape).toMatchObject({ closed: true });
  });

  test('two corners are a wall', () => {
    const open = added([...wall.slice(0, 4), enter], takeUp('draw-building-line'));
    expect(open?.shape.corners).toHaveLength(2);
  });

  test('other outlines can’t end open', () => {
    expect(added([...wall, typed({ what: 'end-open' })])).toBeNull();
  });
});
