import { useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import type { SheetPage } from '../../sheet/page.ts';
import { useAppState, useLiveTakeoff, useWords } from '../SessionContext.ts';
import { FilesPart } from './FilesPart.tsx';
import { LinkPart } from './LinkPart.tsx';
import { SketchPart } from './SketchPart.tsx';
import { TablesPart } from './TablesPart.tsx';

interface HandOverDialogProps {
  /** The crew sheet as it is chosen; null to make it as it would be chosen at first. */
  readonly pages: readonly SheetPage[] | null;
  readonly onClose: () => void;
}

/** All the ways in which a job leaves this device: a link, files, the sketch, tables. */
export function HandOverDialog({ pages, onClose }: HandOverDialogProps) {
  const words = useWords().app.handOver;
  const dialog = useRef<HTMLDialogElement>(null);
  const job = useAppState((state) => state.history.now.job);
  const live = useLiveTakeoff();
  useEffect(() => dialog.current?.showModal(), []);
  // What is handed on must be true of the job.
  const takeoff = live.standing === 'current' && live.of === job ? live.takeoff : null;
  // Apart from where it was opened, whose buttons have a look of their own.
  return createPortal(
    <dialog
      ref={dialog}
      className="jobs hand-over"
      aria-labelledby="hand-over-title"
      onClose={(event) => {
        // It may have been opened from another dialog, which stays open.
        event.stopPropagation();
        onClose();
      }}
    >
      <header className="jobs-head">
        <h2 id="hand-over-title">{words.title}</h2>
        <button type="button" className="plain" onClick={() => dialog.current?.close()}>
          {words.close}
        </button>
      </header>
      <LinkPart job={job} />
      {takeoff ? null : <p role="status">{words.wait}</p>}
      <FilesPart job={job} takeoff={takeoff} pages={pages} />
      {takeoff ? <SketchPart job={job} takeoff={takeoff} /> : null}
      {takeoff ? <TablesPart job={job} takeoff={takeoff} /> : null}
    </dialog>,
    document.body,
  );
}
