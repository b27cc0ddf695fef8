import type { Job } from '../job/job.ts';
import type { Figure, Ticket, TicketTable } from './figure.ts';
import { formFigures, runsTable } from './forms/figures.ts';
import { groundFigures } from './ground/figures.ts';
import { jointFigures, stripsTable } from './joints/figures.ts';
import { bagsTable, mixFigures } from './mix/figures.ts';
import type { Takeoff } from './result.ts';
import { stakeFigures } from './stakes/figures.ts';
import { meshCutsTable, steelFigures } from './steel/figures.ts';
import { formDepthFigure, volumeFigures } from './volume/figures.ts';

/**
 * One ticket a station, in the order of the day, with the figures that could be figured. Workings are made only when
 * somebody opens them. A figure that was withheld isn't there; the takeoff's notes say why.
 * @param job The job that the takeoff was figured from.
 */
export function tickets(job: Job, takeoff: Takeoff): readonly Ticket[] {
  const { practices } = job;
  const { pour, volume, forms, stakes, steel, joints, mix } = takeoff;
  return [
    ticket('ground', pour ? groundFigures(pour) : []),
    ticket(
      'forms',
      [
        ...(forms ? formFigures(practices, forms) : []),
        ...(forms && stakes ? stakeFigures(practices, forms, stakes) : []),
      ],
      forms && forms.runs.length > 0 ? [runsTable(forms, stakes)] : [],
    ),
    ticket(
      'steel',
      steel ? steelFigures(practices, steel) : [],
      steel ? [meshCutsTable(steel)] : [],
    ),
    ticket(
      'joints',
      joints ? jointFigures(practices, joints) : [],
      joints && joints.isolation.length > 0 ? [stripsTable(joints)] : [],
    ),
    ticket(
      'mix',
      [
        ...(pour && volume ? volumeFigures(pour, volume) : []),
        ...(pour && volume && volume.formDepth !== volume.thickness
          ? [formDepthFigure(pour, volume)]
          : []),
        ...(mix ? mixFigures(practices, mix) : []),
      ],
      mix ? [bagsTable(practices, mix)] : [],
    ),
  ];
}

function ticket(
  station: Ticket['station'],
  figures: readonly Figure[],
  tables: readonly TicketTable[] = [],
): Ticket {
  return { station, figures, tables };
}
