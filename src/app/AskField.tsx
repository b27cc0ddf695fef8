import { type Ref, useId } from 'react';

interface AskFieldProps {
  readonly label: string;
  readonly text: string;
  /** What is wrong with what was typed; empty when nothing is. */
  readonly error: string;
  /** How it was understood, while nothing is wrong. */
  readonly note?: string | null;
  readonly inputMode?: 'text' | 'decimal' | 'numeric';
  readonly onText: (text: string) => void;
  readonly input?: Ref<HTMLInputElement>;
}

/** A field of a form that is sent as a whole, with what is wrong with it beside it. */
export function AskField({ label, text, error, note, inputMode, onText, input }: AskFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        ref={input}
        id={id}
        value={text}
        inputMode={inputMode ?? 'text'}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        aria-invalid={error !== ''}
        aria-describedby={`${id}-says`}
        onFocus={(event) => event.currentTarget.select()}
        onChange={(event) => onText(event.currentTarget.value)}
      />
      {note && error === '' ? (
        <p className="field-note" role="status">
          {note}
        </p>
      ) : null}
      <p id={`${id}-says`} className="field-error" role="alert">
        {error}
      </p>
    </div>
  );
}
