import { sayProblem } from '../../sheet/words/say.ts';
import type { Problem } from '../../units/result.ts';
import { useWords } from '../SessionContext.ts';
import type { Reading } from './reading.ts';
import { TypedField } from './TypedField.tsx';

interface TypedReadingProps {
  readonly label: string;
  readonly reading: Reading;
  readonly onValue: (value: number) => void;
}

/** A typed number of any kind, with the sentences for what can be wrong with it. */
export function TypedReading({ label, reading, onValue }: TypedReadingProps) {
  const words = useWords();
  const says = words.app.practices;

  function say(problem: Problem): string {
    const facts = problem.facts ?? {};
    if (problem.code === 'out-of-range') {
      return says.range(String(facts['least']), String(facts['most']));
    }
    if (problem.code === 'not-whole') return says.whole;
    return sayProblem(words.sheet, problem);
  }

  return (
    <TypedField
      label={label}
      text={reading.text}
      unit={reading.unit ? says.units[reading.unit] : undefined}
      parse={reading.parse}
      say={say}
      onValue={onValue}
      inputMode={reading.unit ? 'decimal' : 'text'}
    />
  );
}
