import { useId, useState } from 'react';
import type { Problem, Result } from '../../units/result.ts';

interface TypedFieldProps<T> {
  readonly label: string;
  /** As it reads now; typing starts from it. */
  readonly text: string;
  readonly unit?: string | undefined;
  readonly parse: (text: string) => Result<T>;
  readonly say: (problem: Problem) => string;
  readonly onValue: (value: T) => void;
  readonly note?: string | undefined;
  readonly inputMode?: 'decimal' | 'text' | 'numeric';
}

/**
 * A typed value with its error beside it. What can't be read stays in the field, so that it can be mended; Escape
 * puts back what was there. The value changes when the field is left or on Enter, never in the middle of a number.
 */
export function TypedField<T>(props: TypedFieldProps<T>) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const parsed = typed === null ? null : props.parse(typed);
  const [shown, setShown] = useState(false);
  const problems = shown && parsed && !parsed.ok ? parsed.problems : [];

  function done() {
    if (typed === null || typed === props.text) return setTyped(null);
    if (!parsed?.ok) return setShown(true);
    setTyped(null);
    setShown(false);
    props.onValue(parsed.value);
  }

  return (
    <div className="field">
      <label htmlFor={id}>{props.label}</label>
      <span className="field-box">
        <input
          id={id}
          value={typed ?? props.text}
          inputMode={props.inputMode ?? 'text'}
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          aria-invalid={problems.length > 0}
          aria-describedby={`${id}-says`}
          onFocus={(event) => event.currentTarget.select()}
          onChange={(event) => setTyped(event.currentTarget.value)}
          onBlur={done}
          onKeyDown={(event) => {
            if (event.key === 'Enter') done();
            if (event.key === 'Escape') {
              setTyped(null);
              setShown(false);
            }
          }}
        />
        {props.unit ? <span className="field-unit">{props.unit}</span> : null}
      </span>
      <p id={`${id}-says`} className={problems.length > 0 ? 'field-error' : 'field-note'}>
        {problems.length > 0 ? problems.map(props.say).join(' ') : props.note}
      </p>
    </div>
  );
}
