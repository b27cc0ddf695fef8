import { tapeTiesTable, tieErrorFigure } from '../../takeoff/layout/figures.ts';
import type { MarkRef } from '../../takeoff/layout/tapeTies.ts';
import { ChooseField } from '../ChooseField.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { FigureRow } from '../ticket/FigureRow.tsx';
import { NoteList } from '../ticket/NoteList.tsx';
import { SlipTable } from '../ticket/SlipTable.tsx';
import type { LayoutPartProps } from './layoutPartProps.ts';
import { markName } from './names.ts';

/** Two tapes to every corner. */
export function TiesPart({ job, layout }: LayoutPartProps) {
  const words = useWords();
  const says = words.app.layout;
  const { setOut } = useSession();
  const chosen = useAppState((state) => state.settingOut.choice.marks);
  const { marks, tapeTies, notes } = layout;
  const pair = chosen ?? tapeTies?.marks;
  const error = tapeTies && tieErrorFigure(tapeTies);
  const options = marks.map((mark) => [keyOf(mark), markName(job, mark, words)] as const);

  function choose(at: 0 | 1, key: string) {
    const mark = marks.find((one) => keyOf(one) === key);
    if (!mark || !pair) return;
    const ref = { feature: mark.feature, corner: mark.corner };
    setOut((choice) => ({ ...choice, marks: at === 0 ? [ref, pair[1]] : [pair[0], ref] }));
  }

  return (
    <section className="slip-part">
      <h3>{says.ties}</h3>
      {pair ? (
        <div>
          <ChooseField
            label={says.firstMark}
            options={options}
            value={keyOf(pair[0])}
            gone={says.gone}
            onChoose={(key) => choose(0, key)}
          />
          <ChooseField
            label={says.secondMark}
            options={options}
            value={keyOf(pair[1])}
            gone={says.gone}
            onChoose={(key) => choose(1, key)}
          />
        </div>
      ) : null}
      {chosen ? (
        <button
          type="button"
          className="plain"
          onClick={() => setOut(({ marks: _, ...rest }) => rest)}
        >
          {says.backToRule}
        </button>
      ) : null}
      <NoteList notes={notes.ties} weight="stop" units={job.units} />
      {error ? <FigureRow figure={error} units={job.units} /> : null}
      {tapeTies ? <SlipTable table={tapeTiesTable(tapeTies)} units={job.units} isOpen /> : null}
      <NoteList notes={notes.ties} weight="caution" units={job.units} />
      <NoteList notes={notes.ties} weight="assumption" units={job.units} />
    </section>
  );
}

function keyOf({ feature, corner }: MarkRef): string {
  return `${feature} ${corner}`;
}
