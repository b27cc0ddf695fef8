import { useEffect, useRef } from 'react';
import { useAppState, useStore, useWords } from '../SessionContext.ts';
import type { Desk } from './desk.ts';
import { JobFiles } from './JobFiles.tsx';
import { JobRow } from './JobRow.tsx';
import { RefusedNote } from './RefusedNote.tsx';
import { StartForm } from './StartForm.tsx';

interface JobsDialogProps {
  readonly desk: Desk;
  readonly onClose: () => void;
}

/** All the jobs on this device, how to start another, and the job file. */
export function JobsDialog({ desk, onClose }: JobsDialogProps) {
  const words = useWords().app.jobs;
  const dialog = useRef<HTMLDialogElement>(null);
  const board = useStore(desk.board, (all) => all);
  const openId = useAppState((state) => state.jobId);
  const open = useAppState((state) => state.history.now.job);

  useEffect(() => {
    dialog.current?.showModal();
    void desk.refresh();
  }, [desk]);

  return (
    <dialog ref={dialog} className="jobs" aria-labelledby="jobs-title" onClose={onClose}>
      <header className="jobs-head">
        <h2 id="jobs-title">{words.title}</h2>
        <button type="button" className="plain" onClick={() => dialog.current?.close()}>
          {words.close}
        </button>
      </header>
      <RefusedNote desk={desk} />
      <StartForm
        key={openId}
        open={open}
        onStart={(job) => {
          void desk.start(job);
          dialog.current?.close();
        }}
      />
      <section>
        <h3>{words.kept}</h3>
        {board.removed ? (
          <div className="strip" role="status">
            <p>{words.removed(board.removed.name)}</p>
            <button type="button" className="plain" onClick={desk.bringBack}>
              {words.bringBack}
            </button>
          </div>
        ) : null}
        {board.jobs.length === 0 ? <p>{words.none}</p> : null}
        <ul className="job-list">
          {board.jobs.map((job) => (
            <JobRow
              key={job.id}
              job={job}
              isOpen={job.id === openId}
              desk={desk}
              onOpened={() => dialog.current?.close()}
            />
          ))}
        </ul>
      </section>
      <JobFiles desk={desk} onOpened={() => dialog.current?.close()} />
    </dialog>
  );
}
