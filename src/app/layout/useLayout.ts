import { useMemo } from 'react';
import type { Job } from '../../job/job.ts';
import { type Layout, layoutOf } from '../../takeoff/layout/layout.ts';
import { useAppState, useLiveTakeoff } from '../SessionContext.ts';

/** The setting out of the job that the figures are of, by what was chosen; nothing while its section is closed. */
export function useLayout(): { readonly job: Job; readonly layout: Layout } | null {
  const { of, takeoff } = useLiveTakeoff();
  const { open, choice } = useAppState((state) => state.settingOut);
  const { pour } = takeoff;
  return useMemo(
    () => (of && open ? { job: of, layout: layoutOf(of, pour, choice) } : null),
    [of, pour, open, choice],
  );
}
