import { useId, useState } from 'react';
import type { Problem, Result } from '../../units/result.ts';

export interface EditCellProps<T> {
  /** Names the box for somebody who hears the table: which corner, which measure. */
  readonly label: string;
  /** Shown above the box where there is no column heading. */
  readonly heading?: string;
  /** The value as it stands, written. */
  readonly shown: string;
  readonly parse: (text: string) => Result<T>;
  readonly sayProblem: (problem: Problem) => string;
  /** What is wrong with the value itself, in words; null when it was taken. */
  readonly onValue: (value: T) => string | null;
  readonly keyboard?: 'text' | 'decimal';
  readonly hint?: string | undefined;
}

/**
 * A value that can be typed over. It is taken when the box is left or on Enter; Escape puts back what stood there. A
 * text that can't be taken stays in the box, with its message under it, until it is mended.
 */
export function EditCell<T>({
  label,
  heading,
  shown,
  parse,
  sayProblem,
  onValue,
  keyboard = 'text',
  hint,
}: EditCellProps<T>) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const says = problem ?? hint;

  function take() {
    if (typed === null || typed.trim() === shown) {
      putBack();
      return;
    }
    const outcome = parse(typed);
    const wrong = outcome.ok
      ? onValue(outcome.value)
      : outcome.problems.map((one) => sayProblem(one)).join(' ');
    setProblem(wrong);
    if (wrong === null) setTyped(null);
  }

  function putBack() {
    setTyped(null);
    setProblem(null);
  }

  return (
    <span className="typed">
      {heading ? <label htmlFor={id}>{heading}</label> : null}
      <input
        id={id}
        type="text"
        inputMode={keyboard}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        enterKeyHint="done"
        {...(heading ? {} : { 'aria-label': label })}
        value={typed ?? shown}
        aria-invalid={problem !== null}
        {...(says ? { 'aria-describedby': `${id}-says` } : {})}
        onChange={(event) => {
          setTyped(event.target.value);
          setProblem(null);
        }}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') putBack();
        }}
      />
      {says ? (
        <span
          id={`${id}-says`}
          className={problem ? 'typed-problem' : 'typed-hint'}
          role={problem ? 'alert' : undefined}
        >
          {says}
        </span>
      ) : null}
    </span>
  );
}
