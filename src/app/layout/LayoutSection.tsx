import { bandFigure, squaresTable, tiesTable } from '../../takeoff/layout/figures.ts';
import type { Layout } from '../../takeoff/layout/layout.ts';
import { ChooseField } from '../ChooseField.tsx';
import { UnderSlip } from '../places/UnderSlip.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { FigureRow } from '../ticket/FigureRow.tsx';
import { NoteList } from '../ticket/NoteList.tsx';
import { SlipTable } from '../ticket/SlipTable.tsx';
import { BaselinePart } from './BaselinePart.tsx';
import type { LayoutPartProps } from './layoutPartProps.ts';
import { nameOf } from './names.ts';
import { TapePart } from './TapePart.tsx';
import { TiesPart } from './TiesPart.tsx';
import { useLayout } from './useLayout.ts';

/** Squaring and setting out, under the forms' ticket: closed until somebody needs it. */
export function LayoutSection() {
  const words = useWords().app.layout;
  const open = useAppState((state) => state.settingOut.open);
  const { openSettingOut } = useSession();
  const found = useLayout();
  return (
    <UnderSlip title={words.title} open={open} onOpen={openSettingOut}>
      {() => (found ? <Parts {...found} /> : null)}
    </UnderSlip>
  );
}

function Parts({ job, layout }: LayoutPartProps) {
  const { laid, ties, squares, notes } = layout;
  return (
    <>
      <PadField job={job} />
      <NoteList notes={notes.form} weight="stop" units={job.units} />
      {laid ? (
        <>
          <SquarePart ties={ties} squares={squares} notes={notes} job={job} />
          <BaselinePart job={job} layout={layout} />
          <TiesPart job={job} layout={layout} />
          <TapePart job={job} layout={layout} laid={laid} />
        </>
      ) : null}
    </>
  );
}

function SquarePart({
  ties,
  squares,
  notes,
  job,
}: Pick<Layout, 'ties' | 'squares' | 'notes'> & Pick<LayoutPartProps, 'job'>) {
  const words = useWords().app.layout;
  return (
    <section className="slip-part">
      <h3>{words.square}</h3>
      <p className="field-note">{words.squareHint}</p>
      <FigureRow figure={bandFigure(ties)} units={job.units} />
      <SlipTable table={tiesTable(ties)} units={job.units} isOpen />
      <SlipTable table={squaresTable(squares)} units={job.units} isOpen />
      <NoteList notes={notes.form} weight="assumption" units={job.units} />
    </section>
  );
}

/** Which pad, where there are several. */
function PadField({ job }: Pick<LayoutPartProps, 'job'>) {
  const words = useWords();
  const { setOut } = useSession();
  const chosen = useAppState((state) => state.settingOut.choice.pad);
  const pads = job.features.filter(({ kind }) => kind === 'pad');
  if (pads.length < 2 && chosen === undefined) return null;
  return (
    <ChooseField
      label={words.app.layout.pad}
      options={pads.map(({ id }) => [id, nameOf(job, id, words)])}
      value={chosen ?? pads[0]?.id ?? ''}
      gone={words.app.layout.gone}
      // Readings were of the other pad, and so may the line and the marks have been.
      onChoose={(pad) => setOut(() => ({ pad }))}
    />
  );
}
