import type { Command } from '../../job/commands.ts';
import { isPicked } from '../formLine.ts';
import { panBy, stepAt } from '../view.ts';
import { stakeByKey } from './stakeKeys.ts';
import { type Effect, FAR, type FeatureSelection, type Key, type Scene } from './tool.ts';

/** How far an arrow key looks aside, CSS pixels. */
const LOOK_PX = 60;
/** What a key does to what is selected; without a selection, arrows look aside. */
export function byKey(
  { key, far }: { readonly key: Key; readonly far: boolean },
  scene: Scene,
): readonly Effect[] {
  const stake = scene.formLine?.stakes.find((one) => isPicked(one, scene.selection?.stake));
  if (stake) return stakeByKey({ key, far }, stake, scene);
  const selection = scene.selection?.feature === undefined ? null : scene.selection;
  switch (key) {
    case 'Enter':
      return selection?.corner ? [{ do: 'ask-length' }] : [];
    case 'Delete':
    case 'Backspace':
      return selection ? [{ do: 'commit', command: removal(selection) }] : [];
    case 'ArrowLeft':
      return along(-1, 0, far, scene, selection);
    case 'ArrowRight':
      return along(1, 0, far, scene, selection);
    case 'ArrowUp':
      return along(0, 1, far, scene, selection);
    case 'ArrowDown':
      return along(0, -1, far, scene, selection);
  }
}

function removal({ feature, corner }: FeatureSelection): Command {
  return corner ? { do: 'remove-corner', feature, corner } : { do: 'remove-feature', feature };
}

function along(
  across: number,
  up: number,
  far: boolean,
  { view, job }: Scene,
  selection: FeatureSelection | null,
): readonly Effect[] {
  const times = far ? FAR : 1;
  if (!selection) {
    const px = (LOOK_PX * times) / (far ? 2 : 1);
    return [{ do: 'look', view: panBy(view, -across * px, up * px) }];
  }
  const step = stepAt(view, job.units) * times;
  const by = { x: Math.round(across * step), y: Math.round(up * step) };
  const { feature, corner } = selection;
  if (!corner) return [{ do: 'commit', command: { do: 'move-feature', feature, by } }];
  const shape = job.features.find(({ id }) => id === feature)?.shape;
  const here =
    shape?.form === 'outline' ? shape.corners.find(({ id }) => id === corner) : undefined;
  if (!here) return [];
  const to = { x: here.x + by.x, y: here.y + by.y };
  return [{ do: 'commit', command: { do: 'move-corner', feature, corner, to } }];
}
