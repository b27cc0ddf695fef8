import { type Point, samePoint } from '../../geometry/point.ts';
import type { FeatureKind } from '../../job/job.ts';
import { ALWAYS_OPEN } from '../../job/soundness.ts';
import type { Neighbour } from '../bearings.ts';
import { bearingOf } from '../edgeMeasures.ts';
import type { Snap } from '../snap.ts';
import type { Spot } from '../view.ts';
import { aim } from './aim.ts';
import { type Machine, NOTHING, type Showing } from './machine.ts';
import { type DraftCorner, newOutline } from './newFeature.ts';
import {
  beyondSlop,
  type Heading,
  type Pointer,
  type Scene,
  type Step,
  stay,
  type Typed,
} from './tool.ts';

/** Corners placed so far, and the place aimed at for the next. */
interface Draft {
  readonly placed: readonly DraftCorner[];
  readonly aim: Snap | null;
}

export type DrawState =
  | ({ readonly at: 'idle' } & Draft)
  /** A press that will place a corner at its release, after sliding to the wanted place. */
  | ({ readonly at: 'pressed'; readonly spot: Spot; readonly slid: boolean } & Draft);

const IDLE: DrawState = { at: 'idle', placed: [], aim: null };

/**
 * Draws an outline corner by corner, by taps, by slides (the corner lands where the pointer is lifted) or typed. A tap
 * on the first corner closes it, unless it is a utility line or a joint, which never close; Enter closes it, or ends a
 * building line, a utility line or a joint open; Backspace takes back the last corner.
 */
export function drawOutline(kind: FeatureKind): Machine<DrawState> {
  const canClose = !ALWAYS_OPEN.includes(kind);
  const canEndOpen = kind === 'building-line' || !canClose;

  function step(
    state: DrawState,
    input: Parameters<Machine<DrawState>['step']>[1],
    scene: Scene,
  ): Step<DrawState> {
    switch (input.kind) {
      case 'press':
        return stay({
          ...state,
          at: 'pressed',
          spot: input.spot,
          slid: false,
          aim: aimNext(state, input, scene, canClose),
        });
      case 'move':
        return stay(slide(state, input, scene, canClose));
      case 'release':
        return state.at === 'pressed' && state.aim ? place(state, state.aim, scene) : stay(state);
      case 'interrupt':
        // A pinch in the middle of drawing looks closer; it doesn't throw the drawing away.
        return { state: { at: 'idle', placed: state.placed, aim: null }, effects: [DISCARD] };
      case 'cancel':
        return { state: IDLE, effects: [DISCARD] };
      case 'key':
        if (input.key === 'Enter') return finish(state, !canEndOpen, scene);
        if (input.key === 'Backspace' || input.key === 'Delete') return stay(takeBack(state));
        return stay(state);
      case 'typed':
        return typed(state, input.typed, scene);
      case 'hold':
        return stay(state);
    }
  }

  function place(state: DrawState, snap: Snap, scene: Scene): Step<DrawState> {
    if (snap.reasons[0] === 'first-corner') return finish(state, true, scene);
    return stay(withCorner(state, { ...snap.point, ...(snap.on ? { on: snap.on } : {}) }));
  }

  function typed(state: DrawState, what: Typed, scene: Scene): Step<DrawState> {
    switch (what.what) {
      case 'start': {
        const { datum } = scene;
        return stay(withCorner(state, { x: datum.x + what.across, y: datum.y + what.up }));
      }
      case 'corner': {
        const next = cornerByLength(state, what);
        return stay(next ? withCorner(state, next) : state);
      }
      case 'close':
        return finish(state, true, scene);
      case 'end-open':
        return finish(state, false, scene);
      case 'take-back':
        return stay(takeBack(state));
      case 'diameter':
      case 'sizes':
        return stay(state);
    }
  }

  function finish(state: DrawState, closed: boolean, { job }: Scene): Step<DrawState> {
    const { placed } = state;
    const enough = closed ? canClose && placed.length >= 3 : canEndOpen && placed.length >= 2;
    if (!enough) return stay({ at: 'idle', placed, aim: null });
    const { command, id } = newOutline(job, kind, placed, closed);
    return {
      state: IDLE,
      effects: [
        { do: 'commit', command },
        { do: 'select', selection: { feature: id } },
        { do: 'finish' },
      ],
    };
  }

  return {
    idle: IDLE,
    step,
    show: ({ placed, aim: snap }) =>
      ({
        ...NOTHING,
        snap,
        path: snap ? [...placed, snap.point] : placed,
        closed: snap?.reasons[0] === 'first-corner',
        asks:
          placed.length === 0
            ? { for: 'start' }
            : {
                for: 'corner',
                placed: placed.length,
                canClose: canClose && placed.length >= 3,
                canEndOpen: canEndOpen && placed.length >= 2,
              },
      }) satisfies Showing,
  };
}

const DISCARD = { do: 'discard' } as const;

function slide(state: DrawState, pointer: Pointer, scene: Scene, canClose: boolean): DrawState {
  if (state.at === 'pressed' && !state.slid && !beyondSlop(state.spot, pointer)) return state;
  const next = aimNext(state, pointer, scene, canClose);
  return state.at === 'pressed' ? { ...state, slid: true, aim: next } : { ...state, aim: next };
}

function aimNext(
  { placed }: DrawState,
  { at, touch }: Pointer,
  scene: Scene,
  canClose: boolean,
): Snap {
  const first = placed[0];
  const second = placed[1];
  const last = placed[placed.length - 1];
  const before = placed[placed.length - 2];
  const neighbours: Neighbour[] = [];
  if (last) neighbours.push({ at: last, ...(before ? { beyond: before } : {}) });
  // From the second edge on, the next corner may be wanted in line with the first, to close square.
  if (first && second && placed.length > 1) neighbours.push({ at: first, beyond: second });
  return aim(scene, {
    at,
    touch,
    neighbours,
    closeAt: first && canClose && placed.length >= 3 ? first : null,
  });
}

/** A corner on the spot of the one before would make an edge without length: it is left out. */
function withCorner({ placed }: DrawState, corner: DraftCorner): DrawState {
  const last = placed[placed.length - 1];
  const next = last && samePoint(last, corner) ? placed : [...placed, corner];
  return { at: 'idle', placed: next, aim: null };
}

function takeBack({ placed }: DrawState): DrawState {
  return { at: 'idle', placed: placed.slice(0, -1), aim: null };
}

function cornerByLength(
  state: DrawState,
  { length, heading, degrees }: Extract<Typed, { what: 'corner' }>,
): Point | null {
  const { placed, aim: aimed } = state;
  const last = placed[placed.length - 1];
  if (!last) return null;
  const angle =
    degrees === null
      ? aimed
        ? bearingOf(last, aimed.point)
        : null
      : turned(placed, heading, degrees);
  return angle === null ? null : alongBearing(last, length, angle);
}

/** Degrees from east. A turn is counted from the last edge; before there is one, from east. */
function turned(placed: readonly Point[], heading: Heading, degrees: number): number {
  if (heading === 'direction') return degrees;
  const last = placed[placed.length - 1];
  const before = placed[placed.length - 2];
  const straightOn = last && before ? bearingOf(before, last) : 0;
  return straightOn + (heading === 'left' ? degrees : -degrees);
}

/** Put on the grid once. Quarter turns are exact. */
export function alongBearing(from: Point, length: number, degrees: number): Point {
  const quarter = (((degrees / 90) % 4) + 4) % 4;
  const [cos, sin] = Number.isInteger(quarter)
    ? ([
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ][quarter] ?? [1, 0])
    : [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return {
    x: from.x + Math.round(length * (cos ?? 0)),
    y: from.y + Math.round(length * (sin ?? 0)),
  };
}
