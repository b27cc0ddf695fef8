import { useState } from 'react';
import type { Lumber } from '../../job/job.ts';
import type { BoardsResult } from '../../takeoff/result.ts';
import { useAppState, useLiveTakeoff, useSession, useWords } from '../SessionContext.ts';
import { SearchLine } from '../standing/SearchLine.tsx';
import { shownJob } from '../state.ts';
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
  const { practices, units } = useAppState(shownJob);
  const { key, plan } = boards;
  return (
    <SearchLine
      search={useSession().searches.boards}
      shown={{ key, isFirst: plan.proof.is === 'first' }}
      proof={sayProof(words.app.plan, words.sheet, boards, { currency: practices.currency, units })}
      settled={onPut ? <LeftoversButton boards={boards} onPut={onPut} /> : null}
    />
  );
}
