import { useMemo } from 'react';
import type { Job } from '../../job/job.ts';
import { emptyPourLog, type PourLog } from '../../job/pourLog.ts';
import { type Outlook, outlook } from '../../takeoff/pourDay/outlook.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { useAppState, useLiveTakeoff, useSession } from '../SessionContext.ts';

/** The pour at hand, and how a tap goes into it: each is a step of undo, and is saved at once. */
export interface Pour {
  readonly job: Job;
  readonly log: PourLog;
  readonly takeoff: Takeoff;
  /** Absent while pour or bags can't be figured. */
  readonly outlook: Outlook | undefined;
  readonly put: (log: PourLog) => void;
}

const EMPTY = emptyPourLog();

export function usePour(): Pour {
  const session = useSession();
  const job = useAppState((state) => state.history.now.job);
  const { takeoff } = useLiveTakeoff();
  const log = job.pourLog ?? EMPTY;
  const { practices } = job;
  const seen = useMemo(() => outlook(practices, takeoff, log), [practices, takeoff, log]);
  return {
    job,
    log,
    takeoff,
    outlook: seen,
    put: (pourLog) => session.commit({ do: 'set-pour-log', pourLog }),
  };
}
