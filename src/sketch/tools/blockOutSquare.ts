import type { Point } from '../../geometry/point.ts';
import type { Snap } from '../snap.ts';
import type { Spot } from '../view.ts';
import { aim } from './aim.ts';
import { type Machine, NOTHING } from './machine.ts';
import { newOutline, rectangle } from './newFeature.ts';
import { beyondSlop, type Pointer, type Scene, type Step, stay } from './tool.ts';

export type SquareState =
  | { readonly at: 'idle'; readonly aim: Snap | null }
  | { readonly at: 'pressed'; readonly spot: Spot; readonly aim: Snap }
  /** The first corner stands; the opposite one is wanted, or two sizes. */
  | { readonly at: 'placed'; readonly first: Point; readonly aim: Snap | null }
  | { readonly at: 'sizing'; readonly first: Point; readonly aim: Snap };

const IDLE: SquareState = { at: 'idle', aim: null };

/** A block-out with four square corners: drag from corner to corner, tap both, or tap one and type its two sizes. */
export const blockOutSquare: Machine<SquareState> = {
  idle: IDLE,
  show(state) {
    switch (state.at) {
      case 'idle':
      case 'pressed':
        return { ...NOTHING, snap: state.aim };
      case 'placed':
      case 'sizing':
        return {
          ...NOTHING,
          snap: state.aim,
          path: state.aim ? rectangle(state.first, state.aim.point) : [state.first],
          closed: state.aim !== null,
          asks: { for: 'sizes' },
        };
    }
  },
  step(state, input, scene): Step<SquareState> {
    switch (input.kind) {
      case 'press':
        return press(state, input, scene);
      case 'move':
        return move(state, input, scene);
      case 'release':
        return release(state, scene);
      case 'interrupt':
        return { state: keepFirst(state), effects: [{ do: 'discard' }] };
      case 'cancel':
        return { state: IDLE, effects: [{ do: 'discard' }] };
      case 'typed': {
        const { typed } = input;
        if (typed.what !== 'sizes' || state.at !== 'placed') return stay(state);
        const { first } = state;
        return add(first, { x: first.x + typed.across, y: first.y + typed.up }, scene);
      }
      case 'key':
        return input.key === 'Backspace' || input.key === 'Delete'
          ? { state: IDLE, effects: [{ do: 'discard' }] }
          : stay(state);
      case 'hold':
        return stay(state);
    }
  },
};

function press(state: SquareState, pointer: Pointer, scene: Scene): Step<SquareState> {
  switch (state.at) {
    case 'idle':
    case 'pressed':
      return stay({ at: 'pressed', spot: pointer.spot, aim: aimCorner(null, pointer, scene) });
    case 'placed':
    case 'sizing':
      return size(state.first, pointer, scene);
  }
}

function move(state: SquareState, pointer: Pointer, scene: Scene): Step<SquareState> {
  switch (state.at) {
    case 'idle':
      return stay({ at: 'idle', aim: aimCorner(null, pointer, scene) });
    case 'pressed':
      if (!beyondSlop(state.spot, pointer)) return stay(state);
      return size(state.aim.point, pointer, scene);
    case 'placed':
      return stay({ ...state, aim: aimCorner(state.first, pointer, scene) });
    case 'sizing':
      return size(state.first, pointer, scene);
  }
}

function release(state: SquareState, scene: Scene): Step<SquareState> {
  switch (state.at) {
    case 'idle':
    case 'placed':
      return stay(state);
    case 'pressed':
      return stay({ at: 'placed', first: state.aim.point, aim: null });
    case 'sizing':
      return add(state.first, state.aim.point, scene);
  }
}

function size(first: Point, pointer: Pointer, scene: Scene): Step<SquareState> {
  const snap = aimCorner(first, pointer, scene);
  const state: SquareState = { at: 'sizing', first, aim: snap };
  if (flat(first, snap.point)) return { state, effects: [{ do: 'discard' }] };
  const { command } = squareOf(first, snap.point, scene);
  return { state, effects: [{ do: 'preview', command }] };
}

function add(first: Point, opposite: Point, scene: Scene): Step<SquareState> {
  if (flat(first, opposite)) {
    return { state: { at: 'placed', first, aim: null }, effects: [{ do: 'discard' }] };
  }
  const { command, id } = squareOf(first, opposite, scene);
  return {
    state: IDLE,
    effects: [
      { do: 'commit', command },
      { do: 'select', selection: { feature: id } },
      { do: 'finish' },
    ],
  };
}

function squareOf(first: Point, opposite: Point, { job }: Scene) {
  return newOutline(job, 'block-out', rectangle(first, opposite), true);
}

function flat(a: Point, b: Point): boolean {
  return a.x === b.x || a.y === b.y;
}

function keepFirst(state: SquareState): SquareState {
  return state.at === 'placed' || state.at === 'sizing'
    ? { at: 'placed', first: state.first, aim: null }
    : IDLE;
}

/** The opposite corner keeps whole steps from the first: due across or up of it would make nothing. */
function aimCorner(first: Point | null, { at, touch }: Pointer, scene: Scene): Snap {
  return aim(first ? { ...scene, datum: first } : scene, { at, touch, neighbours: [] });
}
