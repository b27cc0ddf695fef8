import { sayProblem } from '../../sheet/words/say.ts';
import { useStore, useWords } from '../SessionContext.ts';
import type { Desk } from './desk.ts';

/** What became of a link that was opened: the copy it brought, or why it brought none. */
export function LinkStrip({ desk }: { readonly desk: Desk }) {
  const words = useWords();
  const says = words.app.handOver.opened;
  const fromLink = useStore(desk.board, (board) => board.fromLink);
  return (
    <div role="alert">
      {fromLink ? (
        <div className="strip">
          {fromLink.is === 'opened' ? (
            <p>{says.copy(fromLink.name || words.app.head.unnamed)}</p>
          ) : (
            <div className="strip-words">
              <p>
                <strong>{says.refused}</strong>
              </p>
              <ul>
                {fromLink.problems.map((problem) => (
                  <li key={`${problem.code} ${problem.where}`}>
                    {sayProblem(words.sheet, problem)}
                  </li>
                ))}
              </ul>
            </div>
          )}
          <button type="button" className="plain" onClick={desk.linkSeen}>
            {says.close}
          </button>
        </div>
      ) : null}
    </div>
  );
}
