import { useId } from 'react';
import type { UnitStyle } from '../../job/job.ts';
import { sayProblem } from '../../sheet/words/say.ts';
import { bareLength } from '../../units/length.ts';
import type { Problem } from '../../units/result.ts';
import { useWords } from '../SessionContext.ts';

interface SizeFieldProps {
  readonly units: UnitStyle;
  readonly label: string;
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly onText: (text: string) => void;
}

/** A typed size with what is wrong with it beside it. */
export function SizeField({ units, label, text, problems, onText }: SizeFieldProps) {
  const words = useWords();
  const taken = bareLength(text, units);
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
      {taken !== null && problems.length === 0 ? (
        <p className="field-note" role="status">
          {words.sketch.bar.takenAs(taken)}
        </p>
      ) : null}
      <p id={`${id}-says`} className="field-error" role="alert">
        {problems.map((problem) => sayProblem(words.sheet, problem)).join(' ')}
      </p>
    </div>
  );
}
