import { defaultPractices } from '../../job/defaults.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import { historySpread, spareRule } from '../../takeoff/pourDay/history.ts';
import { formatShare } from '../../units/format.ts';
import type { Desk } from '../jobs/desk.ts';
import { useAppState, useSession, useWords } from '../SessionContext.ts';
import { useClosedJobs } from './useClosedJobs.ts';

/** One job has no spread. */
const LEAST_JOBS = 2;

/** What closed jobs say for the spare bags, offered for this order: nothing changes until somebody says so. */
export function SpareOffer({ desk }: { readonly desk: Desk }) {
  const words = useWords().app.pourDay.history;
  const session = useSession();
  const practices = useAppState((state) => state.history.now.job.practices);
  const isClosed = useAppState((state) => state.history.now.job.closeOut !== undefined);
  const mine = useAppState((state) => state.hold === 'mine');
  const closed = useClosedJobs(desk);
  const rule = spareRule(
    historySpread(
      closed.map((one) => one.closed),
      defaultPractices().waste.share,
    ),
  );
  if (rule.jobs < LEAST_JOBS || isClosed || !mine) return null;
  const order = orderOf(practices);
  const { over, spread, jobs } = order.bags;
  if (over === rule.over && spread === rule.spread && jobs === rule.jobs) return null;
  return (
    <section className="slip pour-offer">
      <h2>{words.spareOffer}</h2>
      <p>{words.spareSays(String(rule.jobs), formatShare(rule.over), formatShare(rule.spread))}</p>
      <button
        type="button"
        className="main-button"
        onClick={() =>
          session.commit({
            do: 'set-practices',
            practices: { ...practices, order: { ...order, bags: { ...order.bags, ...rule } } },
          })
        }
      >
        {words.spareUse}
      </button>
    </section>
  );
}
