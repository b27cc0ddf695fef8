import type { UnitStyle } from '../../job/job.ts';
import { sayProblem } from '../../sheet/words/say.ts';
import { bareLength } from '../../units/length.ts';
import type { Problem } from '../../units/result.ts';
import { AskField } from '../AskField.tsx';
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
  return (
    <AskField
      label={label}
      text={text}
      error={problems.map((problem) => sayProblem(words.sheet, problem)).join(' ')}
      note={taken === null ? null : words.sketch.bar.takenAs(taken)}
      onText={onText}
    />
  );
}
