import type { Mark } from '../../drawing/marks.ts';
import type { Plan } from '../../drawing/plan.ts';
import type { Job } from '../../job/job.ts';
import { isOn } from '../../takeoff/notes.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { ticketOf } from '../../takeoff/tickets.ts';
import { printable } from '../lettering.ts';
import type { Rect, SheetPart } from '../page.ts';
import type { Turn } from '../papers.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { flow, heading, paragraph } from './blocks.ts';
import { fitPlan } from './fitPlan.ts';
import { formsLegendRows } from './formsLegend.ts';
import { columnsOf, keyedBlocks, notesBlocks, ticketTableBlocks } from './jobBlocks.ts';
import { ROW_MM } from './legend.ts';
import { type PlanFrame, planFrames } from './planFrame.ts';
import { planParts } from './planPage.ts';

/** A column of these tables is at least this wide, mm: seven columns in letters that can be read. */
const COLUMN = 112;

/** The plan of forms and stakes, the scale it is drawn at, and the tables that go with it. */
export interface FormsSheet {
  readonly frame: PlanFrame;
  readonly scaleName: string;
  readonly plan: readonly SheetPart[];
  readonly tables: readonly (readonly Mark[])[];
}

/**
 * The pages that the forms are set by: a plan to scale with every board, stake and brace, then what is cut, bought, left and
 * driven, and what to look out for. None where nothing is formed.
 * @param turn As the layout's paper is turned.
 * @param listArea Where lists stand on a page.
 */
export function formsSheet(
  job: Job,
  takeoff: Takeoff,
  turn: Turn,
  listArea: (frame: PlanFrame) => Rect,
  options: SheetOptions,
): FormsSheet | undefined {
  const { forms, pour } = takeoff;
  if (!pour || !forms || forms.runs.length === 0) return undefined;
  const legend = formsLegendRows(job, takeoff, options.words);
  const frames = planFrames(options.paper, turn, legend.length * ROW_MM, true);
  const scaled = fitPlan(job, takeoff, frames, { ...options, station: 'forms-sheet' });
  const { parts, left } = planParts(job, takeoff, scaled, legend, options);
  return {
    frame: scaled.frame,
    scaleName: scaled.scale.name,
    plan: parts,
    tables: formsTables(
      job,
      takeoff,
      { ...scaled.plan, keyed: left },
      listArea(scaled.frame),
      options,
    ),
  };
}

function formsTables(
  job: Job,
  takeoff: Takeoff,
  { keyed, unmeasured }: Plan,
  area: Rect,
  options: SheetOptions,
): readonly (readonly Mark[])[] {
  const columns = columnsOf(area, COLUMN);
  const { width } = columns[0]!;
  const { layout } = options.words.sheet;
  let lacks = false;
  const plain = (said: string): string => {
    const done = printable(said);
    if (done.lacks) lacks = true;
    return done.text;
  };
  const notes = takeoff.notes.filter((note) => isOn('forms', note));
  const { tables } = ticketOf(job, takeoff, 'forms');
  const blocks = [
    ...keyedBlocks(job, keyed, width, options),
    heading(layout.forms.title, width),
    ...paragraph(plain(layout.forms.from), width),
    ...(unmeasured.length > 0
      ? paragraph(layout.forms.unmeasured(unmeasured.join(', ')), width)
      : []),
    ...ticketTableBlocks(job, tables, width, plain, options),
    ...notesBlocks(job, notes, 'caution', width, plain, options),
  ];
  return flow(lacks ? [...blocks, ...paragraph(layout.lettersMissing, width)] : blocks, columns);
}
