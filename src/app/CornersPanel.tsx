import { sayProblem } from '../sheet/words/say.ts';
import { CornerTable } from '../sketch/CornerTable.tsx';
import { useAppState, useSession, useWords } from './SessionContext.ts';
import { shownJob } from './state.ts';

/** The sketch as a table: every corner and edge, for the keyboard, for a screen reader, and for typed numbers. */
export function CornersPanel() {
  const words = useWords();
  const session = useSession();
  const job = useAppState(shownJob);
  const selection = useAppState((state) => state.selection);
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
}
