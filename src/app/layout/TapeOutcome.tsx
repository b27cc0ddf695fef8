import type { UnitStyle } from '../../job/job.ts';
import type { Figure, Note, TicketTable } from '../../takeoff/figure.ts';
import { useWords } from '../SessionContext.ts';
import { FigureRow } from '../ticket/FigureRow.tsx';
import { NoteList } from '../ticket/NoteList.tsx';
import { SlipTable } from '../ticket/SlipTable.tsx';

interface TapeOutcomeProps {
  readonly figures: readonly Figure[];
  readonly moves: TicketTable | null;
  readonly notes: readonly Note[];
  readonly units: UnitStyle;
  readonly onClear: () => void;
}

/** What the readings come to: what is wrong with them, or the moves; and a way to begin anew. */
export function TapeOutcome({ figures, moves, notes, units, onClear }: TapeOutcomeProps) {
  const says = useWords().app.layout;
  return (
    <>
      <div aria-live="polite">
        <NoteList notes={notes} weight="stop" units={units} />
        {figures.map((figure) => (
          <FigureRow key={figure.key} figure={figure} units={units} />
        ))}
        {moves ? <SlipTable table={moves} units={units} /> : null}
        <NoteList notes={notes} weight="caution" units={units} />
        <NoteList notes={notes} weight="assumption" units={units} />
      </div>
      <button type="button" className="plain" onClick={onClear}>
        {says.clear}
      </button>
    </>
  );
}
