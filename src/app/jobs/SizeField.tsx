import { useId } from 'react';
import { sayProblem } from '../../sheet/words/say.ts';
import type { Problem } from '../../units/result.ts';
import { useWords } from '../SessionContext.ts';

interface SizeFieldProps {
  readonly label: string;
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly onText: (text: string) => void;
}

/** A typed size with what is wrong with it beside it. */
export function SizeField({ label, text, problems, onText }: SizeFieldProps) {
  const words = useWords().sheet;
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={text}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        aria-invalid={problems.length > 0}
        aria-describedby={`${id}-says`}
        onFocus={(event) => event.currentTarget.select()}
        onChange={(event) => onText(event.currentTarget.value)}
      />
      <p id={`${id}-says`} className="field-error" role="alert">
        {problems.map((problem) => sayProblem(words, problem)).join(' ')}
      </p>
    </div>
  );
}
