import type { Job } from '../../job/job.ts';
import type { Selection } from '../../sketch/tools/tool.ts';
import type { View } from '../../sketch/view.ts';
import type { Note } from '../../takeoff/figure.ts';
import { METRE } from '../../units/grid.ts';

/** A person's step to either side of the spot stays in view, however small the thing is. */
const LEAST_ACROSS = 3 * METRE;
/** About how wide the sketch is on a phone, px: close enough to choose a scale by. */
const SCREEN_PX = 360;

/** Where the sketch should point for a note: what to select, and a look at it. */
export function placeOfNote(
  note: Note,
  job: Job,
): { readonly selection: Selection | null; readonly view: View | null } | null {
  const feature = job.features.find((one) => note.features?.includes(one.id));
  const at = note.at ?? [];
  if (!feature && at.length === 0) return null;
  return { selection: feature ? { feature: feature.id } : null, view: lookAt(at) };
}

function lookAt(at: NonNullable<Note['at']>): View | null {
  if (at.length === 0) return null;
  const xs = at.map(({ x }) => x);
  const ys = at.map(({ y }) => y);
  const [west, east] = [Math.min(...xs), Math.max(...xs)];
  const [south, north] = [Math.min(...ys), Math.max(...ys)];
  const across = Math.max(east - west, north - south, LEAST_ACROSS) * 1.5;
  return {
    center: { x: Math.round((west + east) / 2), y: Math.round((south + north) / 2) },
    gridPerPx: across / SCREEN_PX,
  };
}
