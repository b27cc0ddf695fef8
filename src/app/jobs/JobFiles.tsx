import { sayProblem } from '../../sheet/words/say.ts';
import { useStore, useWords } from '../SessionContext.ts';
import type { Desk } from './desk.ts';

interface JobFilesProps {
  readonly desk: Desk;
  readonly onOpened: () => void;
}

/** Job files in and out. A file that can't be read whole is refused with all that is wrong with it. */
export function JobFiles({ desk, onOpened }: JobFilesProps) {
  const words = useWords();
  const jobs = words.app.jobs;
  const refused = useStore(desk.board, (board) => board.refused);
  return (
    <section>
      <h3>{jobs.file}</h3>
      <p className="field-note">{jobs.exportWhy}</p>
      <div className="button-row">
        <label className="plain file-button">
          {jobs.importFile}
          <input
            type="file"
            accept=".json,application/json"
            className="visually-hidden"
            onChange={async (event) => {
              const input = event.currentTarget;
              const file = input.files?.[0];
              input.value = '';
              if (file && (await desk.bringIn(file))) onOpened();
            }}
          />
        </label>
        <button type="button" className="plain" onClick={desk.exportOpen}>
          {jobs.exportFile}
        </button>
      </div>
      {refused ? (
        <div className="note" data-weight="stop" role="alert">
          <p>
            <strong>{jobs.cantOpen(refused.name)}</strong>
          </p>
          <ul>
            {refused.problems.map((problem) => (
              <li key={`${problem.code} ${problem.where}`}>{sayProblem(words.sheet, problem)}</li>
            ))}
          </ul>
          {refused.text === undefined ? null : (
            <button type="button" className="plain" onClick={desk.exportRefused}>
              {jobs.saveBroken}
            </button>
          )}
        </div>
      ) : null}
    </section>
  );
}
