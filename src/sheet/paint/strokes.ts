import type { LineStyle } from '../../drawing/marks.ts';
import type { Stroke } from './pen.ts';

export const INK = '#1b1d1e';
const GREY = '#55595c';
export const PAPER = '#ffffff';

const CONTINUOUS: readonly number[] = [];
const DASHED: readonly number[] = [2.8, 1.1];
const LONG_DASHED: readonly number[] = [6, 1.2];
const DOTTED: readonly number[] = [0.8, 0.8];
const CHAIN: readonly number[] = [7, 1.1, 0.8, 1.1];
const DOUBLE_CHAIN: readonly number[] = [7, 1.1, 0.8, 1.1, 0.8, 1.1];

function ink(width: number, dash: readonly number[]): Stroke {
  return { width, dash, colour: INK };
}

/**
 * Lines on paper (ISO 128: wide and narrow, two to one and more). Edges are told apart by dash and width alone, so that
 * a photocopy says the same.
 */
export const STROKES: Readonly<Record<LineStyle, Stroke>> = {
  outline: ink(0.5, CONTINUOUS),
  'outline-free': ink(0.7, CONTINUOUS),
  'outline-existing': ink(0.6, DASHED),
  'outline-wall': ink(0.7, CHAIN),
  'outline-wall-formed': ink(0.7, DOUBLE_CHAIN),
  'outline-steps': ink(0.6, LONG_DASHED),
  'outline-block-out': ink(0.35, CONTINUOUS),
  'outline-patch': ink(0.35, DOTTED),
  // Kinds of dashes that no edge has (ISO 128, types 08 to 13, from memory); the word in the line says it as well.
  'utility-electric': ink(0.5, [7, 1.1, 2.4, 1.1]),
  'utility-gas': ink(0.5, [7, 1.1, 2.4, 1.1, 2.4, 1.1]),
  'utility-communication': ink(0.5, [4.2, 1.1, 0.6, 1.1]),
  'utility-water': ink(0.5, [4.2, 1.1, 4.2, 1.1, 0.6, 1.1]),
  'utility-reclaimed-water': ink(0.5, [4.2, 1.1, 0.6, 1.1, 0.6, 1.1]),
  'utility-sewer': ink(0.5, [4.2, 1.1, 4.2, 1.1, 0.6, 1.1, 0.6, 1.1]),
  dimension: ink(0.22, CONTINUOUS),
  extension: ink(0.18, CONTINUOUS),
  hidden: ink(0.3, [1.8, 0.9]),
  centre: ink(0.18, [6, 1, 1, 1]),
  mesh: ink(0.3, CONTINUOUS),
  'mesh-under': ink(0.3, [1.8, 0.9]),
  lap: ink(0.18, CONTINUOUS),
  bar: ink(0.35, CONTINUOUS),
  'bar-corner': ink(0.7, CONTINUOUS),
  dowel: ink(0.9, CONTINUOUS),
  // Long dashes with a letter in them; an older slab's are finer.
  'joint-control': ink(0.35, [4.5, 1.5]),
  'joint-construction': ink(0.7, [4.5, 1.5]),
  'joint-existing': ink(0.25, [2.2, 1.4]),
  strip: { width: 0.9, dash: [0.5, 0.9], colour: GREY },
  form: ink(0.8, CONTINUOUS),
  board: ink(0.22, CONTINUOUS),
  splice: ink(0.5, CONTINUOUS),
  brace: ink(0.35, CONTINUOUS),
  fault: ink(0.7, CONTINUOUS),
  guide: ink(0.18, DASHED),
  match: ink(0.8, [12, 1.6, 3, 1.6, 3, 1.6]),
  frame: ink(0.6, CONTINUOUS),
  hairline: ink(0.18, CONTINUOUS),
};

/** Symbols are drawn with this. */
export const SYMBOL_STROKE: Stroke = ink(0.35, CONTINUOUS);
