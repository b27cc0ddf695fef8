import type { Mark } from '../../drawing/marks.ts';
import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { printable } from '../lettering.ts';
import type { Rect } from '../page.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { batchBlocks } from './batchBlocks.ts';
import { type Block, flow, paragraph } from './blocks.ts';
import { columnsOf, type Plain } from './jobBlocks.ts';
import { timelineBlocks } from './timelineBlocks.ts';

/** One part of the plan of the pour, as blocks that run down a column: none when there is nothing to say. */
type PourPart = (
  job: Job,
  takeoff: Takeoff,
  width: number,
  plain: Plain,
  options: SheetOptions,
) => readonly Block[];

/** In the order that a crew reads them on the day. */
const PARTS: readonly PourPart[] = [batchBlocks, timelineBlocks];

/** A column of these lists is at least this wide, mm: seven columns and a box in letters that can be read. */
const COLUMN = 112;

/** The pages that the pour is run by: batches to tick off, and what should be gone by when. None where nothing is poured. */
export function pourPages(
  job: Job,
  takeoff: Takeoff,
  area: Rect,
  options: SheetOptions,
): readonly (readonly Mark[])[] {
  const columns = columnsOf(area, COLUMN);
  const { width } = columns[0]!;
  let lacks = false;
  const plain: Plain = (said) => {
    const done = printable(said);
    if (done.lacks) lacks = true;
    return done.text;
  };
  const blocks = PARTS.flatMap((part) => part(job, takeoff, width, plain, options));
  if (blocks.length === 0) return [];
  const lackWords = lacks ? paragraph(options.words.sheet.layout.lettersMissing, width) : [];
  return flow([...blocks, ...lackWords], columns);
}
