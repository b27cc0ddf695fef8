import type { ToolInput } from './tools/tool.ts';
import { pinch, type Size, type Spot, toJob, type View } from './view.ts';

/** Which pointers are down on the stage. Two of them look closer or aside; the tool sees only one at a time. */
export type Fingers =
  | { readonly at: 'none' }
  | { readonly at: 'one'; readonly id: number; readonly spot: Spot }
  | {
      readonly at: 'two';
      readonly ids: readonly [number, number];
      readonly began: readonly [Spot, Spot];
      readonly now: readonly [Spot, Spot];
      readonly view: View;
    }
  /** A pinch is over but a finger is still down: nothing is touched until all are up. */
  | { readonly at: 'lifting'; readonly down: readonly number[] };

export interface FingerEvent {
  readonly kind: 'down' | 'move' | 'up' | 'lost';
  readonly id: number;
  readonly spot: Spot;
  readonly touch: boolean;
}

export interface FingerStep {
  readonly fingers: Fingers;
  readonly input: ToolInput | null;
  readonly view: View | null;
}

export const NO_FINGERS: Fingers = { at: 'none' };

export function stepFingers(
  fingers: Fingers,
  event: FingerEvent,
  view: View,
  size: Size,
): FingerStep {
  const { id, spot, touch } = event;
  const pointer = { spot, at: toJob(view, size, spot), touch };
  switch (event.kind) {
    case 'down':
      switch (fingers.at) {
        case 'none':
          return only({ at: 'one', id, spot }, { kind: 'press', ...pointer });
        case 'one': {
          const both = [fingers.spot, spot] as const;
          const two: Fingers = { at: 'two', ids: [fingers.id, id], began: both, now: both, view };
          return only(two, { kind: 'interrupt' });
        }
        case 'two':
          return only({ at: 'lifting', down: [...fingers.ids, id] }, null);
        case 'lifting':
          return only({ at: 'lifting', down: [...fingers.down, id] }, null);
      }
      break;
    case 'move':
      switch (fingers.at) {
        case 'none':
          return only(fingers, touch ? null : { kind: 'move', ...pointer });
        case 'one':
          if (fingers.id !== id) return only(fingers, null);
          return only({ ...fingers, spot }, { kind: 'move', ...pointer });
        case 'two': {
          if (!fingers.ids.includes(id)) return only(fingers, null);
          const now: [Spot, Spot] = [...fingers.now];
          now[fingers.ids.indexOf(id)] = spot;
          return {
            fingers: { ...fingers, now },
            input: null,
            view: pinch(fingers.view, size, fingers.began, now),
          };
        }
        case 'lifting':
          return only(fingers, null);
      }
      break;
    case 'up':
    case 'lost':
      switch (fingers.at) {
        case 'none':
          return only(fingers, null);
        case 'one':
          if (fingers.id !== id) return only(fingers, null);
          return only(
            NO_FINGERS,
            event.kind === 'up' ? { kind: 'release', ...pointer } : { kind: 'interrupt' },
          );
        case 'two':
          return only(without(fingers.ids, id), null);
        case 'lifting':
          return only(without(fingers.down, id), null);
      }
  }
}

function without(down: readonly number[], id: number): Fingers {
  const rest = down.filter((one) => one !== id);
  return rest.length === 0 ? NO_FINGERS : { at: 'lifting', down: rest };
}

function only(fingers: Fingers, input: ToolInput | null): FingerStep {
  return { fingers, input, view: null };
}
