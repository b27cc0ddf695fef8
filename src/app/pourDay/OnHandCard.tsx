import { withEntry } from '../../job/pourLog.ts';
import type { Outlook } from '../../takeoff/pourDay/outlook.ts';
import { bagsOfMix, onHandOf } from '../../takeoff/pourDay/progress.ts';
import { countReading } from '../practices/reading.ts';
import { TypedReading } from '../practices/TypedReading.tsx';
import { useWords } from '../SessionContext.ts';
import { nameOfMix } from './sayBags.ts';
import type { Pour } from './usePour.ts';

interface OnHandCardProps {
  readonly pour: Pour;
  readonly outlook: Outlook;
}

const MOST = 100_000;

/** What lay at the pad when it began, counted anew where the ticket is wrong, and what was fetched since. */
export function OnHandCard({ pour, outlook }: OnHandCardProps) {
  const words = useWords().app.pourDay;
  const says = words.forecast;
  const { job, log, put, takeoff } = pour;
  const { mixes } = job.practices.mix;
  const { mix } = takeoff;
  if (!mix) return null;
  const onHand = onHandOf(log, mix);
  return (
    <details className="pour-card">
      <summary>{says.onHand}</summary>
      {outlook.progress.bags.map(({ mix: id }) => {
        const name = nameOfMix(id, mixes);
        return (
          <div key={id} className="pour-row">
            <div className="pour-grow">
              <TypedReading
                label={says.counted(name)}
                reading={countReading(bagsOfMix(onHand, id), 0, MOST)}
                onValue={(bags) =>
                  put({
                    ...log,
                    onHand: [...onHand.filter((one) => one.mix !== id), { mix: id, bags }],
                  })
                }
              />
            </div>
            <button
              type="button"
              className="pour-button"
              aria-label={says.fetchedOf(name)}
              onClick={() =>
                put(withEntry(log, { is: 'more', at: Date.now(), bags: [{ mix: id, bags: 1 }] }))
              }
            >
              +1 {says.fetched}
            </button>
          </div>
        );
      })}
    </details>
  );
}
