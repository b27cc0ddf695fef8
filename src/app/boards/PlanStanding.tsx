import { useState } from 'react';
import type { Lumber } from '../../job/job.ts';
import type { BoardPlan } from '../../takeoff/boards/plan.ts';
import type { BoardsResult } from '../../takeoff/result.ts';
import { useAppState, useLiveTakeoff, useSession, useStore, useWords } from '../SessionContext.ts';
import { shownJob } from '../state.ts';
import type { PlanWords } from '../words/planEn.ts';
import type { Standing } from '../worker/search.ts';
import { LeftoversButton } from './LeftoversButton.tsx';
import { sayProof } from './sayProof.ts';

/** How sure the board plan on the ticket is, how the search for a better one stands, and what to do with what is left. */
export function PlanStanding() {
  const says = useWords().app.plan;
  const { boards } = useLiveTakeoff().takeoff;
  const lumber = useAppState((state) => state.history.now.job.lumber);
  const [put, setPut] = useState<Lumber | null>(null);
  const planned = boards && boards.problem.demands.length > 0 ? boards : null;
  // The plan now is of that list, or there is none: what happened is said for as long as the list is the one put here.
  const done = put === lumber;
  if (!planned && !done) return null;
  return (
    <section className="plan-standing" aria-label={says.title}>
      {done ? <p role="status">{says.leftoversDone}</p> : null}
      {planned ? <PlanOf boards={planned} onPut={done ? null : setPut} /> : null}
    </section>
  );
}

interface PlanOfProps {
  readonly boards: BoardsResult;
  /** null: the leftovers were put on the list just now. */
  readonly onPut: ((lumber: Lumber) => void) | null;
}

function PlanOf({ boards, onPut }: PlanOfProps) {
  const words = useWords();
  const says = words.app.plan;
  const { stop, again, standing: store } = useSession().searches.boards;
  const standing = useStore(store, (held) => held);
  const { practices, units } = useAppState(shownJob);
  const phase = phaseOf(standing, boards);
  const settled = phase === 'done' || phase === 'ended';
  return (
    <>
      <div role="status" data-is={phase}>
        {phase === 'ended' ? <p>{whyEnded(standing, says)}</p> : null}
        <p>
          {settled
            ? sayProof(says, words.sheet, boards, { currency: practices.currency, units })
            : says[phase]}
        </p>
      </div>
      {phase === 'searching' || phase === 'better' ? (
        <button type="button" className="plain" onClick={stop}>
          {says.stop}
        </button>
      ) : null}
      {phase === 'ended' ? (
        <button type="button" className="plain" onClick={again}>
          {says.again}
        </button>
      ) : null}
      {settled && onPut ? <LeftoversButton boards={boards} onPut={onPut} /> : null}
    </>
  );
}

type Phase = 'waiting' | 'searching' | 'better' | 'ended' | 'done';

/**
 * The figures may be a moment behind the search: what is said of the plan is what is known of the one that they show, and
 * a find that isn't in them yet is still to come.
 */
function phaseOf(search: Standing<BoardPlan>, { plan, key }: BoardsResult): Phase {
  if (plan.proof.is !== 'first') return 'done';
  if (search.is === 'nothing' || search.key !== key) return 'waiting';
  if (search.is === 'waiting') return 'waiting';
  if (search.is === 'searching') return search.best ? 'better' : 'searching';
  return search.is === 'done' ? 'better' : 'ended';
}

function whyEnded(search: Standing<BoardPlan>, says: PlanWords) {
  if (search.is === 'failed') return says.failed(search.why);
  return search.is === 'stuck' ? says.stuck : says.stopped;
}
