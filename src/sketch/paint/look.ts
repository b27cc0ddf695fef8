import type { Size, View } from '../view.ts';
import type { Palette } from './palette.ts';

/** How a drawing is looked at: from where, how large, in which colours. */
export interface Look {
  readonly view: View;
  readonly size: Size;
  readonly palette: Palette;
}
