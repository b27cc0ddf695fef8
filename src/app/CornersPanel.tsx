import { memo, useDeferredValue, useRef } from 'react';
import type { Job } from '../job/job.ts';
import { sayProblem } from '../sheet/words/say.ts';
import { CornerTable } from '../sketch/CornerTable.tsx';
import type { Selection } from '../sketch/tools/tool.ts';
import { useRests } from '../sketch/useRests.ts';
import { useAppState, useSession, useWords } from './SessionContext.ts';
import { shownJob } from './state.ts';
import { MANY_CORNERS } from './worker/limits.ts';
import { countCorners } from './worker/live.ts';

/** The sketch as a table: every corner and edge, for the keyboard, for a screen reader, and for typed numbers. */
export function CornersPanel() {
  const job = useAppState(shownJob);
  const selection = useAppState((state) => state.selection);
  return <WrittenCorners job={job} selection={selection} />;
}

interface CornersProps {
  readonly job: Job;
  readonly selection: Selection | null;
}

/** During a drag the table is written between frames, and a long one once the hand rests. */
function WrittenCorners({ job, selection }: CornersProps) {
  const rests = useRests(job);
  const last = useRef(job);
  if (rests || countCorners(job) <= MANY_CORNERS) last.current = job;
  const written = useDeferredValue(last.current);
  const late = last.current !== job;
  return (
    <div
      className="corners-written"
      aria-busy={written !== job}
      data-standing={late ? 'behind' : undefined}
    >
      <Corners job={written} selection={selection} />
    </div>
  );
}

/** Watches no store itself: React would then write it in one go. */
const Corners = memo(function Corners({ job, selection }: CornersProps) {
  const words = useWords();
  const session = useSession();
  return (
    <CornerTable
      job={job}
      selection={selection}
      words={words.sketch}
      sayProblem={(problem) => sayProblem(words.sheet, problem)}
      onSelect={session.select}
      onCommit={session.commit}
      onRefusal={session.refuse}
    />
  );
});
