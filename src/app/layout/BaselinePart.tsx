import type { Baseline } from '../../takeoff/layout/baseline.ts';
import { offsetsTable } from '../../takeoff/layout/figures.ts';
import { ChooseField } from '../ChooseField.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { NoteList } from '../ticket/NoteList.tsx';
import { SlipTable } from '../ticket/SlipTable.tsx';
import type { LayoutPartProps } from './layoutPartProps.ts';
import { edgeName, nameOf } from './names.ts';

const RULE = '';

/** Stations and offsets from one line. */
export function BaselinePart({ job, layout }: LayoutPartProps) {
  const words = useWords();
  const says = words.app.layout;
  const { setOut } = useSession();
  const chosen = useAppState((state) => state.settingOut.choice.baseline);
  const { baselines, offsets, first, notes } = layout;

  function choose(key: string) {
    const line = baselines.find((one) => keyOf(one) === key);
    setOut(({ baseline: _, ...rest }) =>
      line ? { ...rest, baseline: { feature: line.feature, corner: line.corner } } : rest,
    );
  }

  return (
    <section className="slip-part">
      <h3>{says.baseline}</h3>
      <ChooseField
        label={says.measureFrom}
        options={[
          ...(first ? [[RULE, says.byRule(edgeName(job, first, words))] as const] : []),
          ...baselines.map((one) => [keyOf(one), edgeName(job, one, words)] as const),
        ]}
        value={chosen ? keyOf(chosen) : RULE}
        gone={says.gone}
        onChoose={choose}
      />
      <NoteList notes={notes.baseline} weight="stop" units={job.units} />
      {offsets ? (
        <>
          <p className="field-note">
            {says.alongFrom(
              nameOf(job, offsets.baseline.feature, words),
              offsets.zeroLetter,
              offsets.endLetter,
            )}
          </p>
          <SlipTable table={offsetsTable(offsets, job.units)} units={job.units} isOpen />
        </>
      ) : null}
      <NoteList notes={notes.baseline} weight="assumption" units={job.units} />
    </section>
  );
}

function keyOf({ feature, corner }: Pick<Baseline, 'feature' | 'corner'>): string {
  return `${feature} ${corner}`;
}
