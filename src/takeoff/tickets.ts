import type { Job, Practices } from '../job/job.ts';
import { boardFigures } from './boards/figures.ts';
import { boardTables } from './boards/tables.ts';
import type { Station, Ticket } from './figure.ts';
import { formFigures, runsTable } from './forms/figures.ts';
import { groundFigures } from './ground/figures.ts';
import { jointFigures } from './joints/figures.ts';
import { jointTables } from './joints/tables.ts';
import { mixFigures } from './mix/figures.ts';
import { bagsTable, batchTable, checkpointTable, readingsTable } from './mix/tables.ts';
import { orderTicket } from './order/ticket.ts';
import { placingFigures } from './placing/figures.ts';
import { placingTables } from './placing/tables.ts';
import type { Takeoff } from './result.ts';
import { stakeFigures } from './stakes/figures.ts';
import { stakeList } from './stakes/stakeList.ts';
import { barTables } from './steel/barTables.ts';
import { dowelHolesTable } from './steel/dowelFigures.ts';
import { steelFigures } from './steel/figures.ts';
import { meshTables } from './steel/meshTables.ts';
import { formDepthFigure, volumeFigures } from './volume/figures.ts';
import { weatherFigures } from './weather/figures.ts';

/**
 * One ticket a station, in the order of the day, with the figures that could be figured. Workings are made only when
 * somebody opens them. A figure that was withheld isn't there; the takeoff's notes say why.
 * @param job The job that the takeoff was figured from.
 */
export function tickets(job: Job, takeoff: Takeoff): readonly Ticket[] {
  return STATIONS.map((station) => ticketOf(job, takeoff, station));
}

const STATIONS: readonly Station[] = ['ground', 'forms', 'steel', 'joints', 'mix', 'order'];

/** The ticket of one station alone: see tickets. */
export function ticketOf(job: Job, takeoff: Takeoff, station: Station): Ticket {
  return { station, ...FIGURED[station](job.practices, takeoff, job) };
}

const FIGURED: Readonly<
  Record<Station, (practices: Practices, takeoff: Takeoff, job: Job) => Omit<Ticket, 'station'>>
> = {
  ground: (_, { pour }) => ({ figures: pour ? groundFigures(pour) : [], tables: [] }),
  forms: (practices, { forms, stakes, boards }, job) => ({
    figures: [
      ...(forms ? formFigures(practices, forms) : []),
      ...(boards ? boardFigures(practices, boards) : []),
      ...(forms && stakes ? stakeFigures(practices, forms, stakes) : []),
    ],
    tables: [
      ...(forms && forms.runs.length > 0 ? [runsTable(forms, stakes)] : []),
      ...(boards ? boardTables(job, boards) : []),
      ...(forms && stakes && forms.runs.length > 0 ? [stakeList(job, forms, stakes)] : []),
    ],
  }),
  steel: (practices, { steel }) => ({
    figures: steel ? steelFigures(practices, steel) : [],
    tables: [
      ...(steel?.mesh ? meshTables(practices, steel.mesh) : []),
      ...(steel?.bars ? barTables(practices, steel.bars) : []),
      ...(steel?.dowels && steel.dowels.seams.length > 0 ? [dowelHolesTable(steel.dowels)] : []),
    ],
  }),
  joints: (practices, { joints }, job) => ({
    figures: joints ? jointFigures(practices, joints) : [],
    tables: joints ? jointTables(job, joints) : [],
  }),
  mix: (practices, { pour, volume, mix, joints, weather, placing }) => ({
    figures: [
      ...(pour && volume ? volumeFigures(pour, volume) : []),
      ...(pour && volume && volume.formDepth !== volume.thickness
        ? [formDepthFigure(pour, volume)]
        : []),
      ...(volume && mix ? mixFigures(practices, volume, mix) : []),
      ...(weather ? weatherFigures(practices, weather) : []),
      ...(placing ? placingFigures(practices, placing) : []),
    ],
    tables: [
      ...(volume ? readingsTable(volume) : []),
      ...(mix ? [bagsTable(practices, mix)] : []),
      ...(mix?.batching ? [batchTable(practices, mix)] : []),
      ...(pour && volume && mix
        ? [checkpointTable(practices, pour, volume, mix, joints?.layout)]
        : []),
      ...(placing ? placingTables(placing, joints) : []),
    ],
  }),
  order: (_, takeoff, job) => orderTicket(job, takeoff),
};
