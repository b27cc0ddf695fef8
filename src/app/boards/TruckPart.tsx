import { useId, useRef } from 'react';
import type { TruckBoards } from '../../job/job.ts';
import { formatLength } from '../../units/length.ts';
import { TypedReading } from '../practices/TypedReading.tsx';
import { useWords } from '../SessionContext.ts';
import { AddToTruck } from './AddToTruck.tsx';
import type { BoardsPartProps } from './boardsPartProps.ts';
import { boardCountReading, boardLengthReading } from './readings.ts';
import { SizeChoice } from './SizeChoice.tsx';

/** Boards on the truck, row by row. */
export function TruckPart({ job, onLumber }: BoardsPartProps) {
  const words = useWords().app.boards;
  const { lumber } = job;
  const title = useRef<HTMLHeadingElement>(null);
  const id = useId();

  function put(id: string, part: Partial<TruckBoards>) {
    const truck = lumber.truck.map((row) => (row.id === id ? { ...row, ...part } : row));
    onLumber({ ...lumber, truck });
  }

  function takeOff(id: string) {
    onLumber({ ...lumber, truck: lumber.truck.filter((row) => row.id !== id) });
    // The button that had the focus is gone with its row.
    title.current?.focus();
  }

  return (
    <section className="slip-part" aria-labelledby={id}>
      <h3 id={id} ref={title} tabIndex={-1}>
        {words.truck.title}
      </h3>
      <p className="field-note">{words.truck.hint}</p>
      {lumber.truck.length === 0 ? <p className="boards-none">{words.truck.none}</p> : null}
      <ul>
        {lumber.truck.map((row) => (
          <li key={row.id}>
            <TruckRow
              row={row}
              units={job.units}
              onPart={(part) => put(row.id, part)}
              onTakeOff={() => takeOff(row.id)}
            />
          </li>
        ))}
      </ul>
      <AddToTruck job={job} onLumber={onLumber} />
    </section>
  );
}

interface TruckRowProps {
  readonly row: TruckBoards;
  readonly units: BoardsPartProps['job']['units'];
  readonly onPart: (part: Partial<TruckBoards>) => void;
  readonly onTakeOff: () => void;
}

function TruckRow({ row, units, onPart, onTakeOff }: TruckRowProps) {
  const words = useWords().app.boards;
  const { size, length, count, twisted } = row;
  const what = words.truck.row(
    count,
    words.size(size),
    formatLength(length, units),
    twisted ? words.twisted.toLowerCase() : words.straight,
  );
  return (
    <fieldset className="board-row">
      <legend className="visually-hidden">{what}</legend>
      <TypedReading
        label={words.fields.count}
        reading={boardCountReading(count)}
        onValue={(next) => onPart({ count: next })}
      />
      <SizeChoice size={size} onSize={(next) => onPart({ size: next })} />
      <TypedReading
        label={words.fields.length}
        reading={boardLengthReading(length, units)}
        onValue={(next) => onPart({ length: next })}
      />
      <label className="choice">
        <input
          type="checkbox"
          checked={twisted}
          onChange={(event) => onPart({ twisted: event.currentTarget.checked })}
        />
        {words.twisted}
      </label>
      <button
        type="button"
        className="plain danger"
        aria-label={words.remove(what)}
        onClick={onTakeOff}
      >
        {words.removeShort}
      </button>
    </fieldset>
  );
}
