import { memo, useDeferredValue, useRef } from 'react';
import type { Job } from '../job/job.ts';
import { sayProblem } from '../sheet/words/say.ts';
import { StakeTable } from '../sketch/table/StakeTable.tsx';
import type { Selection } from '../sketch/tools/tool.ts';
import { useRests } from '../sketch/useRests.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { useAppState, useLiveTakeoff, useSession, useWords } from './SessionContext.ts';
import { shownJob } from './state.ts';
import { MANY_CORNERS } from './worker/limits.ts';
import { countCorners } from './worker/live.ts';

/** The stakes as a table, beside the corners: for the keyboard, for a screen reader, and for typed distances. */
export function StakesPanel() {
  const job = useAppState(shownJob);
  const selection = useAppState((state) => state.selection);
  const { takeoff } = useLiveTakeoff();
  // During a drag the table is written between frames, and a long one once the hand rests.
  const rests = useRests(takeoff);
  const last = useRef({ job, takeoff });
  const { current } = last;
  const isAnother = current.job !== job || current.takeoff !== takeoff;
  if (isAnother && (rests || countCorners(job) <= MANY_CORNERS)) last.current = { job, takeoff };
  const written = useDeferredValue(last.current);
  return (
    <div className="corners-written" aria-busy={written.job !== job}>
      <Stakes {...written} selection={selection} />
    </div>
  );
}

interface StakesProps {
  readonly job: Job;
  readonly takeoff: Takeoff;
  readonly selection: Selection | null;
}

/** Watches no store itself: React would then write it in one go. */
const Stakes = memo(function Stakes({ job, takeoff, selection }: StakesProps) {
  const words = useWords();
  const session = useSession();
  return (
    <StakeTable
      job={job}
      takeoff={takeoff}
      selection={selection}
      words={words.sketch}
      sayProblem={(problem) => sayProblem(words.sheet, problem)}
      onSelect={session.select}
      onCommit={session.commit}
      onRefusal={session.refuse}
    />
  );
});
