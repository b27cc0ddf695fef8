import { useWords } from '../SessionContext.ts';
import type { Reading } from './reading.ts';
import { sayReading } from './sayReading.ts';
import { TypedField } from './TypedField.tsx';

interface TypedReadingProps {
  readonly label: string;
  readonly reading: Reading;
  readonly onValue: (value: number) => void;
}

/** A typed number of any kind, with the sentences for what can be wrong with it. */
export function TypedReading({ label, reading, onValue }: TypedReadingProps) {
  const words = useWords();
  return (
    <TypedField
      label={label}
      text={reading.text}
      unit={reading.unit ? words.app.practices.units[reading.unit] : undefined}
      parse={reading.parse}
      say={(problem) => sayReading(words, problem)}
      onValue={onValue}
      inputMode={reading.unit ? 'decimal' : 'text'}
    />
  );
}
