import { sayProblem } from '../sheet/words/say.ts';
import type { Desk } from './jobs/desk.ts';
import { LinkStrip } from './jobs/LinkStrip.tsx';
import { NewVersionNote } from './NewVersionNote.tsx';
import { useAppState, useSession, useWords } from './SessionContext.ts';

interface StripsProps {
  readonly desk: Desk;
  readonly onJobs: () => void;
}

/** What must be known before going on, above the work and never over it. */
export function Strips({ desk, onJobs }: StripsProps) {
  const allWords = useWords();
  const words = allWords.app;
  const session = useSession();
  const saving = useAppState((state) => state.saving);
  const hold = useAppState((state) => state.hold);
  const welcome = useAppState((state) => state.welcome);
  return (
    <section className="strips" aria-label={words.strips}>
      <NewVersionNote idle={desk.idle} />
      <LinkStrip desk={desk} />
      {welcome ? (
        <div className="strip">
          <p>{words.welcome.says}</p>
          <button
            type="button"
            className="plain"
            onClick={() => {
              session.endWelcome();
              onJobs();
            }}
          >
            {words.welcome.own}
          </button>
          <button type="button" className="plain" onClick={session.endWelcome}>
            {words.welcome.close}
          </button>
        </div>
      ) : null}
      {hold === 'other-tab' ? (
        <div className="strip" role="status">
          <p>{words.otherTab.says}</p>
          <button type="button" className="plain" onClick={desk.takeOver}>
            {words.otherTab.takeOver}
          </button>
        </div>
      ) : null}
      {saving.is === 'not-saved' ? (
        <div className="strip" role="alert">
          <p>{words.saving.notSavedWhy(sayProblem(allWords.sheet, saving.problem))}</p>
          <button type="button" className="plain" onClick={desk.exportOpen}>
            {words.saving.exportNow}
          </button>
        </div>
      ) : null}
    </section>
  );
}
