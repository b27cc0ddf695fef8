import type { LineStyle } from '../../drawing/marks.ts';
import type { Colour } from './palette.ts';

export interface Stroke {
  readonly colour: Colour;
  /** CSS pixels. Wide and narrow lines stand about two to one (ISO 128). */
  readonly width: number;
  readonly dash: readonly number[];
}

const CONTINUOUS: readonly number[] = [];
const DASHED: readonly number[] = [9, 4];
const CHAIN: readonly number[] = [14, 3, 2, 3];

export const STROKES: Readonly<Record<LineStyle, Stroke>> = {
  outline: { colour: 'ink', width: 2, dash: CONTINUOUS },
  'outline-free': { colour: 'ink', width: 2.8, dash: CONTINUOUS },
  'outline-existing': { colour: 'ink-soft', width: 2, dash: CONTINUOUS },
  'outline-wall': { colour: 'soil', width: 3.4, dash: CONTINUOUS },
  'outline-wall-formed': { colour: 'soil', width: 3.4, dash: DASHED },
  'outline-steps': { colour: 'ink-soft', width: 2, dash: CONTINUOUS },
  'outline-block-out': { colour: 'ink', width: 1.8, dash: CONTINUOUS },
  'outline-patch': { colour: 'ink', width: 2, dash: DASHED },
  // In the colours of the marks on the ground (utility-marking-colours); the dashes and the word in it say it as well.
  'utility-electric': { colour: 'electric', width: 2.6, dash: [20, 4, 7, 4] },
  'utility-gas': { colour: 'gas', width: 2.6, dash: [20, 4, 7, 4, 7, 4] },
  'utility-communication': { colour: 'communication', width: 2.6, dash: [12, 4, 2, 4] },
  'utility-water': { colour: 'water', width: 2.6, dash: [12, 4, 12, 4, 2, 4] },
  'utility-reclaimed-water': { colour: 'reclaimed-water', width: 2.6, dash: [12, 4, 2, 4, 2, 4] },
  'utility-sewer': { colour: 'sewer', width: 2.6, dash: [12, 4, 12, 4, 2, 4, 2, 4] },
  dimension: { colour: 'chalk', width: 1.1, dash: CONTINUOUS },
  extension: { colour: 'chalk', width: 0.9, dash: CONTINUOUS },
  hidden: { colour: 'ink-soft', width: 1.2, dash: DASHED },
  centre: { colour: 'ink-soft', width: 1, dash: CHAIN },
  mesh: { colour: 'steel', width: 1, dash: CONTINUOUS },
  'mesh-under': { colour: 'steel', width: 1, dash: [5, 3] },
  lap: { colour: 'steel', width: 1, dash: DASHED },
  bar: { colour: 'steel', width: 1.4, dash: CONTINUOUS },
  'bar-corner': { colour: 'steel', width: 2.6, dash: CONTINUOUS },
  dowel: { colour: 'steel', width: 3.2, dash: CONTINUOUS },
  'joint-control': { colour: 'ink', width: 2, dash: [13, 5] },
  'joint-construction': { colour: 'ink', width: 3.6, dash: [13, 5] },
  'joint-existing': { colour: 'ink-soft', width: 1.6, dash: [7, 5] },
  strip: { colour: 'soil', width: 4.5, dash: CONTINUOUS },
  form: { colour: 'lumber', width: 5, dash: CONTINUOUS },
  board: { colour: 'ink', width: 0.9, dash: CONTINUOUS },
  splice: { colour: 'ink', width: 2, dash: CONTINUOUS },
  brace: { colour: 'ink', width: 1.6, dash: CONTINUOUS },
  fault: { colour: 'stop', width: 3, dash: CONTINUOUS },
  guide: { colour: 'chalk', width: 1, dash: [4, 4] },
  match: { colour: 'ink', width: 2, dash: [12, 3, 3, 3] },
  frame: { colour: 'ink', width: 1.4, dash: CONTINUOUS },
  hairline: { colour: 'rule', width: 0.8, dash: CONTINUOUS },
};
