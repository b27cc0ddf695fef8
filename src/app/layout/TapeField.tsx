import type { UnitStyle } from '../../job/job.ts';
import { sayProblem } from '../../sheet/words/say.ts';
import type { Grid } from '../../units/grid.ts';
import { formatLength, parseLength } from '../../units/length.ts';
import { fail, ok, type Result } from '../../units/result.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { useWords } from '../SessionContext.ts';

interface TapeFieldProps {
  readonly label: string;
  /** Grid units, a float: what it would be if the form stood as drawn. */
  readonly drawn: number;
  readonly use?: string;
  readonly value: Grid | null;
  readonly units: UnitStyle;
  readonly onValue: (value: Grid | null) => void;
}

/** One tape that was read of the set form, or left empty. */
export function TapeField({ label, drawn, use, value, units, onValue }: TapeFieldProps) {
  const words = useWords();
  const note = words.app.layout.drawn(formatLength(Math.round(drawn), units));

  function parse(text: string): Result<Grid | null> {
    if (text.trim() === '') return ok(null);
    const read = parseLength(text, units);
    return read.ok && read.value <= 0 ? fail({ code: 'size-not-positive', where: text }) : read;
  }

  return (
    <TypedField
      label={label}
      text={value === null ? '' : formatLength(value, units, { fraction: 32 })}
      note={use === undefined ? note : `${note}, ${use}`}
      parse={parse}
      say={(problem) => sayProblem(words.sheet, problem)}
      onValue={onValue}
    />
  );
}
