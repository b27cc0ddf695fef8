import type { Job } from '../../job/job.ts';
import type { Ticket } from '../figure.ts';
import { bidFigures, labourTable, orderTable } from '../price/figures.ts';
import type { Takeoff } from '../result.ts';
import { costTable, haulTable, truckFigures } from '../truck/figures.ts';
import { orderFigures } from './figures.ts';

/** The order's ticket: the list, spare bags, bags against truck, trips, and the bid. */
export function orderTicket(job: Job, takeoff: Takeoff): Omit<Ticket, 'station'> {
  const { order } = takeoff;
  if (!order) return { figures: [], tables: [] };
  return {
    figures: [
      ...orderFigures(job, takeoff, order),
      ...truckFigures(job, order),
      ...bidFigures(job, order),
    ],
    tables: [
      ...(order.lines.length > 0 ? [orderTable(job, order)] : []),
      ...(order.compare ? [costTable(job, order.compare)] : []),
      ...haulTable(order),
      ...labourTable(order),
    ],
  };
}
