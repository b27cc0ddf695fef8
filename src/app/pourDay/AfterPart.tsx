import { closing } from '../../takeoff/pourDay/closing.ts';
import type { Desk } from '../jobs/desk.ts';
import { useSession, useWords } from '../SessionContext.ts';
import { AllowanceOffer } from './AllowanceOffer.tsx';
import { CloseOutForm } from './CloseOutForm.tsx';
import { HistoryCard } from './HistoryCard.tsx';
import { LeftoversCard } from './LeftoversCard.tsx';
import type { Pour } from './usePour.ts';

interface AfterPartProps {
  readonly pour: Pour;
  readonly desk: Desk;
}

/** What it took, what is left, and what all the jobs so far say of the next one. */
export function AfterPart({ pour, desk }: AfterPartProps) {
  const words = useWords().app.pourDay;
  const session = useSession();
  const { job, takeoff } = pour;
  const { closeOut } = job;
  const first = closeOut ? undefined : closing(job, takeoff, 0);
  return (
    <div className="pour-columns">
      <div className="pour-column">
        {closeOut ? <CloseOutForm pour={pour} closeOut={closeOut} /> : null}
        {closeOut ? null : (
          <section className="pour-card">
            <h2>{words.after.title}</h2>
            <p>{words.after.says}</p>
            {first ? (
              <button
                type="button"
                className="pour-big"
                onClick={() =>
                  session.commit({ do: 'set-close-out', closeOut: { ...first, at: Date.now() } })
                }
              >
                {words.after.close}
              </button>
            ) : (
              <p role="status">{words.waiting}</p>
            )}
          </section>
        )}
      </div>
      <div className="pour-column">
        {closeOut ? <LeftoversCard pour={pour} /> : null}
        <AllowanceOffer desk={desk} />
        <HistoryCard desk={desk} />
      </div>
    </div>
  );
}
