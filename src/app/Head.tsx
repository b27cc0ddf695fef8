import type { Ref } from 'react';
import { THEMES } from './look/theme.ts';
import { SavedMark } from './SavedMark.tsx';
import { useAppState, useSession, useWords } from './SessionContext.ts';
import { SpeechChoice } from './SpeechChoice.tsx';
import { UNIT_STYLES } from './unitStyles.ts';

interface HeadProps {
  readonly jobsButton: Ref<HTMLButtonElement>;
  readonly onJobs: () => void;
}

export function Head({ jobsButton, onJobs }: HeadProps) {
  const words = useWords().app;
  const name = useAppState((state) => state.history.now.job.name);
  return (
    <header className="head">
      <h1 className="visually-hidden">{words.appName}</h1>
      <button
        ref={jobsButton}
        type="button"
        className="job-name"
        aria-haspopup="dialog"
        aria-label={words.head.openJobs(name || words.head.unnamed)}
        onClick={onJobs}
      >
        <span className="job-name-text">{name || words.head.unnamed}</span>
        <span aria-hidden="true" className="caret" />
      </button>
      <SavedMark />
      <button
        type="button"
        className="plain"
        popoverTarget="head-settings"
        aria-label={words.head.settings}
      >
        <svg className="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
          <path d="M2 15h20v6H2zM6 15v3M10 15v2M14 15v3M18 15v2M12 2v2M5 5l1.5 1.5M19 5l-1.5 1.5M7 11a5 5 0 0 1 10 0z" />
        </svg>
      </button>
      <HeadSettings />
    </header>
  );
}

/** Units, light and language: what one changes without leaving the work. */
function HeadSettings() {
  const words = useWords().app;
  const session = useSession();
  const units = useAppState((state) => state.history.now.job.units);
  const theme = useAppState((state) => state.theme);
  return (
    <div id="head-settings" popover="auto" className="menu head-settings">
      <fieldset>
        <legend>{words.units.label}</legend>
        {UNIT_STYLES.map((one) => (
          <label key={one} className="choice">
            <input
              type="radio"
              name="units"
              checked={one === units}
              onChange={() => session.commit({ do: 'set-units', units: one })}
            />
            {words.units[one]}
          </label>
        ))}
      </fieldset>
      <fieldset>
        <legend>{words.theme.label}</legend>
        {THEMES.map((one) => (
          <label key={one} className="choice">
            <input
              type="radio"
              name="theme"
              checked={one === theme}
              onChange={() => session.light(one)}
            />
            {words.theme[one]}
          </label>
        ))}
      </fieldset>
      <SpeechChoice />
    </div>
  );
}
