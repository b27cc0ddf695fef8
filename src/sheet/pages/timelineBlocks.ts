import { drawTimeline } from '../../drawing/timeline.ts';
import type { Job } from '../../job/job.ts';
import type { Figure } from '../../takeoff/figure.ts';
import { isOfPlacing } from '../../takeoff/placing/isOfPlacing.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { ticketOf } from '../../takeoff/tickets.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { type Block, heading } from './blocks.ts';
import { figureBlocks, notesBlocks, type Plain, ticketTableBlocks } from './jobBlocks.ts';

/** What a crew goes by on the day. */
const SAID: readonly Figure['key'][] = [
  'placing-batch',
  'placing-time',
  'first-set',
  'open-edge',
  'edge-window',
  'finish-time',
  'forms-off',
  'screed-span',
  'screed-strips',
  'evaporation',
  'set-factor',
];

/** How the pour goes: the day as a drawing, its strips as a table, what would help, and what to look out for. */
export function timelineBlocks(
  job: Job,
  takeoff: Takeoff,
  width: number,
  plain: Plain,
  options: SheetOptions,
): readonly Block[] {
  const { placing } = takeoff;
  if (!placing) return [];
  const { sheet, drawing } = options.words;
  const { figures, tables } = ticketOf(job, takeoff, 'mix');
  const notes = takeoff.notes.filter(isOfPlacing);
  const draw: Block['draw'] = (x, y) =>
    drawTimeline(placing, { x, y: y + 1, width, words: drawing.timeline }).marks;
  const { height } = drawTimeline(placing, { x: 0, y: 0, width, words: drawing.timeline });
  return [
    heading(sheet.layout.howItGoes, width),
    { height: height + 3, leads: false, draw },
    ...figureBlocks(
      job,
      figures.filter(({ key }) => SAID.includes(key)),
      width,
      plain,
      options,
    ),
    ...ticketTableBlocks(
      job,
      tables.filter(({ key }) => key === 'placing-strips' || key === 'placing-offers'),
      width,
      plain,
      options,
    ),
    ...notesBlocks(job, notes, 'caution', width, plain, options),
    ...notesBlocks(job, notes, 'assumption', width, plain, options),
  ];
}
