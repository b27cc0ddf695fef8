import type { Job } from '../../job/job.ts';
import { isOn } from '../../takeoff/notes.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { ticketOf } from '../../takeoff/tickets.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { formsLegendRows } from './formsLegend.ts';
import { notesBlocks, ticketTableBlocks } from './jobBlocks.ts';
import { type SheetSetting, type TradeSheet, tradeSheet } from './tradeSheet.ts';

/** A column of these tables is at least this wide, mm: seven columns in letters that can be read. */
const COLUMN = 112;

/**
 * The pages that the forms are set by: a plan to scale with every board, stake and brace, then what is cut, bought, left and
 * driven, and what to look out for. None where nothing is formed.
 */
export function formsSheet(
  job: Job,
  takeoff: Takeoff,
  setting: SheetSetting,
  options: SheetOptions,
): TradeSheet | undefined {
  const { forms, pour } = takeoff;
  if (!pour || !forms || forms.runs.length === 0) return undefined;
  const legend = formsLegendRows(job, takeoff, options.words);
  return tradeSheet(job, takeoff, setting, options, {
    station: 'forms-sheet',
    words: options.words.sheet.layout.forms,
    legend: () => legend,
    column: COLUMN,
    blocks: (width, plain) => {
      const notes = takeoff.notes.filter((note) => isOn('forms', note));
      const { tables } = ticketOf(job, takeoff, 'forms');
      return [
        ...ticketTableBlocks(job, tables, width, plain, options),
        ...notesBlocks(job, notes, 'caution', width, plain, options),
      ];
    },
  });
}
