import { withEntry, withoutLast } from '../../job/pourLog.ts';
import { batchWater, nextBatch } from '../../takeoff/pourDay/nextBatch.ts';
import type { Outlook } from '../../takeoff/pourDay/outlook.ts';
import type { MixResult, WaterNeed } from '../../takeoff/result.ts';
import { formatWater } from '../../units/format.ts';
import { useWords } from '../SessionContext.ts';
import { localeOf } from '../speech.ts';
import { sayBags } from './sayBags.ts';
import { useNow } from './useNow.ts';
import type { Pour } from './usePour.ts';

interface BatchCardProps {
  readonly pour: Pour;
  readonly outlook: Outlook;
  readonly mix: MixResult;
}

const MINUTE = 60_000;

/** The one large button, what goes in next, and the clock. */
export function BatchCard({ pour, outlook, mix }: BatchCardProps) {
  const { app, language } = useWords();
  const words = app.pourDay;
  const says = words.pour;
  const now = useNow(10_000);
  const { job, log, put } = pour;
  const { mixes } = job.practices.mix;
  const { batches, start, last } = outlook.progress;
  const next = nextBatch(mix, batches);
  const water = batchWater(next, mixes);
  const planned = mix.batching?.batches;
  const latest = log.entries.at(-1);
  const time = new Intl.DateTimeFormat(localeOf(language), { hour: 'numeric', minute: '2-digit' });

  return (
    <section className="pour-card">
      <p className="pour-count" role="status">
        {planned === undefined
          ? says.countAlone(String(batches))
          : says.count(String(batches), String(planned))}
      </p>
      <button
        type="button"
        className="pour-big"
        onClick={() => put(withEntry(log, { is: 'batch', at: Date.now(), bags: next }))}
      >
        +1 {says.batchIn}
      </button>
      <p className="pour-next">{says.next(sayBags(words, next, mixes))}</p>
      {water ? <p className="pour-next">{sayWater(water)}</p> : null}
      {start === null ? null : (
        <p className="pour-soft">
          {says.started(time.format(start))} · {elapsed(now - start)}
          {last === null ? null : ` · ${says.last(String(minutesOf(now - last)))}`}
        </p>
      )}
      <button
        type="button"
        className="pour-button"
        disabled={!latest}
        onClick={() => put(withoutLast(log))}
      >
        {latest ? says.takeBackWhat[latest.is] : says.nothing}
      </button>
    </section>
  );

  function elapsed(took: number): string {
    const minutes = minutesOf(took);
    return says.elapsed(String(Math.floor(minutes / 60)), String(minutes % 60));
  }

  function sayWater({ least, most, from }: WaterNeed): string {
    const low = formatWater(least, job.units, most);
    const high = formatWater(most, job.units);
    const range = low === high ? says.waterOne(high) : says.water(low, high);
    return from === 'bag' ? range : `${range} ${says.waterSeen}`;
  }
}

/** A clock that was set back makes no time less than none. */
function minutesOf(took: number): number {
  return Math.max(0, Math.floor(took / MINUTE));
}
