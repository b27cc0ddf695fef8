import type { Job } from '../../job/job.ts';
import type { Figure, Note } from '../../takeoff/figure.ts';
import { isOn } from '../../takeoff/notes.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { ticketOf } from '../../takeoff/tickets.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { figureBlocks, notesBlocks, ticketTableBlocks } from './jobBlocks.ts';
import { steelLegendRows } from './steelLegend.ts';
import { type SheetSetting, type TradeSheet, tradeSheet } from './tradeSheet.ts';

/** A column of these tables is at least this wide, mm: six columns in letters that can be read. */
const COLUMN = 84;

/** What is counted as it is laid, besides what is ordered. */
const LAID: readonly Figure['key'][] = [
  'mesh-unrolled',
  'mesh-truck',
  'mesh-truck-rolls',
  'steel-ties',
  'bar-ties',
  'steel-chairs',
  'dowel-hole',
];

/**
 * The pages that the steel is laid by: a plan to scale with every piece of mesh or every bar, chairs, dowels and joints, then
 * what is cut, bought and left, panels and joints, and what to look out for. None where there is neither steel nor joint.
 */
export function steelSheet(
  job: Job,
  takeoff: Takeoff,
  setting: SheetSetting,
  options: SheetOptions,
): TradeSheet | undefined {
  const { pour, steel, joints } = takeoff;
  const jointed = joints?.layout && joints.layout.joints.length > 0;
  if (!pour || !(steel || jointed)) return undefined;
  const says = options.words.sheet.layout.steel;
  const from = [
    ...(steel?.mesh ? [says.fromMesh] : []),
    ...(steel?.bars ? [says.fromBars] : []),
    ...(steel?.dowels ? [says.fromDowels] : []),
    ...(jointed ? [says.fromJoints] : []),
  ].join(' ');
  return tradeSheet(job, takeoff, setting, options, {
    station: 'steel-sheet',
    words: { ...says, from },
    legend: (gridPerMm) => steelLegendRows(job, takeoff, options.words, gridPerMm),
    column: COLUMN,
    blocks: (width, plain) => {
      const notes = takeoff.notes.filter(isLaidBy);
      const { figures, tables } = ticketOf(job, takeoff, 'steel');
      const jointsTicket = ticketOf(job, takeoff, 'joints');
      const laid = figures.filter(({ key, role }) => role === 'order' || LAID.includes(key));
      return [
        ...figureBlocks(job, laid, width, plain, options),
        ...ticketTableBlocks(job, tables, width, plain, options),
        ...figureBlocks(job, jointsTicket.figures.filter(isToSetOut), width, plain, options),
        ...ticketTableBlocks(job, jointsTicket.tables, width, plain, options),
        ...notesBlocks(job, notes, 'caution', width, plain, options),
        ...notesBlocks(job, notes, 'assumption', width, plain, options),
      ];
    },
  });
}

/** Of joints and strip, what is set out and what is got. */
function isToSetOut({ key }: Figure): boolean {
  return !UNSAID.includes(key);
}
const UNSAID: readonly Figure['key'][] = ['panel-most', 'joint-panels', 'joint-proof'];

/** Whether a note belongs to the steel and the joints as they are laid: cautions, and how they are held, lapped and set. */
export function isLaidBy(note: Note): boolean {
  return (isOn('steel', note) || isOn('joints', note)) && note.weight !== 'stop';
}
