import { panBy, type Spot, type View } from '../view.ts';
import { type Machine, NOTHING } from './machine.ts';
import { beyondSlop, type Step, stay, type ToolInput } from './tool.ts';

export type PanState =
  | { readonly at: 'idle' }
  | { readonly at: 'pressed'; readonly spot: Spot; readonly view: View }
  | { readonly at: 'looking'; readonly spot: Spot; readonly view: View };

const IDLE: PanState = { at: 'idle' };

/** Drags the site under the screen. Never touches the job. */
export const pan: Machine<PanState> = {
  idle: IDLE,
  show: () => NOTHING,
  step(state, input, scene): Step<PanState> {
    switch (input.kind) {
      case 'press':
        return stay({ at: 'pressed', spot: input.spot, view: scene.view });
      case 'move':
        return look(state, input);
      case 'release':
        return stay(IDLE);
      case 'interrupt':
      case 'cancel':
        return { state: IDLE, effects: [{ do: 'discard' }] };
      case 'hold':
      case 'key':
      case 'typed':
        return stay(state);
    }
  },
};

function look(state: PanState, input: Extract<ToolInput, { kind: 'move' }>): Step<PanState> {
  if (state.at === 'idle') return stay(state);
  if (state.at === 'pressed' && !beyondSlop(state.spot, input)) return stay(state);
  const { spot, view } = state;
  return {
    state: { at: 'looking', spot, view },
    effects: [{ do: 'look', view: panBy(view, input.spot.x - spot.x, input.spot.y - spot.y) }],
  };
}
