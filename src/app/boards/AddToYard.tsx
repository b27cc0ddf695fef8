import { type FormEvent, useRef, useState } from 'react';
import { withInYard } from '../../job/boardLists.ts';
import type { BoardSize } from '../../job/job.ts';
import { formatLength } from '../../units/length.ts';
import { formatMoney } from '../../units/money.ts';
import { AskField } from '../AskField.tsx';
import { sayReading } from '../practices/sayReading.ts';
import { useWords } from '../SessionContext.ts';
import type { BoardsPartProps } from './boardsPartProps.ts';
import { boardLengthReading, boardTakenAs, priceReading } from './readings.ts';
import { SizeChoice } from './SizeChoice.tsx';
import { useAsked } from './useAsked.ts';

/** A length that the yard sells; one that is listed already gets the new price. */
export function AddToYard({ job, onLumber }: BoardsPartProps) {
  const words = useWords();
  const says = words.app.boards;
  const { lumber, practices, units } = job;
  const { currency } = practices;
  const [size, setSize] = useState<BoardSize>(practices.formBoard);
  const [said, setSaid] = useState('');
  const length = useAsked('');
  const price = useAsked('');
  const lengthInput = useRef<HTMLInputElement>(null);

  function add(event: FormEvent) {
    event.preventDefault();
    const long = length.read(boardLengthReading(0, units).parse);
    const cost = price.read(priceReading(undefined, currency).parse);
    if (!long.ok || !cost.ok) return;
    const known = cost.value === null ? {} : { price: cost.value };
    if (!onLumber(withInYard(lumber, { size, length: long.value, ...known }))) return;
    const written = cost.value === null ? says.yard.noPrice : formatMoney(cost.value, currency);
    setSaid(says.yard.added(says.size(size), formatLength(long.value, units), written));
    length.set('');
    price.set('');
    lengthInput.current?.focus();
  }

  const taken = boardTakenAs(length.text, units);
  return (
    <form className="board-row yard-add" onSubmit={add} noValidate>
      <SizeChoice size={size} onSize={setSize} />
      <AskField
        label={says.fields.length}
        text={length.text}
        error={length.problems.map((problem) => sayReading(words, problem)).join(' ')}
        note={taken === null ? null : words.sketch.bar.takenAs(taken)}
        onText={length.set}
        input={lengthInput}
      />
      <AskField
        label={says.fields.price}
        text={price.text}
        error={price.problems.map((problem) => sayReading(words, problem)).join(' ')}
        inputMode="decimal"
        onText={price.set}
      />
      <button type="submit" className="plain">
        {says.yard.add}
      </button>
      <p className="field-note" role="status">
        {said}
      </p>
    </form>
  );
}
