import { useState } from 'react';
import { LANGUAGES } from '../../drawing/words/language.ts';
import type { Job } from '../../job/job.ts';
import { type PriceLineProblem, pricesCsv, readPrices } from '../../sheet/csv/pricesCsv.ts';
import { sayQuantity } from '../../sheet/words/say.ts';
import { fileNameOf } from '../../storage/files.ts';
import type { OrderResult } from '../../takeoff/order/orderResult.ts';
import { type PriceItem, priceItems } from '../../takeoff/price/items.ts';
import { count, list, term } from '../../takeoff/quantity.ts';
import type { Money } from '../../units/money.ts';
import { priceReading } from '../boards/readings.ts';
import { CSV_TYPE } from '../handOver/csvFile.ts';
import { download } from '../jobs/download.ts';
import { FileButton } from '../jobs/FileButton.tsx';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { type AllWords, wordsFor } from '../words/words.ts';

interface PricesPartProps {
  readonly job: Job;
  readonly order: OrderResult;
}

/** More lines than this are not told one by one. */
const MOST_TOLD = 20;

/** The user's own prices: of each line of the list, and of what else is reckoned with; in and out as a table. */
export function PricesPart({ job, order }: PricesPartProps) {
  const words = useWords();
  const says = words.app.order.prices;
  const session = useSession();
  const terms = useAppState((state) => state.speech.terms);
  const [outcome, setOutcome] = useState<readonly string[]>([]);
  const [refused, setRefused] = useState(false);
  const items = priceItems(job, order);
  const { currency } = job.practices;

  async function bringIn(file: File) {
    const spoken = LANGUAGES.map((one) => wordsFor(one, terms).sheet);
    const read = readPrices(await file.text(), items, currency, spoken);
    setRefused(!read.ok);
    if (read.ok) {
      session.commit({ do: 'set-prices', prices: read.prices });
      setOutcome([says.taken(read.prices.length)]);
      return;
    }
    const told = read.problems.slice(0, MOST_TOLD).map((one) => sayLine(words, one));
    const more = read.problems.length - told.length;
    setOutcome([says.refused, ...told, ...(more > 0 ? [says.more(more)] : [])]);
  }

  return (
    <section className="slip-part" aria-label={words.app.order.parts.prices}>
      <p className="field-note">{says.hint}</p>
      <ul className="price-list">
        {items.map((one) => (
          <li key={one.item}>
            <TypedField<Money | null>
              label={labelOf(words, one, job)}
              {...priceReading(one.price, currency)}
              unit={says.each(sayQuantity(words.sheet, count(1, one.unit), job.units))}
              say={(problem) => sayReading(words, problem)}
              onValue={(price) =>
                session.commit({ do: 'set-prices', prices: [{ item: one.item, price }] })
              }
              inputMode="decimal"
            />
          </li>
        ))}
      </ul>
      <div className="button-row">
        <button
          type="button"
          className="plain"
          onClick={() =>
            download(
              fileNameOf({ name: says.file }, 'csv'),
              pricesCsv(words.sheet, items, job.units),
              CSV_TYPE,
            )
          }
        >
          {says.save}
        </button>
        <FileButton label={says.open} accept=".csv,text/csv" onFile={bringIn} />
      </div>
      <div role="status">
        {outcome.map((line) => (
          <p key={line} className={refused ? 'field-error' : 'field-note'}>
            {line}
          </p>
        ))}
      </div>
    </section>
  );
}

function labelOf({ sheet }: AllWords, { is, named }: PriceItem, { units }: Job): string {
  return sayQuantity(sheet, list([term(is), ...named]), units);
}

/** What is wrong with a line of the table, and how to mend it. */
function sayLine(words: AllWords, problem: PriceLineProblem): string {
  const says = words.app.order.prices.problems;
  switch (problem.is) {
    case 'quote':
      return says.quote(problem.line);
    case 'heads': {
      const { item, price } = words.sheet.csv.prices;
      return says.heads(item, price);
    }
    case 'unknown-item':
      return says.unknown(problem.line, problem.item);
    case 'twice':
      return says.twice(problem.line, problem.item);
    case 'price':
      return says.price(problem.line, sayReading(words, problem.problem));
  }
}
