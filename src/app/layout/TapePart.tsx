import { between, type LaidPad } from '../../takeoff/layout/corners.ts';
import { movesTable, tapeFigures } from '../../takeoff/layout/figures.ts';
import { fourOf, NO_READINGS } from '../../takeoff/layout/tapeSaid.ts';
import type { Grid } from '../../units/grid.ts';
import { ChooseField } from '../ChooseField.tsx';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { FitPart } from './FitPart.tsx';
import type { LayoutPartProps } from './layoutPartProps.ts';
import { TapeField } from './TapeField.tsx';
import { TapeOutcome } from './TapeOutcome.tsx';

/** What the tape said of the set form, and which corners to move for it. */
export function TapePart({ job, layout, laid }: LayoutPartProps & { readonly laid: LaidPad }) {
  const words = useWords();
  const says = words.app.layout;
  const { setOut } = useSession();
  const readings = useAppState((state) => state.settingOut.choice.tape) ?? NO_READINGS;
  const four = fourOf(laid);
  const { tapeSaid: said, notes } = layout;
  const { units } = job;

  function set(part: Partial<typeof readings>) {
    setOut((choice) => ({ ...choice, tape: { ...NO_READINGS, ...choice.tape, ...part } }));
  }

  if (!four) return <FitPart job={job} layout={layout} />;

  const reading = (
    label: string,
    drawn: number,
    value: Grid | null,
    onValue: (value: Grid | null) => void,
  ) => (
    <TapeField
      key={label}
      label={label}
      drawn={drawn}
      value={value}
      units={units}
      onValue={onValue}
    />
  );

  const pairs = [
    [0, 2],
    [1, 3],
  ] as const;
  const letters = (i: number, j: number) => [four[i % 4]!.letter, four[j % 4]!.letter] as const;
  const drawn = (i: number, j: number) => between(four[i % 4]!.at, four[j % 4]!.at);
  const printed = (i: number, j: number) =>
    layout.ties.find(({ from, to }) => from === four[i] && to === four[j])?.printed ?? drawn(i, j);
  return (
    <section className="slip-part">
      <h3>{says.tape}</h3>
      <p className="field-note">{says.tapeHint}</p>
      <div className="tape-fields">
        {pairs.map(([i, j], at) =>
          reading(
            says.diagonal(...letters(i, j)),
            printed(i, j),
            readings.diagonals[at]!,
            (value) => {
              const [first, second] = readings.diagonals;
              set({ diagonals: at === 0 ? [value, second] : [first, value] });
            },
          ),
        )}
        {readings.sides.map((side, i) =>
          reading(says.side(...letters(i, i + 1)), drawn(i, i + 1), side, (value) => {
            const [a, b, c, d] = readings.sides;
            const at = (k: number, old: Grid | null) => (k === i ? value : old);
            set({ sides: [at(0, a), at(1, b), at(2, c), at(3, d)] });
          }),
        )}
        <ChooseField
          label={says.holds}
          options={four.map((_, i) => [`${i}`, says.side(...letters(i, i + 1))])}
          value={`${readings.holds}`}
          onChoose={(key) => set({ holds: Number(key) })}
        />
      </div>
      <TapeOutcome
        figures={said ? tapeFigures(said) : []}
        moves={said ? movesTable(said) : null}
        notes={notes.tape}
        units={units}
        onClear={() => set(NO_READINGS)}
      />
    </section>
  );
}
