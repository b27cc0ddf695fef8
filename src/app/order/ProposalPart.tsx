import type { Job } from '../../job/job.ts';
import { bidOf, orderOf } from '../../job/orderDefaults.ts';
import { TEXT_MOST } from '../../job/textLimits.ts';
import { useSession, useWords } from '../SessionContext.ts';
import { TextField } from '../sheet/TextField.tsx';

/** What the customer reads: the work of this job, and what is left out and agreed on every job. */
export function ProposalPart({ job }: { readonly job: Job }) {
  const words = useWords().app.order;
  const { commit } = useSession();
  const bid = bidOf(job);
  const order = orderOf(job.practices);
  const putRule = (change: { readonly exclusions?: string; readonly terms?: string }) =>
    commit({
      do: 'set-practices',
      practices: { ...job.practices, order: { ...order, bid: { ...order.bid, ...change } } },
    });
  return (
    <section className="slip-part" aria-label={words.parts.proposal}>
      <p className="field-note">{words.proposal.hint}</p>
      <TextField
        label={words.proposal.scope}
        text={bid.scope}
        most={TEXT_MOST.terms}
        lines
        onText={(scope) => commit({ do: 'set-bid', bid: { ...bid, scope } })}
      />
      <TextField
        label={words.proposal.exclusions}
        text={order.bid.exclusions}
        most={TEXT_MOST.terms}
        lines
        onText={(exclusions) => putRule({ exclusions })}
      />
      <TextField
        label={words.proposal.terms}
        text={order.bid.terms}
        most={TEXT_MOST.terms}
        lines
        onText={(terms) => putRule({ terms })}
      />
    </section>
  );
}
