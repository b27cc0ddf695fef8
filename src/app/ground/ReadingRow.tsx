import type { Point } from '../../geometry/point.ts';
import type { GroundReading, UnitStyle } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { formatLength, parseLength } from '../../units/length.ts';
import { ok, type Result } from '../../units/result.ts';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { TypedReading } from '../practices/TypedReading.tsx';
import { useWords } from '../SessionContext.ts';
import { depthReading } from './depthReading.ts';

interface ReadingRowProps {
  readonly number: number;
  readonly reading: GroundReading;
  /** Where places are measured from. */
  readonly datum: Point;
  readonly units: UnitStyle;
  readonly onReading: (reading: GroundReading) => void;
  readonly onTakeOff: () => void;
}

/** One taped depth, and where it was taped when that was noted: across and up from the pad's first corner. */
export function ReadingRow({
  number,
  reading,
  datum,
  units,
  onReading,
  onTakeOff,
}: ReadingRowProps) {
  const words = useWords();
  const says = words.app.ground;
  const { at } = reading;

  function place(of: 'x' | 'y', value: Grid | null) {
    const { at: _, ...bare } = reading;
    // One that has no place in one way has none.
    if (value === null) return onReading(bare);
    const here = at ?? datum;
    onReading({ ...bare, at: { ...here, [of]: datum[of] + value } });
  }

  return (
    <fieldset className="board-row yard-row reading-row">
      <legend className="visually-hidden">{says.row(number)}</legend>
      <span className="reading-number" aria-hidden="true">
        {number}
      </span>
      <TypedReading
        label={says.depth}
        reading={depthReading(units, reading.depth)}
        onValue={(depth) => onReading({ ...reading, depth })}
      />
      {(['x', 'y'] as const).map((of) => (
        <TypedField<Grid | null>
          key={of}
          label={says.at[of]}
          text={at ? formatLength(at[of] - datum[of], units) : ''}
          parse={(text): Result<Grid | null> =>
            text.trim() === '' ? ok(null) : parseLength(text, units)
          }
          say={(problem) => sayReading(words, problem)}
          onValue={(value) => place(of, value)}
        />
      ))}
      <button
        type="button"
        className="plain danger"
        aria-label={says.remove(number)}
        onClick={onTakeOff}
      >
        {says.removeShort}
      </button>
    </fieldset>
  );
}
