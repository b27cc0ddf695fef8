import type { UnitStyle } from '../../job/job.ts';
import type { Figure, Ticket } from '../../takeoff/figure.ts';
import { useWords } from '../SessionContext.ts';
import { FigureRow } from './FigureRow.tsx';
import { SlipTable } from './SlipTable.tsx';

type Role = NonNullable<Figure['role']> | 'plain';

interface SlipProps {
  readonly ticket: Ticket;
  readonly units: UnitStyle;
}

/** A ticket's figures, ruled, with net, allowance, rounding and what to get kept apart. */
export function Slip({ ticket, units }: SlipProps) {
  const words = useWords();
  return (
    <>
      {byRole(ticket.figures).map(({ role, figures }) => (
        <section key={figures[0]?.key} className="figures" data-role={role}>
          {words.app.ticket.roles[role] ? (
            <h3 className="slip-role">{words.app.ticket.roles[role]}</h3>
          ) : null}
          {figures.map((figure) => (
            <FigureRow key={figure.key} figure={figure} units={units} />
          ))}
        </section>
      ))}
      {ticket.tables.map((table) => (
        <SlipTable key={table.key} table={table} units={units} />
      ))}
    </>
  );
}

/** Neighbours of one role together, in the ticket's own order. */
export function byRole(
  figures: readonly Figure[],
): readonly { readonly role: Role; readonly figures: readonly Figure[] }[] {
  const groups: { role: Role; figures: Figure[] }[] = [];
  for (const figure of figures) {
    const role = figure.role ?? 'plain';
    const last = groups.at(-1);
    if (last?.role === role) last.figures.push(figure);
    else groups.push({ role, figures: [figure] });
  }
  return groups;
}
