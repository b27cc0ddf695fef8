import { type Ref, useId } from 'react';

export interface TypedBoxProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  /** What is wrong with the text, in words; null when nothing is. */
  readonly problem: string | null;
  readonly hint?: string;
  /** What an empty box means. */
  readonly whenEmpty?: string;
  /** Feet and inches need the whole keyboard; numbers alone get the number pad. */
  readonly keyboard?: 'text' | 'decimal';
  readonly boxRef?: Ref<HTMLInputElement>;
}

/** A box to type a length or an angle in, with its message under it. */
export function TypedBox({
  label,
  text,
  onText,
  problem,
  hint,
  whenEmpty,
  keyboard = 'text',
  boxRef,
}: TypedBoxProps) {
  const id = useId();
  const says = problem ?? hint;
  return (
    <div className="typed">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        ref={boxRef}
        type="text"
        inputMode={keyboard}
        autoComplete="off"
        autoCapitalize="off"
        enterKeyHint="done"
        value={text}
        placeholder={whenEmpty}
        aria-invalid={problem !== null}
        {...(says ? { 'aria-describedby': `${id}-says` } : {})}
        onChange={(event) => onText(event.target.value)}
      />
      {says ? (
        <p id={`${id}-says`} className={problem ? 'typed-problem' : 'typed-hint'}>
          {says}
        </p>
      ) : null}
    </div>
  );
}
