import type { UnitStyle } from '../../job/job.ts';
import { TEXT_MOST } from '../../job/textLimits.ts';
import { PAPER_NAMES, type PaperName, TURNS } from '../../sheet/papers.ts';
import { scalesFor } from '../../sheet/scales.ts';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { SheetLanguageChoice } from '../SpeechChoice.tsx';
import type { SheetChoice } from './choice.ts';
import { PageChoice } from './PageChoice.tsx';
import { TextField } from './TextField.tsx';
import { TitleFields } from './TitleFields.tsx';

interface SheetOptionsProps {
  readonly choice: SheetChoice;
  readonly units: UnitStyle;
  /** Whether one page is proposed for this pad. */
  readonly small: boolean;
  readonly onChoice: (choice: SheetChoice) => void;
}

export function SheetOptions({ choice, units, small, onChoice }: SheetOptionsProps) {
  const words = useWords().app.sheet;
  const { commit } = useSession();
  const { name, site, notes } = useAppState((state) => state.history.now.job);
  const scales = scalesFor(units);
  const scale = scales.some((one) => one.name === choice.scale) ? choice.scale : null;
  return (
    <div className="sheet-options">
      <p className="field-note">{words.printHint}</p>
      <div className="start-sizes">
        <label className="field">
          {words.paper}
          <select
            value={choice.paper}
            onChange={(event) =>
              onChoice({ ...choice, paper: event.currentTarget.value as PaperName })
            }
          >
            {PAPER_NAMES.map((paper) => (
              <option key={paper} value={paper}>
                {words.papers[paper]}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          {words.orientation}
          <select
            value={choice.turn ?? ''}
            onChange={(event) =>
              onChoice({
                ...choice,
                turn: TURNS.find((turn) => turn === event.currentTarget.value) ?? null,
              })
            }
          >
            <option value="">{words.bestTurn}</option>
            {TURNS.map((turn) => (
              <option key={turn} value={turn}>
                {words[turn]}
              </option>
            ))}
          </select>
        </label>
      </div>
      <label className="field">
        {words.scale}
        <select
          value={scale ?? ''}
          onChange={(event) => onChoice({ ...choice, scale: event.currentTarget.value || null })}
        >
          <option value="">{words.bestFit}</option>
          {scales.map((one) => (
            <option key={one.name} value={one.name}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      <PageChoice choice={choice} small={small} onChoice={onChoice} />
      <SheetLanguageChoice />
      <h2 className="options-title">{words.text}</h2>
      <TextField
        label={words.name}
        text={name}
        most={TEXT_MOST.name}
        onText={(text) => commit({ do: 'set-text', name: text })}
      />
      <TextField
        label={words.site}
        text={site}
        most={TEXT_MOST.site}
        onText={(text) => commit({ do: 'set-text', site: text })}
      />
      <TextField
        label={words.notes}
        text={notes}
        most={TEXT_MOST.notes}
        lines
        onText={(text) => commit({ do: 'set-text', notes: text })}
      />
      <TitleFields />
    </div>
  );
}
