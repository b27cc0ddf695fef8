import type { Point } from '../../geometry/point.ts';
import { type Size, toScreen, type View } from '../view.ts';

/** More handles than this in sight are thinned out. */
const MOST_HANDLES = 120;
/** A handle and its letter, CSS pixels. */
const ROOM_PX = 28;

/**
 * Which corners of an outline get a handle, by number: those in sight, and of a great many only as many as can be told
 * apart. The chosen one always does.
 */
export function handlesToPaint(
  corners: readonly (Point & { readonly id: string })[],
  chosen: string | null,
  view: View,
  size: Size,
): readonly number[] {
  const spots = corners.map((corner) => toScreen(view, size, corner));
  const inSight = [...spots.keys()].filter((index) => isInSight(spots[index]!, size));
  if (inSight.length <= MOST_HANDLES) return inSight;
  const taken = new Set<string>();
  return inSight.filter((index) => {
    const { x, y } = spots[index]!;
    const room = `${Math.floor(x / ROOM_PX)} ${Math.floor(y / ROOM_PX)}`;
    if (taken.has(room) && corners[index]!.id !== chosen) return false;
    taken.add(room);
    return true;
  });
}

function isInSight({ x, y }: Point, { width, height }: Size): boolean {
  return x > -ROOM_PX && x < width + ROOM_PX && y > -ROOM_PX && y < height + ROOM_PX;
}
