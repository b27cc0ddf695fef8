import type { Job } from '../../job/job.ts';
import type { Station, Ticket } from '../../takeoff/figure.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { tickets } from '../../takeoff/tickets.ts';

export function ticketOf(job: Job, takeoff: Takeoff, station: Station): Ticket | null {
  return tickets(job, takeoff).find((ticket) => ticket.station === station) ?? null;
}
