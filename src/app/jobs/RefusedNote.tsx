import { useEffect, useRef } from 'react';
import { sayProblem } from '../../sheet/words/say.ts';
import type { Problem } from '../../units/result.ts';
import { useStore, useWords } from '../SessionContext.ts';
import type { Desk } from './desk.ts';

/** A job that can't be opened: all that is wrong with it, and its text when only we have it. */
export function RefusedNote({ desk }: { readonly desk: Desk }) {
  const words = useWords();
  const jobs = words.app.jobs;
  const refused = useStore(desk.board, (board) => board.refused);
  const trouble = useStore(desk.board, (board) => board.trouble);
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (refused) note.current?.scrollIntoView({ block: 'nearest' });
  }, [refused]);

  function say(problem: Problem): string {
    return sayProblem(words.sheet, problem);
  }

  return (
    <div ref={note} role="alert">
      {trouble ? (
        <p className="note" data-weight="stop">
          {say(trouble)}
        </p>
      ) : null}
      {refused ? (
        <div className="note" data-weight="stop">
          <p>
            <strong>
              {refused.text === undefined
                ? jobs.cantOpen(refused.name || words.app.head.unnamed)
                : jobs.cantOpenStored(refused.name || words.app.head.unnamed)}
            </strong>
          </p>
          <ul className="problem-list">
            {refused.problems.map((problem) => (
              <li key={`${problem.code} ${problem.where}`}>{say(problem)}</li>
            ))}
          </ul>
          {refused.text === undefined ? null : (
            <button type="button" className="plain" onClick={desk.exportRefused}>
              {jobs.saveBroken}
            </button>
          )}
        </div>
      ) : null}
    </div>
  );
}
