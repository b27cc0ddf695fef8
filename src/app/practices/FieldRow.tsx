import { BOARD_SIZES } from '../../job/boardLists.ts';
import type { BoardSize, Practices, UnitStyle } from '../../job/job.ts';
import type { Money } from '../../units/money.ts';
import { priceReading } from '../boards/readings.ts';
import { ChooseField } from '../ChooseField.tsx';
import { useWords } from '../SessionContext.ts';
import { askedReading } from './askedReading.ts';
import type { Field } from './field.ts';
import { readingOf, readSign } from './reading.ts';
import { sayReading } from './sayReading.ts';
import { TypedField } from './TypedField.tsx';
import { TypedReading } from './TypedReading.tsx';

interface FieldRowProps {
  readonly field: Field;
  readonly practices: Practices;
  readonly units: UnitStyle;
  readonly onPractices: (practices: Practices) => void;
}

export function FieldRow({ field, practices, units, onPractices }: FieldRowProps) {
  const words = useWords();
  const says = words.app.practices;
  const { label } = says.fields[field.key];
  const note = field.note ? says.notes[field.note] : undefined;

  function input() {
    if (field.kind === 'yes-no') {
      return (
        <label className="choice">
          <input
            type="checkbox"
            checked={field.get(practices)}
            onChange={(event) => onPractices(field.put(practices, event.currentTarget.checked))}
          />
          {label}
        </label>
      );
    }
    if (field.kind === 'choice') {
      return (
        <ChooseField
          label={label}
          options={field.choices.map((one) => [one, says.choices[one]])}
          value={field.get(practices)}
          onChoose={(one) => onPractices(field.put(practices, one))}
        />
      );
    }
    if (field.kind === 'sign') {
      return (
        <TypedField
          label={label}
          text={field.get(practices)}
          parse={readSign}
          say={() => says.sign}
          onValue={(sign) => onPractices(field.put(practices, sign))}
        />
      );
    }
    if (field.kind === 'price') {
      return (
        <TypedField<Money | null>
          label={label}
          {...priceReading(field.get(practices) ?? undefined, practices.currency)}
          say={(problem) => sayReading(words, problem)}
          onValue={(price) => onPractices(field.put(practices, price))}
          inputMode="decimal"
        />
      );
    }
    if (field.kind === 'asked') {
      const { unit, ...reading } = askedReading(field, field.get(practices), units);
      return (
        <TypedField<number | null>
          label={label}
          {...reading}
          unit={says.units[unit]}
          say={(problem) => sayReading(words, problem)}
          onValue={(value) => onPractices(field.put(practices, value))}
          inputMode="decimal"
        />
      );
    }
    if (field.kind === 'board') {
      return (
        <label className="field">
          {label}
          <select
            value={field.get(practices)}
            onChange={(event) =>
              onPractices(field.put(practices, event.currentTarget.value as BoardSize))
            }
          >
            {BOARD_SIZES.map((size) => (
              <option key={size} value={size}>
                {says.boards[size]}
              </option>
            ))}
          </select>
        </label>
      );
    }
    return (
      <TypedReading
        label={label}
        reading={readingOf(field, practices, units)}
        onValue={(value) => onPractices(field.put(practices, value))}
      />
    );
  }

  return (
    <div className="practice">
      {input()}
      {note ? (
        <details className="differs">
          <summary>{says.differs}</summary>
          <p>{note.says}</p>
          <p className="field-note">{note.source}</p>
        </details>
      ) : null}
    </div>
  );
}
