import type { Point } from '../../geometry/point.ts';
import { apply, type Command } from '../../job/commands.ts';
import type { Feature } from '../../job/job.ts';
import type { Neighbour } from '../bearings.ts';
import { isPicked, pickOf } from '../formLine.ts';
import { type Hit, hit, MOUSE_REACH_PX, TOUCH_REACH_PX } from '../hit.ts';
import type { Snap } from '../snap.ts';
import { panBy, type Spot, type View } from '../view.ts';
import { aim } from './aim.ts';
import { type Machine, NOTHING } from './machine.ts';
import { byKey } from './pickKeys.ts';
import { holdStake, type Sliding, selectionOf, slideStake } from './slideStake.ts';
import {
  beyondSlop,
  type Effect,
  type Pointer,
  type Scene,
  type Selection,
  type Step,
  stay,
  type ToolInput,
} from './tool.ts';

export type PickState =
  | { readonly at: 'idle' }
  | {
      readonly at: 'pressed';
      readonly spot: Spot;
      readonly place: Point;
      readonly touch: boolean;
      readonly hit: Hit;
    }
  | ({ readonly at: 'dragging' } & Drag)
  | Sliding
  | { readonly at: 'looking'; readonly spot: Spot; readonly view: View }
  /** The press has done its work; waits for the release. */
  | { readonly at: 'spent' };

/** A corner, or a whole feature held by its corner (or middle) nearest the pointer. */
interface Drag {
  readonly feature: string;
  /** Set when one corner is dragged. */
  readonly corner: string | null;
  /** Where the held point was, and how far from it the pointer took hold. */
  readonly from: Point;
  readonly grip: Point;
  readonly snap: Snap;
  readonly command: Command | null;
}

const IDLE: PickState = { at: 'idle' };
/**
 * The hand without a pencil. A tap selects. A drag moves a corner, or the selected feature; anywhere else it moves the
 * view. With a finger only the selected feature's corners move, so that a swipe over the site changes nothing. Holding
 * (or a double click) on an edge puts a corner there. Keys: Delete removes; arrows nudge what is selected by one step,
 * and move the view when nothing is.
 *
 * A stake is picked and dragged in the same way, along the forms; a place that one was taken from stays where it is. A tap
 * on the stake that is picked already goes to what lies under it.
 */
export const pick: Machine<PickState> = {
  idle: IDLE,
  show(state) {
    if (state.at === 'sliding') {
      const { place, hand } = state;
      return { ...NOTHING, sliding: { place, hand } };
    }
    if (state.at !== 'dragging') return NOTHING;
    const { snap, feature, corner } = state;
    return { ...NOTHING, snap, moving: corner ? { feature, corner } : null };
  },
  step(state, input, scene): Step<PickState> {
    switch (input.kind) {
      case 'press':
        return stay(press(input, scene));
      case 'move':
        return move(state, input, scene);
      case 'release':
        return release(state, scene);
      case 'hold':
        return hold(state, input, scene);
      case 'interrupt':
      case 'cancel':
        return { state: IDLE, effects: [{ do: 'discard' }] };
      case 'key':
        return state.at === 'idle' ? { state, effects: byKey(input, scene) } : stay(state);
      case 'typed':
        return stay(state);
    }
  },
};

function press(pointer: Pointer, scene: Scene): PickState {
  const { spot, at, touch } = pointer;
  return { at: 'pressed', spot, place: at, touch, hit: whatIsAt(pointer, scene) };
}

function whatIsAt(
  { at, touch }: Pick<Pointer, 'at' | 'touch'>,
  { site, dimensions, formLine, view, selection }: Scene,
): Hit {
  const reach = (touch ? TOUCH_REACH_PX : MOUSE_REACH_PX) * view.gridPerPx;
  const selected = selection?.feature ?? null;
  const picked = selection?.stake ?? null;
  return hit({ at, site, dimensions, reach, selected, formLine, picked });
}

function move(state: PickState, pointer: Pointer, scene: Scene): Step<PickState> {
  switch (state.at) {
    case 'idle':
    case 'spent':
      return stay(state);
    case 'pressed':
      if (!beyondSlop(state.spot, pointer)) return stay(state);
      return move(takeUp(state, scene), pointer, scene);
    case 'dragging':
      return drag(state, pointer, scene);
    case 'sliding':
      return slideStake(state, pointer, scene);
    case 'looking': {
      const { spot } = pointer;
      const view = panBy(state.view, spot.x - state.spot.x, spot.y - state.spot.y);
      return { state, effects: [{ do: 'look', view }] };
    }
  }
}

/** What a press beyond slop turns into. */
function takeUp(state: Extract<PickState, { at: 'pressed' }>, scene: Scene): PickState {
  const { hit: on, place, spot, touch } = state;
  const looking: PickState = { at: 'looking', spot, view: scene.view };
  if (on.on === 'ground') return looking;
  if (on.on === 'stake') {
    const { stake } = on;
    const inHand = !touch || isPicked(stake, scene.selection?.stake);
    return inHand && stake.is !== 'removed' ? holdStake(stake, place, scene) : looking;
  }
  const selected = scene.selection?.feature === on.feature;
  if (on.on === 'corner' && (selected || !touch)) {
    return takeHold(on.feature, on.corner, on.at, place);
  }
  if (!selected) return looking;
  const feature = scene.job.features.find(({ id }) => id === on.feature);
  const handle = feature ? handleOf(feature, place) : null;
  return handle ? takeHold(on.feature, null, handle, place) : looking;
}

function takeHold(feature: string, corner: string | null, from: Point, place: Point): PickState {
  return {
    at: 'dragging',
    feature,
    corner,
    from,
    grip: { x: place.x - from.x, y: place.y - from.y },
    snap: { point: from, reasons: [], guides: [] },
    command: null,
  };
}

/** The corner nearest the pointer, or the middle of a round feature: what is snapped when the whole is moved. */
function handleOf({ shape }: Feature, at: Point): Point | null {
  if (shape.form === 'round') return shape.center;
  const away = (point: Point) => Math.hypot(point.x - at.x, point.y - at.y);
  return shape.corners.reduce<Point | null>(
    (near, corner) => (near && away(near) <= away(corner) ? near : corner),
    null,
  );
}

function drag(
  state: Extract<PickState, { at: 'dragging' }>,
  pointer: Pointer,
  scene: Scene,
): Step<PickState> {
  const { feature, corner, from, grip } = state;
  const at = { x: pointer.at.x - grip.x, y: pointer.at.y - grip.y };
  const snap = aim(scene, {
    at,
    touch: pointer.touch,
    neighbours: corner ? neighboursOf(scene, feature, corner) : [{ at: from }],
    moving: corner ? { feature, corner } : { feature },
  });
  const to = snap.point;
  if (to.x === from.x && to.y === from.y) {
    return { state: { ...state, snap, command: null }, effects: [{ do: 'discard' }] };
  }
  const command: Command = corner
    ? movedCorner(scene, { do: 'move-corner', feature, corner, to }, snap)
    : { do: 'move-feature', feature, by: { x: to.x - from.x, y: to.y - from.y } };
  return { state: { ...state, snap, command }, effects: [{ do: 'preview', command }] };
}

/**
 * Stays on the edge it was put on, unless that edge rests on this very corner (then neither would have a place): there
 * it only lies on it.
 */
function movedCorner(
  { job }: Scene,
  free: Extract<Command, { do: 'move-corner' }>,
  { on }: Snap,
): Command {
  if (!on) return free;
  const attached = { ...free, on };
  const outcome = apply(job, attached);
  return !outcome.ok && outcome.problems.code === 'attachment-circle' ? free : attached;
}

/** The corners before and after, each with the one beyond it. */
function neighboursOf({ job }: Scene, featureId: string, cornerId: string): readonly Neighbour[] {
  const shape = job.features.find(({ id }) => id === featureId)?.shape;
  if (shape?.form !== 'outline') return [];
  const { corners, closed } = shape;
  const here = corners.findIndex(({ id }) => id === cornerId);
  const at = (index: number) => corners[closed ? (index + corners.length) % corners.length : index];
  return [-1, 1].flatMap((way) => {
    const next = at(here + way);
    const beyond = at(here + 2 * way);
    if (!next || next.id === cornerId) return [];
    return [{ at: next, ...(beyond && beyond.id !== cornerId ? { beyond } : {}) }];
  });
}

function release(state: PickState, scene: Scene): Step<PickState> {
  switch (state.at) {
    case 'idle':
    case 'spent':
    case 'looking':
      return stay(IDLE);
    case 'pressed':
      return { state: IDLE, effects: tapped(hitByTap(state, scene)) };
    case 'dragging': {
      const { command, feature, corner } = state;
      const selection: Selection = corner ? { feature, corner } : { feature };
      return {
        state: IDLE,
        effects: command
          ? [
              { do: 'commit', command },
              { do: 'select', selection },
            ]
          : [{ do: 'discard' }],
      };
    }
    case 'sliding': {
      const { command } = state;
      const select: Effect = { do: 'select', selection: selectionOf(state) };
      return {
        state: IDLE,
        effects: [command ? { do: 'commit', command } : { do: 'discard' }, select],
      };
    }
  }
}

/** What a tap means: the nearest stake, or what lies under the one that is picked already. */
function hitByTap(
  { hit: on, place, touch }: Extract<PickState, { at: 'pressed' }>,
  scene: Scene,
): Hit {
  const { selection } = scene;
  if (on.on !== 'stake' || !isPicked(on.stake, selection?.stake)) return on;
  const nearest = whatIsAt({ at: place, touch }, { ...scene, selection: null });
  const again = nearest.on === 'stake' && isPicked(nearest.stake, selection?.stake);
  return again ? whatIsAt({ at: place, touch }, { ...scene, formLine: null }) : nearest;
}

function tapped(on: Hit): readonly Effect[] {
  switch (on.on) {
    case 'stake':
      return [{ do: 'select', selection: { stake: pickOf(on.stake) } }];
    case 'ground':
      return [{ do: 'select', selection: null }];
    case 'feature':
      return [{ do: 'select', selection: { feature: on.feature } }];
    case 'corner':
    case 'edge':
      return [{ do: 'select', selection: { feature: on.feature, corner: on.corner } }];
    case 'dimension':
      return [
        { do: 'select', selection: { feature: on.feature, corner: on.corner } },
        { do: 'ask-length' },
      ];
  }
}

function hold(
  state: PickState,
  input: Extract<ToolInput, { kind: 'hold' }>,
  scene: Scene,
): Step<PickState> {
  if (state.at !== 'idle' && state.at !== 'pressed') return stay(state);
  const on = state.at === 'pressed' ? state.hit : whatIsAt(input, scene);
  if (on.on !== 'edge') return stay(state);
  const { feature, corner: after, at } = on;
  return {
    state: state.at === 'pressed' ? { at: 'spent' } : IDLE,
    effects: [
      { do: 'commit', command: { do: 'insert-corner', feature, after, at } },
      { do: 'select', selection: { feature } },
    ],
  };
}
