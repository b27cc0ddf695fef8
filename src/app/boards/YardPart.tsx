import { useId, useRef } from 'react';
import type { YardBoard } from '../../job/job.ts';
import { formatLength } from '../../units/length.ts';
import type { Money } from '../../units/money.ts';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { TypedReading } from '../practices/TypedReading.tsx';
import { useWords } from '../SessionContext.ts';
import { AddToYard } from './AddToYard.tsx';
import type { BoardsPartProps } from './boardsPartProps.ts';
import { boardLengthReading, priceReading } from './readings.ts';

/** What the yard sells in the size of the form board; the other sizes folded away. */
export function YardPart({ job, onLumber }: BoardsPartProps) {
  const words = useWords().app.boards;
  const { lumber, practices } = job;
  const title = useRef<HTMLHeadingElement>(null);
  const id = useId();
  const sorted = [...lumber.yard].sort((a, b) => a.length - b.length);
  const used = sorted.filter(({ size }) => size === practices.formBoard);
  const others = sorted.filter(({ size }) => size !== practices.formBoard);
  const size = words.size(practices.formBoard);

  function put(next: YardBoard) {
    onLumber({ ...lumber, yard: lumber.yard.map((row) => (row.id === next.id ? next : row)) });
  }

  function takeOff(id: string) {
    onLumber({ ...lumber, yard: lumber.yard.filter((row) => row.id !== id) });
    // The button that had the focus is gone with its row.
    title.current?.focus();
  }

  const rows = (list: readonly YardBoard[]) => (
    <ul>
      {list.map((row) => (
        <li key={row.id}>
          <YardRow row={row} job={job} onRow={put} onTakeOff={() => takeOff(row.id)} />
        </li>
      ))}
    </ul>
  );

  return (
    <section className="slip-part" aria-labelledby={id}>
      <h3 id={id} ref={title} tabIndex={-1}>
        {words.yard.title}
      </h3>
      <p className="field-note">{words.yard.hint(size)}</p>
      {used.length === 0 ? <p className="boards-none">{words.yard.none(size)}</p> : rows(used)}
      <AddToYard job={job} onLumber={onLumber} />
      {others.length > 0 ? (
        <details className="differs">
          <summary>{words.yard.others(others.length)}</summary>
          {rows(others)}
        </details>
      ) : null}
    </section>
  );
}

interface YardRowProps {
  readonly row: YardBoard;
  readonly job: BoardsPartProps['job'];
  readonly onRow: (row: YardBoard) => void;
  readonly onTakeOff: () => void;
}

function YardRow({ row, job, onRow, onTakeOff }: YardRowProps) {
  const words = useWords();
  const says = words.app.boards;
  const { price: _, ...unpriced } = row;
  const what = says.yard.row(says.size(row.size), formatLength(row.length, job.units));
  return (
    <fieldset className="board-row yard-row">
      <legend className="visually-hidden">{what}</legend>
      <p className="board-size">{says.size(row.size)}</p>
      <TypedReading
        label={says.fields.length}
        reading={boardLengthReading(row.length, job.units)}
        onValue={(length) => onRow({ ...row, length })}
      />
      <TypedField<Money | null>
        label={says.fields.price}
        {...priceReading(row.price, job.practices.currency)}
        say={(problem) => sayReading(words, problem)}
        onValue={(price) => onRow(price === null ? unpriced : { ...row, price })}
        inputMode="decimal"
      />
      <button
        type="button"
        className="plain danger"
        aria-label={says.remove(what)}
        onClick={onTakeOff}
      >
        {says.removeShort}
      </button>
    </fieldset>
  );
}
