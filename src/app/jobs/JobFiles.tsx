import { HandOverButton } from '../handOver/HandOverButton.tsx';
import { useStore, useWords } from '../SessionContext.ts';
import type { Desk } from './desk.ts';
import { FileButton } from './FileButton.tsx';

interface JobFilesProps {
  readonly desk: Desk;
  readonly onOpened: () => void;
}

/** Job files in and out. A file that can't be read whole is refused with all that is wrong with it. */
export function JobFiles({ desk, onOpened }: JobFilesProps) {
  const words = useWords().app;
  const { jobs } = words;
  const mayBeCleared = useStore(desk.board, (board) => board.mayBeCleared);
  return (
    <section>
      <h3>{jobs.file}</h3>
      <p className="field-note">{jobs.exportWhy}</p>
      <div className="button-row">
        <FileButton
          label={jobs.importFile}
          accept=".json,application/json"
          onFile={async (file) => {
            if (await desk.bringIn(file)) onOpened();
          }}
        />
        <button type="button" className="plain" onClick={desk.exportOpen}>
          {jobs.exportFile}
        </button>
        <HandOverButton pages={null} />
      </div>
      {mayBeCleared ? <p className="field-note">{words.saving.mayBeCleared}</p> : null}
    </section>
  );
}
