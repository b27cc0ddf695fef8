import type { BagsOf, PourEntry } from '../../job/pourLog.ts';
import { formatNumber } from '../../units/format.ts';
import { useWords } from '../SessionContext.ts';
import { localeOf } from '../speech.ts';
import { nameOfMix } from './sayBags.ts';
import type { Pour } from './usePour.ts';

/** Every batch with what went in, the last on top; where one was different, its bags are set right. */
export function BatchList({ pour }: { readonly pour: Pour }) {
  const { app, language } = useWords();
  const says = app.pourDay.pour;
  const { job, log, put, takeoff } = pour;
  const { mixes } = job.practices.mix;
  const time = new Intl.DateTimeFormat(localeOf(language), { hour: 'numeric', minute: '2-digit' });
  const blend = takeoff.mix?.bags.map(({ mix }) => mix) ?? [];
  const batches = log.entries.flatMap((entry, at) => (entry.is === 'batch' ? [{ entry, at }] : []));
  if (batches.length === 0) return null;

  function set(at: number, entry: PourEntry) {
    put({ ...log, entries: log.entries.map((one, i) => (i === at ? entry : one)) });
  }

  return (
    <details className="pour-card">
      <summary>{says.list}</summary>
      <p className="pour-soft">{says.different}</p>
      <ol className="pour-batches">
        {batches
          .map(({ entry, at }, number) => (
            <li key={at}>
              <p>
                <strong>{says.batch(String(number + 1))}</strong> {time.format(entry.at)}
              </p>
              {[...new Set([...blend, ...entry.bags.map(({ mix }) => mix)])].map((mix) => {
                const bags = entry.bags.find((one) => one.mix === mix)?.bags ?? 0;
                const name = nameOfMix(mix, mixes);
                const change = (by: number) =>
                  set(at, { ...entry, bags: withBags(entry.bags, mix, Math.max(0, bags + by)) });
                return (
                  <div key={mix} className="pour-row">
                    <button
                      type="button"
                      className="pour-button"
                      aria-label={says.less(name, String(number + 1))}
                      disabled={bags === 0}
                      onClick={() => change(-0.5)}
                    >
                      −
                    </button>
                    <span className="pour-grow">{says.bags(formatNumber(bags), name)}</span>
                    <button
                      type="button"
                      className="pour-button"
                      aria-label={says.more(name, String(number + 1))}
                      onClick={() => change(0.5)}
                    >
                      +
                    </button>
                  </div>
                );
              })}
            </li>
          ))
          .toReversed()}
      </ol>
    </details>
  );
}

function withBags(list: readonly BagsOf[], mix: string, bags: number): readonly BagsOf[] {
  return list.some((one) => one.mix === mix)
    ? list.map((one) => (one.mix === mix ? { mix, bags } : one))
    : [...list, { mix, bags }];
}
