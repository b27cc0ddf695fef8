import type { Lumber } from '../../job/job.ts';
import { leftovers } from '../../takeoff/boards/leftovers.ts';
import type { BoardsResult } from '../../takeoff/result.ts';
import { useAppState, useLiveTakeoff, useSession, useWords } from '../SessionContext.ts';

interface LeftoversButtonProps {
  readonly boards: BoardsResult;
  /** The list was changed to this. */
  readonly onPut: (lumber: Lumber) => void;
}

/** The truck's list as it will be after the job, in one step of undo. */
export function LeftoversButton({ boards, onPut }: LeftoversButtonProps) {
  const says = useWords().app.plan;
  const session = useSession();
  const job = useAppState((state) => state.history.now.job);
  const mine = useAppState((state) => state.hold === 'mine');
  const { of, standing } = useLiveTakeoff();
  // Only the plan of the very job on screen tells what is left after it.
  if (!mine || standing !== 'current' || of !== job) return null;
  const lumber = { ...job.lumber, truck: leftovers(job, boards.plan) };
  if (JSON.stringify(lumber.truck) === JSON.stringify(job.lumber.truck)) return null;
  return (
    <>
      <button
        type="button"
        className="plain"
        onClick={() => {
          onPut(lumber);
          session.commit({ do: 'set-lumber', lumber });
        }}
      >
        {says.leftovers}
      </button>
      <p className="field-note">{says.leftoversHint}</p>
    </>
  );
}
