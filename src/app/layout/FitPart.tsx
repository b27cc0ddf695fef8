import type { Tie } from '../../takeoff/layout/diagonals.ts';
import { fitFigures, fitMovesTable } from '../../takeoff/layout/figures.ts';
import { NO_FIT, sidesToHold, tieName } from '../../takeoff/layout/tapeFit.ts';
import { ChooseField } from '../ChooseField.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import type { LayoutPartProps } from './layoutPartProps.ts';
import { TapeField } from './TapeField.tsx';
import { TapeOutcome } from './TapeOutcome.tsx';

/** What the tape said of a set form of any shape, tie by tie, and which corners to move for it. */
export function FitPart({ job, layout }: LayoutPartProps) {
  const says = useWords().app.layout;
  const { setOut } = useSession();
  const readings = useAppState((state) => state.settingOut.choice.fit) ?? NO_FIT;
  const { ties, tapeFit: fit, notes } = layout;
  const sides = sidesToHold(ties);

  function set(change: (before: typeof readings) => typeof readings) {
    setOut((choice) => ({ ...choice, fit: change(choice.fit ?? NO_FIT) }));
  }

  const longest = sides.reduce<Tie | undefined>(
    (best, tie) => (best && best.length >= tie.length ? best : tie),
    undefined,
  );
  return (
    <section className="slip-part">
      <h3>{says.tape}</h3>
      <p className="field-note">{says.fitHint}</p>
      <div className="tape-fields">
        {ties.map((tie) => {
          const name = tieName(tie);
          return (
            <TapeField
              key={name}
              label={says[tie.kind](tie.from.letter, tie.to.letter)}
              drawn={tie.printed}
              use={tie.sets ? says.sets : says.checks}
              value={readings.tapes[name] ?? null}
              units={job.units}
              onValue={(value) =>
                set(({ tapes: { [name]: _, ...others }, ...rest }) => ({
                  ...rest,
                  tapes: value === null ? others : { ...others, [name]: value },
                }))
              }
            />
          );
        })}
        {longest ? (
          <ChooseField
            label={says.holds}
            options={sides.map((tie) => [tieName(tie), says.side(tie.from.letter, tie.to.letter)])}
            value={readings.holds ?? tieName(longest)}
            onChoose={(holds) => set((before) => ({ ...before, holds }))}
          />
        ) : null}
      </div>
      <TapeOutcome
        figures={fit ? fitFigures(fit) : []}
        moves={fit ? fitMovesTable(fit) : null}
        notes={notes.tape}
        units={job.units}
        onClear={() => set(() => NO_FIT)}
      />
    </section>
  );
}
