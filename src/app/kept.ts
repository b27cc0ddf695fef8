import type { View } from '../sketch/view.ts';
import { PLACES } from './places/places.ts';
import type { Kept, Panel } from './state.ts';

const PANELS: readonly Panel[] = ['ticket', 'practices', 'corners'];

/** What was kept beside a job, as far as it makes sense to this version. It holds no work, only where one was. */
export function readKept(kept: unknown): Partial<Kept> {
  if (typeof kept !== 'object' || kept === null) return {};
  const place = PLACES.find((one) => one === Reflect.get(kept, 'place'));
  const panel = PANELS.find((one) => one === Reflect.get(kept, 'panel'));
  const view = readView(Reflect.get(kept, 'view'));
  return { view, ...(place ? { place } : {}), ...(panel ? { panel } : {}) };
}

function readView(view: unknown): View | null {
  if (typeof view !== 'object' || view === null) return null;
  const center: unknown = Reflect.get(view, 'center');
  const gridPerPx: unknown = Reflect.get(view, 'gridPerPx');
  if (typeof center !== 'object' || center === null) return null;
  const [x, y]: unknown[] = [Reflect.get(center, 'x'), Reflect.get(center, 'y')];
  const sound = isNumber(x) && isNumber(y) && isNumber(gridPerPx) && gridPerPx > 0;
  return sound ? { center: { x, y }, gridPerPx } : null;
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
