import type { Job, TruckMesh, YardMesh } from '../../job/job.ts';
import { type Grid, INCH, METRE } from '../../units/grid.ts';
import { formatLength } from '../../units/length.ts';
import type { Money } from '../../units/money.ts';
import { boardCountReading, priceReading } from '../boards/readings.ts';
import { lengthReading } from '../practices/reading.ts';
import { sayReading } from '../practices/sayReading.ts';
import { TypedField } from '../practices/TypedField.tsx';
import { TypedReading } from '../practices/TypedReading.tsx';
import { useWords } from '../SessionContext.ts';

type Row = TruckMesh | YardMesh;

interface MeshRowProps {
  readonly row: Row;
  readonly list: 'truck' | 'yard';
  readonly job: Job;
  readonly onRow: (row: Row) => void;
  readonly onTakeOff: () => void;
}

/** No smaller than a scrap worth carrying, no longer than a roll is wound; the schema has the same bounds. */
const LEAST: Grid = 6 * INCH;
const MOST: Grid = 100 * METRE;

/** A sheet or a roll: its size, and how many there are of it or what one costs. */
export function MeshRow({ row, list, job, onRow, onTakeOff }: MeshRowProps) {
  const words = useWords();
  const says = words.app.mesh;
  const { units } = job;
  const size = (grid: Grid) => lengthReading(grid, LEAST, MOST, units);
  const what = says.row(
    says.forms[row.form],
    formatLength(row.length, units),
    formatLength(row.width, units),
  );
  return (
    <fieldset className="board-row yard-row">
      <legend className="visually-hidden">{what}</legend>
      <label className="field">
        {says.fields.form}
        <select
          value={row.form}
          onChange={(event) =>
            onRow({ ...row, form: event.currentTarget.value === 'roll' ? 'roll' : 'sheet' })
          }
        >
          <option value="sheet">{says.forms.sheet}</option>
          <option value="roll">{says.forms.roll}</option>
        </select>
      </label>
      <TypedReading
        label={says.fields.width}
        reading={size(row.width)}
        onValue={(width) => onRow({ ...row, width })}
      />
      <TypedReading
        label={says.fields.length}
        reading={size(row.length)}
        onValue={(length) => onRow({ ...row, length })}
      />
      {list === 'truck' && 'count' in row ? (
        <TypedReading
          label={says.fields.count}
          reading={boardCountReading(row.count)}
          onValue={(count) => onRow({ ...row, count })}
        />
      ) : (
        <PriceField row={row} job={job} onRow={onRow} />
      )}
      <button
        type="button"
        className="plain danger"
        aria-label={says.remove(what)}
        onClick={onTakeOff}
      >
        {says.removeShort}
      </button>
    </fieldset>
  );
}

function PriceField({ row, job, onRow }: Pick<MeshRowProps, 'row' | 'job' | 'onRow'>) {
  const words = useWords();
  const { price, ...unpriced }: YardMesh = row;
  return (
    <TypedField<Money | null>
      label={words.app.mesh.fields.price}
      {...priceReading(price, job.practices.currency)}
      say={(problem) => sayReading(words, problem)}
      onValue={(next) => onRow(next === null ? unpriced : { ...unpriced, price: next })}
      inputMode="decimal"
    />
  );
}
