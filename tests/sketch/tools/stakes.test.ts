import { describe, expect, test } from 'vitest';
import type { PickedStake } from '../../../src/sketch/formLine.ts';
import { takeUp } from '../../../src/sketch/tools/hand.ts';
import type { Effect, Selection, ToolInput } from '../../../src/sketch/tools/tool.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { formLineFor, formsJob, handStake, withHandStakes } from '../forms.ts';
import { PAD } from '../jobs.ts';
import { commits, play, pointer, sceneOf, swipe, tap } from './scene.ts';

/**
 *  (0,10) +-----------------+ (20,10)   Planned stakes of the lower edge at 1, 4, 7… ft, outside it;
 *         |                 |           s1 pinned at (8,0), s2 taken away at (12,0).
 *   (0,0) +-+--+-o-+--x-+---+ (20,0)
 */
const job = withHandStakes(
  formsJob(PAD),
  handStake('s1', 'pinned', 8, 0),
  handStake('s2', 'removed', 12, 0),
);
const formLine = formLineFor(formsJob(PAD));
const withHand = formLineFor(job);
const PLANNED: PickedStake = { run: 'R1', along: 4 * FOOT };

function scene(picked?: PickedStake, hand = false) {
  const selection: Selection | null = picked ? { stake: picked } : null;
  return hand
    ? sceneOf(job, selection, [], withHand)
    : sceneOf(formsJob(PAD), selection, [], formLine);
}

function selects(effects: readonly Effect[]) {
  return effects.flatMap((effect) => (effect.do === 'select' ? [effect.selection] : []));
}

describe('a tap', () => {
  test.each([
    ['on a stake of the plan', 4, { stake: PLANNED }],
    ['on a pinned one', 8, { stake: { hand: 's1' } }],
    ['on a place that one was taken from', 12, { stake: { hand: 's2' } }],
  ])('%s picks it', (_, x, selection) => {
    const { effects } = play(
      takeUp('pick'),
      x === 4 ? scene() : scene(undefined, true),
      tap(x, -0.1),
    );
    expect(effects).toEqual([{ do: 'select', selection }]);
  });

  test('on the picked one goes to the edge under it, so that edges can be had however close stakes stand', () => {
    const { effects } = play(takeUp('pick'), scene(PLANNED), tap(4, -0.1));
    expect(selects(effects)).toEqual([{ feature: 'pad', corner: 'pad-0' }]);
  });

  test('nearer to the next one than to the picked one takes the next', () => {
    const close = withHandStakes(
      formsJob(PAD),
      handStake('s1', 'pinned', 8, 0),
      handStake('s2', 'pinned', 8.5, 0),
    );
    const near = sceneOf(close, { stake: { hand: 's1' } }, [], formLineFor(close));
    const { effects } = play(takeUp('pick'), near, tap(8.3, 0, true));
    expect(selects(effects)).toEqual([{ stake: { hand: 's2' } }]);
  });

  test('on bare ground lets go of it', () => {
    expect(selects(play(takeUp('pick'), scene(PLANNED), tap(4, -4)).effects)).toEqual([null]);
  });
});

describe('dragging a stake', () => {
  test('of the plan pins it along its form, by whole steps, and picks it as one set by hand', () => {
    const { hand, effects } = play(takeUp('pick'), scene(), swipe([4, -0.1], [5.52, -3]));
    expect(effects.filter((effect) => effect.do === 'preview').length).toBeGreaterThan(1);
    expect(commits(effects)).toEqual([{ do: 'pin-stake', at: { x: 5.5 * FOOT, y: 0 } }]);
    expect(selects(effects)).toEqual([{ stake: { hand: 's100' } }]);
    expect(hand.idle).toBe(true);
  });

  test('shows where it is on the way, and the id that it will have', () => {
    const out = swipe([4, -0.1], [6, -0.1]).slice(0, -1);
    const { hand } = play(takeUp('pick'), scene(), out);
    expect(hand.show().sliding).toMatchObject({
      hand: 's100',
      place: { run: { mark: 'R1' }, along: 6 * FOOT },
    });
  });

  test('a pinned one moves it', () => {
    const { effects } = play(takeUp('pick'), scene(undefined, true), swipe([8, -0.1], [9, -0.1]));
    expect(commits(effects)).toEqual([{ do: 'pin-stake', id: 's1', at: { x: 9 * FOOT, y: 0 } }]);
    expect(selects(effects)).toEqual([{ stake: { hand: 's1' } }]);
  });

  test('round a corner it goes on along the next form', () => {
    const { effects } = play(takeUp('pick'), scene(), swipe([19, -0.1], [20.5, 2]));
    expect(commits(effects)).toEqual([{ do: 'pin-stake', at: { x: 20 * FOOT, y: 2 * FOOT } }]);
  });

  test('back where it was changes nothing, and it is picked as it was', () => {
    const out = swipe([4, -0.1], [6, -0.1]).slice(0, -1);
    const back = [pointer('move', 4, -0.1), pointer('release', 4, -0.1)];
    const { effects } = play(takeUp('pick'), scene(), [...out, ...back]);
    expect(commits(effects)).toEqual([]);
    expect(effects.at(-2)).toEqual({ do: 'discard' });
    expect(selects(effects)).toEqual([{ stake: PLANNED }]);
  });

  test('a second finger, or Escape, in the middle of it voids it', () => {
    const begun = swipe([4, -0.1], [6, -0.1]).slice(0, -1);
    for (const kind of ['interrupt', 'cancel'] as const) {
      const { hand, effects } = play(takeUp('pick'), scene(), [...begun, { kind }]);
      expect(commits(effects)).toEqual([]);
      expect(effects.at(-1)).toEqual({ do: 'discard' });
      expect(hand.idle).toBe(true);
    }
  });

  test('with a finger only the picked one moves; else the view does', () => {
    const loose = play(takeUp('pick'), scene(), swipe([4, -0.1], [6, -0.1], true)).effects;
    expect(loose.every((effect) => effect.do === 'look')).toBe(true);
    const held = play(takeUp('pick'), scene(PLANNED), swipe([4, -0.1], [6, -0.1], true)).effects;
    expect(commits(held)).toEqual([{ do: 'pin-stake', at: { x: 6 * FOOT, y: 0 } }]);
  });

  test('a place that one was taken from is not dragged', () => {
    const { effects } = play(takeUp('pick'), scene(undefined, true), swipe([12, -0.1], [14, -0.1]));
    expect(effects.every((effect) => effect.do === 'look')).toBe(true);
  });
});

test('holding still on a stake, or a double click, puts no corner there', () => {
  expect(play(takeUp('pick'), scene(), [pointer('hold', 4, -0.1)]).effects).toEqual([]);
  const held = [pointer('press', 4, -0.1, true), pointer('hold', 4, -0.1, true)];
  expect(commits(play(takeUp('pick'), scene(PLANNED), held).effects)).toEqual([]);
});

describe('keys', () => {
  const key = (name: string, far = false) => ({ kind: 'key', key: name, far }) as ToolInput;
  const pressed = (picked: PickedStake, name: string, hand = false, far = false) =>
    play(takeUp('pick'), scene(picked, hand), [key(name, far)]).effects;

  test('Delete takes it away and stays on it; on a place that one was taken from it frees that', () => {
    const planned = pressed(PLANNED, 'Delete');
    expect(commits(planned)).toEqual([{ do: 'remove-stake', at: { x: 4 * FOOT, y: 0 } }]);
    expect(selects(planned)).toEqual([{ stake: { hand: 's100' } }]);
    expect(commits(pressed({ hand: 's1' }, 'Backspace', true))).toEqual([
      { do: 'remove-stake', id: 's1', at: { x: 8 * FOOT, y: 0 } },
    ]);
    expect(commits(pressed({ hand: 's2' }, 'Delete', true))).toEqual([
      { do: 'free-stake', id: 's2' },
    ]);
  });

  test('arrows move it along its run, the way that they point; across it they do nothing', () => {
    const right = pressed(PLANNED, 'ArrowRight');
    expect(commits(right)).toEqual([{ do: 'pin-stake', at: { x: 4 * FOOT + 3 * INCH, y: 0 } }]);
    expect(selects(right)).toEqual([{ stake: { hand: 's100' } }]);
    expect(commits(pressed(PLANNED, 'ArrowLeft', false, true))).toEqual([
      { do: 'pin-stake', at: { x: 4 * FOOT - 30 * INCH, y: 0 } },
    ]);
    expect(pressed(PLANNED, 'ArrowUp')).toEqual([]);
    const upper = { run: 'R3', along: 4 * FOOT };
    expect(commits(pressed(upper, 'ArrowRight'))).toEqual([
      { do: 'pin-stake', at: { x: 16 * FOOT + 3 * INCH, y: 10 * FOOT } },
    ]);
    expect(pressed({ hand: 's2' }, 'ArrowRight', true)).toEqual([]);
  });

  test('Enter asks for its place', () => {
    expect(pressed(PLANNED, 'Enter')).toEqual([{ do: 'ask-length' }]);
  });

  test('one that is no longer there hinders nothing: arrows look aside', () => {
    const gone = { run: 'R1', along: 123 };
    expect(pressed(gone, 'ArrowRight')).toMatchObject([{ do: 'look' }]);
    expect(pressed(gone, 'Delete')).toEqual([]);
  });
});
