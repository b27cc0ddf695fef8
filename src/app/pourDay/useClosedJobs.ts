import { useEffect } from 'react';
import type { CloseOut } from '../../job/pourLog.ts';
import type { JobListing } from '../../storage/jobs.ts';
import type { Desk } from '../jobs/desk.ts';
import { useAppState, useStore } from '../SessionContext.ts';

export interface ClosedJob {
  readonly id: string;
  readonly name: string;
  readonly closed: CloseOut;
}

/** The closed jobs on this device, the last closed first; the open one as it stands on screen. */
export function useClosedJobs(desk: Desk): readonly ClosedJob[] {
  const jobs = useStore(desk.board, (board) => board.jobs);
  const openId = useAppState((state) => state.jobId);
  const open = useAppState((state) => state.history.now.job);
  useEffect(() => {
    void desk.refresh();
  }, [desk]);
  const others = jobs.filter(({ id }) => id !== openId);
  const { name, closeOut } = open;
  const own = closeOut ? [{ id: openId, name, changed: 0, closed: closeOut }] : [];
  return closedJobs([...own, ...others]);
}

/** A job that was brought in twice is one pour: closed at the same moment, of the same net. */
export function closedJobs(listed: readonly JobListing[]): readonly ClosedJob[] {
  const seen = new Set<string>();
  return listed
    .flatMap(({ id, name, closed }) => (closed ? [{ id, name, closed }] : []))
    .filter(({ closed: { at, net } }) => {
      const pour = `${at} ${net}`;
      const known = seen.has(pour);
      seen.add(pour);
      return !known;
    })
    .toSorted((a, b) => b.closed.at - a.closed.at);
}
