import { sayProblem } from '../sheet/words/say.ts';
import { useAppState, useSession, useWords } from './SessionContext.ts';

/** What couldn't be done and how to mend it, until the next thing that can. */
export function RefusalNote() {
  const words = useWords();
  const { refuse } = useSession();
  const refusal = useAppState((state) => state.refusal);
  return (
    <div aria-live="assertive">
      {refusal ? (
        <div className="refusal">
          <p>
            <strong>{words.app.sketch.refused}. </strong>
            {refusal.code === 'open-in-other-tab'
              ? words.app.otherTab.says
              : sayProblem(words.sheet, refusal)}
          </p>
          <button type="button" className="plain" onClick={() => refuse(null)}>
            {words.app.sketch.dismiss}
          </button>
        </div>
      ) : null}
    </div>
  );
}
