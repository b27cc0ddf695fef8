import { useRef, useState } from 'react';
import type { Job } from '../../job/job.ts';
import type { ExtraLine } from '../../job/order.ts';
import { bidOf } from '../../job/orderDefaults.ts';
import { TEXT_MOST } from '../../job/textLimits.ts';
import { formatNumber, formatWeight } from '../../units/format.ts';
import { parseNumber, parseWeight } from '../../units/measure.ts';
import type { Money } from '../../units/money.ts';
import { ok, type Result } from '../../units/result.ts';
import { priceReading } from '../boards/readings.ts';
import { within } from '../practices/reading.ts';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { TypedReading } from '../practices/TypedReading.tsx';
import { useSession, useWords } from '../SessionContext.ts';
import { TextField } from '../sheet/TextField.tsx';

/** Lines that no sketch asks for: fuel, a permit, a load of fill. */
export function ExtrasPart({ job }: { readonly job: Job }) {
  const words = useWords().app.order;
  const session = useSession();
  const title = useRef<HTMLParagraphElement>(null);
  const [said, setSaid] = useState('');
  const bid = bidOf(job);
  const put = (extras: readonly ExtraLine[]) =>
    session.commit({ do: 'set-bid', bid: { ...bid, extras } });
  return (
    <section className="slip-part" aria-label={words.parts.extras}>
      <p className="field-note" ref={title} tabIndex={-1}>
        {words.extras.hint}
      </p>
      <ul>
        {bid.extras.map((row) => (
          <li key={row.id}>
            <ExtraRow
              row={row}
              job={job}
              onRow={(next) => put(bid.extras.map((one) => (one.id === row.id ? next : one)))}
              onTakeOff={() => {
                put(bid.extras.filter((one) => one.id !== row.id));
                // The button that had the focus is gone with its row.
                title.current?.focus();
              }}
            />
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="plain"
        onClick={() => {
          put([...bid.extras, { id: freeId(bid.extras), name: words.extras.newName, count: 1 }]);
          setSaid(words.extras.added);
        }}
      >
        {words.extras.add}
      </button>
      <p className="field-note" role="status">
        {said}
      </p>
    </section>
  );
}

function freeId(rows: readonly ExtraLine[]): string {
  let number = 1;
  while (rows.some(({ id }) => id === `x${number}`)) number += 1;
  return `x${number}`;
}

interface ExtraRowProps {
  readonly row: ExtraLine;
  readonly job: Job;
  readonly onRow: (row: ExtraLine) => void;
  readonly onTakeOff: () => void;
}

const LEAST = 0.001;
const MOST = 1_000_000;

function ExtraRow({ row, job, onRow, onTakeOff }: ExtraRowProps) {
  const words = useWords();
  const says = words.app.order.extras;
  const { price: _, ...unpriced } = row;
  const { weight: __, ...unweighed } = row;
  const write = (value: number) => formatNumber(value, 3);
  return (
    <fieldset className="extra-row">
      <legend className="visually-hidden">{says.row(row.name)}</legend>
      <TextField
        label={says.name}
        text={row.name}
        most={TEXT_MOST.name}
        onText={(name) => onRow({ ...row, name })}
      />
      <TypedReading
        label={says.count}
        reading={within({ text: write(row.count), parse: parseNumber }, LEAST, MOST, write)}
        onValue={(count) => onRow({ ...row, count })}
      />
      <TypedField<Money | null>
        label={says.price}
        {...priceReading(row.price, job.practices.currency)}
        say={(problem) => sayReading(words, problem)}
        onValue={(price) => onRow(price === null ? unpriced : { ...row, price })}
        inputMode="decimal"
      />
      <TypedField<number | null>
        label={says.weight}
        text={row.weight === undefined ? '' : formatWeight(row.weight, job.units)}
        parse={(text): Result<number | null> =>
          text.trim() === '' ? ok(null) : parseWeight(text, job.units)
        }
        say={(problem) => sayReading(words, problem)}
        onValue={(weight) => onRow(weight === null ? unweighed : { ...row, weight })}
      />
      <button
        type="button"
        className="plain danger"
        aria-label={says.remove(row.name)}
        onClick={onTakeOff}
      >
        {says.removeShort}
      </button>
    </fieldset>
  );
}
