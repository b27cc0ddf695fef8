import { isOdd, ratioOf, usedVolume } from '../../takeoff/pourDay/history.ts';
import { formatNumber, formatVolume } from '../../units/format.ts';
import type { Desk } from '../jobs/desk.ts';
import { useAppState, useWords } from '../SessionContext.ts';
import { localeOf } from '../speech.ts';
import { useClosedJobs } from './useClosedJobs.ts';

/** Every closed job on this device, with its used : net. */
export function HistoryCard({ desk }: { readonly desk: Desk }) {
  const { app, language } = useWords();
  const says = app.pourDay.history;
  const units = useAppState((state) => state.history.now.job.units);
  const closed = useClosedJobs(desk);
  const date = new Intl.DateTimeFormat(localeOf(language), { dateStyle: 'medium' });
  // Both in one unit, so that they can be held against each other.
  const said = (volume: number) =>
    formatVolume(volume, units, units === 'metric' ? 'cubic-metre' : 'cubic-foot');
  return (
    <section className="pour-card">
      <h2>{says.title}</h2>
      {closed.length === 0 ? <p>{says.none}</p> : null}
      <ul className="pour-history">
        {closed.map(({ id, name, closed: out }) => {
          const ratio = ratioOf(out);
          return (
            <li key={id}>
              <p>
                <strong>{name || says.unnamed}</strong> · {date.format(out.at)}
              </p>
              <p>
                {formatNumber(ratio, 2)}
                {isOdd(ratio) ? ` (${says.odd})` : null} ·{' '}
                {says.row(said(usedVolume(out)), said(out.net))}
              </p>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
