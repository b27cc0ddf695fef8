import { defaultPractices } from '../../job/defaults.ts';
import { suggestedAllowance } from '../../takeoff/pourDay/history.ts';
import { formatShare } from '../../units/format.ts';
import type { Desk } from '../jobs/desk.ts';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { useClosedJobs } from './useClosedJobs.ts';

/** The allowance that closed jobs speak for, offered for this one: nothing changes until somebody says so. */
export function AllowanceOffer({ desk }: { readonly desk: Desk }) {
  const words = useWords().app.pourDay.history;
  const session = useSession();
  const practices = useAppState((state) => state.history.now.job.practices);
  const isClosed = useAppState((state) => state.history.now.job.closeOut !== undefined);
  const mine = useAppState((state) => state.hold === 'mine');
  const closed = useClosedJobs(desk);
  // Drawn toward what nobody has set, not toward what an offer set before: jobs would count twice.
  const usual = defaultPractices().waste.share;
  const { share, least, most, spread } = suggestedAllowance(
    closed.map((one) => one.closed),
    usual,
  );
  if (spread.jobs === 0) return null;
  const { waste } = practices;
  const isSet = waste.by === 'share' && share === waste.share;
  return (
    <section className="slip pour-offer">
      <h2>{words.offer}</h2>
      <p>
        {words.says(String(spread.jobs), formatShare(share), formatShare(least), formatShare(most))}
      </p>
      <p className="field-note">{words.model(formatShare(spread.weight), formatShare(usual))}</p>
      {isClosed ? <p>{words.thisClosed}</p> : null}
      {!isClosed && isSet ? <p>{words.asIs(formatShare(share))}</p> : null}
      {!isClosed && !isSet && mine ? (
        <button
          type="button"
          className="main-button"
          onClick={() =>
            session.commit({
              do: 'set-practices',
              practices: { ...practices, waste: { ...waste, by: 'share', share } },
            })
          }
        >
          {waste.by === 'share'
            ? words.use(formatShare(share), formatShare(waste.share))
            : words.forParts(formatShare(share))}
        </button>
      ) : null}
    </section>
  );
}
