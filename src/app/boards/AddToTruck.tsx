import { type FormEvent, useRef, useState } from 'react';
import { withOnTruck } from '../../job/boardLists.ts';
import type { BoardSize } from '../../job/job.ts';
import { formatLength } from '../../units/length.ts';
import { AskField } from '../AskField.tsx';
import { sayReading } from '../practices/sayReading.ts';
import { useWords } from '../SessionContext.ts';
import type { BoardsPartProps } from './boardsPartProps.ts';
import { boardCountReading, boardLengthReading, boardTakenAs } from './readings.ts';
import { SizeChoice } from './SizeChoice.tsx';
import { useAsked } from './useAsked.ts';

/** Boards to put on the truck: typed one row after another, the hand staying at the length. */
export function AddToTruck({ job, onLumber }: BoardsPartProps) {
  const words = useWords();
  const says = words.app.boards;
  const { lumber, practices, units } = job;
  const [size, setSize] = useState<BoardSize>(practices.formBoard);
  const [twisted, setTwisted] = useState(false);
  const [said, setSaid] = useState('');
  const count = useAsked('1');
  const length = useAsked('');
  const lengthInput = useRef<HTMLInputElement>(null);

  function add(event: FormEvent) {
    event.preventDefault();
    const many = count.read(boardCountReading(1).parse);
    const long = length.read(boardLengthReading(0, units).parse);
    if (!many.ok || !long.ok) return;
    const boards = { size, length: long.value, count: many.value, twisted };
    const next = withOnTruck(lumber, [boards]);
    if (!onLumber(next)) return;
    const row = next.truck.find(
      (one) => one.size === size && one.length === long.value && one.twisted === twisted,
    );
    const written = formatLength(long.value, units);
    setSaid(says.truck.added(row?.count ?? many.value, says.size(size), written));
    count.set('1');
    length.set('');
    lengthInput.current?.focus();
  }

  const taken = boardTakenAs(length.text, units);
  return (
    <form className="board-row" onSubmit={add} noValidate>
      <AskField
        label={says.fields.count}
        text={count.text}
        error={count.problems.map((problem) => sayReading(words, problem)).join(' ')}
        inputMode="numeric"
        onText={count.set}
      />
      <SizeChoice size={size} onSize={setSize} />
      <AskField
        label={says.fields.length}
        text={length.text}
        error={length.problems.map((problem) => sayReading(words, problem)).join(' ')}
        note={taken === null ? null : words.sketch.bar.takenAs(taken)}
        onText={length.set}
        input={lengthInput}
      />
      <label className="choice">
        <input
          type="checkbox"
          checked={twisted}
          onChange={(event) => setTwisted(event.currentTarget.checked)}
        />
        {says.twisted}
      </label>
      <button type="submit" className="plain">
        {says.truck.add}
      </button>
      <p className="field-note" role="status">
        {said}
      </p>
    </form>
  );
}
