import type { Point } from '../../geometry/point.ts';
import type { Snap } from '../snap.ts';
import { type Spot, stepAt } from '../view.ts';
import { aim } from './aim.ts';
import { type Machine, NOTHING } from './machine.ts';
import { newRound } from './newFeature.ts';
import { beyondSlop, type Pointer, type Scene, type Step, stay } from './tool.ts';

export type RoundState =
  | { readonly at: 'idle'; readonly aim: Snap | null }
  /** The middle is being placed: a drag from it sizes the circle at once. */
  | { readonly at: 'pressed'; readonly spot: Spot; readonly aim: Snap }
  /** The middle stands; the diameter is wanted, typed or by the pointer. */
  | { readonly at: 'placed'; readonly center: Point; readonly diameter: number }
  | { readonly at: 'sizing'; readonly center: Point; readonly diameter: number };

const IDLE: RoundState = { at: 'idle', aim: null };

/**
 * A round block-out: drag from its middle outward, or tap its middle and then type its diameter (or tap or drag where
 * its edge shall be).
 */
export const blockOutRound: Machine<RoundState> = {
  idle: IDLE,
  show(state) {
    switch (state.at) {
      case 'idle':
      case 'pressed':
        return { ...NOTHING, snap: state.aim };
      case 'placed':
      case 'sizing':
        return { ...NOTHING, round: state, asks: { for: 'diameter' } };
    }
  },
  step(state, input, scene): Step<RoundState> {
    switch (input.kind) {
      case 'press':
        return press(state, input, scene);
      case 'move':
        return move(state, input, scene);
      case 'release':
        return release(state, scene);
      case 'interrupt':
        return { state: keepMiddle(state), effects: [{ do: 'discard' }] };
      case 'cancel':
        return { state: IDLE, effects: [{ do: 'discard' }] };
      case 'typed':
        return input.typed.what === 'diameter' && state.at === 'placed'
          ? add(state.center, input.typed.diameter, scene)
          : stay(state);
      case 'key':
        if (input.key === 'Backspace' || input.key === 'Delete') {
          return { state: IDLE, effects: [{ do: 'discard' }] };
        }
        return input.key === 'Enter' && state.at === 'placed'
          ? add(state.center, state.diameter, scene)
          : stay(state);
      case 'hold':
        return stay(state);
    }
  },
};

function press(state: RoundState, pointer: Pointer, scene: Scene): Step<RoundState> {
  switch (state.at) {
    case 'idle':
    case 'pressed':
      return stay({ at: 'pressed', spot: pointer.spot, aim: aimMiddle(pointer, scene) });
    case 'placed':
    case 'sizing':
      return size(state.center, pointer, scene);
  }
}

function move(state: RoundState, pointer: Pointer, scene: Scene): Step<RoundState> {
  switch (state.at) {
    case 'idle':
      return stay({ at: 'idle', aim: aimMiddle(pointer, scene) });
    case 'pressed':
      if (!beyondSlop(state.spot, pointer)) return stay(state);
      return size(state.aim.point, pointer, scene);
    case 'placed':
      return stay(state);
    case 'sizing':
      return size(state.center, pointer, scene);
  }
}

function release(state: RoundState, scene: Scene): Step<RoundState> {
  switch (state.at) {
    case 'idle':
    case 'placed':
      return stay(state);
    case 'pressed':
      return stay({ at: 'placed', center: state.aim.point, diameter: 0 });
    case 'sizing':
      return add(state.center, state.diameter, scene);
  }
}

function size(center: Point, { at }: Pointer, scene: Scene): Step<RoundState> {
  const step = stepAt(scene.view, scene.job.units);
  const across = 2 * Math.hypot(at.x - center.x, at.y - center.y);
  // An even number of grid units, so that the radius is on the grid as well.
  const diameter = 2 * Math.round((Math.round(across / step) * step) / 2);
  const state: RoundState = { at: 'sizing', center, diameter };
  if (diameter <= 0) return { state, effects: [{ do: 'discard' }] };
  const { command } = newRound(scene.job, center, diameter);
  return { state, effects: [{ do: 'preview', command }] };
}

function add(center: Point, diameter: number, scene: Scene): Step<RoundState> {
  if (diameter <= 0) {
    return { state: { at: 'placed', center, diameter: 0 }, effects: [{ do: 'discard' }] };
  }
  const { command, id } = newRound(scene.job, center, diameter);
  return {
    state: IDLE,
    effects: [
      { do: 'commit', command },
      { do: 'select', selection: { feature: id } },
      { do: 'finish' },
    ],
  };
}

function keepMiddle(state: RoundState): RoundState {
  return state.at === 'placed' || state.at === 'sizing'
    ? { at: 'placed', center: state.center, diameter: 0 }
    : IDLE;
}

function aimMiddle({ at, touch }: Pointer, scene: Scene): Snap {
  return aim(scene, { at, touch, neighbours: [] });
}
