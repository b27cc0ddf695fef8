import type { UnitStyle } from '../../job/job.ts';
import type { Figure, Ticket } from '../../takeoff/figure.ts';
import { useWords } from '../SessionContext.ts';
import { EXPECTED } from './expected.ts';
import { FigureRow } from './FigureRow.tsx';
import { SlipTable } from './SlipTable.tsx';

type Role = NonNullable<Figure['role']> | 'plain';

interface SlipProps {
  readonly ticket: Ticket;
  readonly units: UnitStyle;
  /** Something is in the way, so what is missing is named. */
  readonly withheld: boolean;
}

/** A ticket's figures, ruled, with net, allowance, rounding and what to get kept apart. */
export function Slip({ ticket, units, withheld }: SlipProps) {
  const words = useWords();
  const missing = withheld
    ? EXPECTED[ticket.station].filter((key) => !ticket.figures.some((one) => one.key === key))
    : [];
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
      {missing.map((key) => (
        <p key={key} className="figure figure-withheld">
          <span className="figure-name">{words.sheet.figures[key]}</span>
          <span className="figure-leader" aria-hidden="true" />
          <span className="figure-value">
            {words.app.ticket.withheld} <span className="from">{words.app.ticket.withheldWhy}</span>
          </span>
        </p>
      ))}
      {ticket.tables.map((table) => (
        <SlipTable key={table.key} table={table} units={units} station={ticket.station} />
      ))}
    </>
  );
}

/** Neighbours of one role together, in the ticket's own order; what to get comes last, as one list to take along. */
export function byRole(
  figures: readonly Figure[],
): readonly { readonly role: Role; readonly figures: readonly Figure[] }[] {
  const groups: { role: Role; figures: Figure[] }[] = [];
  const toGet = figures.filter(({ role }) => role === 'order');
  for (const figure of figures.filter(({ role }) => role !== 'order')) {
    const role = figure.role ?? 'plain';
    const last = groups.at(-1);
    if (last?.role === role) last.figures.push(figure);
    else groups.push({ role, figures: [figure] });
  }
  return toGet.length > 0 ? [...groups, { role: 'order', figures: toGet }] : groups;
}
