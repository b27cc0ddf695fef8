import { type Size, toScreen, type View } from '../view.ts';

/** How a picture painted for one view is shifted and scaled to lie right in another, as a CSS transform from its corner. */
export function carriedTo(painted: View, view: View, size: Size): string {
  const scale = painted.gridPerPx / view.gridPerPx;
  const middle = toScreen(view, size, painted.center);
  const x = middle.x - (size.width / 2) * scale;
  const y = middle.y - (size.height / 2) * scale;
  return `translate(${x}px, ${y}px) scale(${scale})`;
}
