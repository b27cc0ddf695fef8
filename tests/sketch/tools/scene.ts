import type { Job } from '../../../src/job/job.ts';
import { datumOf } from '../../../src/sketch/datum.ts';
import type { FormLine } from '../../../src/sketch/formLine.ts';
import type { DimensionText } from '../../../src/sketch/hit.ts';
import { siteOf } from '../../../src/sketch/site.ts';
import type { Hand } from '../../../src/sketch/tools/hand.ts';
import type { Effect, Scene, Selection, ToolInput } from '../../../src/sketch/tools/tool.ts';
import { toScreen, type View } from '../../../src/sketch/view.ts';
import { FOOT } from '../../../src/units/grid.ts';

const SIZE = { width: 800, height: 600 };
/** 30 px to the foot, (10, 5) ft in the middle. */
const VIEW: View = { center: { x: 10 * FOOT, y: 5 * FOOT }, gridPerPx: FOOT / 30 };

export function sceneOf(
  job: Job,
  selection: Selection | null = null,
  dimensions: readonly DimensionText[] = [],
  formLine: FormLine | null = null,
): Scene {
  return {
    job,
    site: siteOf(job),
    dimensions,
    formLine,
    selection,
    view: VIEW,
    size: SIZE,
    datum: datumOf(job),
  };
}

/** A pointer input at a place in feet. */
export function pointer(
  kind: 'press' | 'move' | 'release' | 'hold',
  x: number,
  y: number,
  touch = false,
): ToolInput {
  const at = { x: Math.round(x * FOOT), y: Math.round(y * FOOT) };
  return { kind, at, spot: toScreen(VIEW, SIZE, at), touch };
}

export function tap(x: number, y: number, touch = false): readonly ToolInput[] {
  return [pointer('press', x, y, touch), pointer('release', x, y, touch)];
}

/** From one place to another in a few moves. */
export function swipe(
  from: readonly [number, number],
  to: readonly [number, number],
  touch = false,
): readonly ToolInput[] {
  const between = [0.25, 0.5, 0.75, 1].map((part) =>
    pointer('move', from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1]), touch),
  );
  return [pointer('press', ...from, touch), ...between, pointer('release', ...to, touch)];
}

/** Gives a hand a list of inputs; what it wanted done, in order. */
export function play(
  hand: Hand,
  scene: Scene,
  inputs: readonly ToolInput[],
): { readonly hand: Hand; readonly effects: readonly Effect[] } {
  return inputs.reduce(
    (before, input) => {
      const next = before.hand.step(input, scene);
      return { hand: next.hand, effects: [...before.effects, ...next.effects] };
    },
    { hand, effects: [] as readonly Effect[] },
  );
}

export function commits(effects: readonly Effect[]) {
  return effects.flatMap((effect) => (effect.do === 'commit' ? [effect.command] : []));
}
