import { useState } from 'react';
import { Head } from './Head.tsx';
import type { Desk } from './jobs/desk.ts';
import { JobsDialog } from './jobs/JobsDialog.tsx';
import { useShownTheme } from './look/theme.ts';
import { DayLine } from './places/DayLine.tsx';
import { SheetPlace } from './places/SheetPlace.tsx';
import { SketchPlace } from './places/SketchPlace.tsx';
import { useAppState } from './SessionContext.ts';
import { Strips } from './Strips.tsx';
import { useUndoKeys } from './undoKeys.ts';

/** The whole screen: name and state above, the day's stations, and one of its places at work. */
export function App({ desk }: { readonly desk: Desk }) {
  const [jobsOpen, setJobsOpen] = useState(desk.board.get().refused !== null);
  const place = useAppState((state) => state.place);
  const panel = useAppState((state) => (state.place === 'sheet' ? 'ticket' : state.panel));
  const pull = useAppState((state) => state.pull);
  useShownTheme(useAppState((state) => state.theme));
  useUndoKeys();
  return (
    <div className="app" data-pull={pull} data-place={place} data-panel={panel}>
      <Head onJobs={() => setJobsOpen(true)} />
      <Strips desk={desk} onJobs={() => setJobsOpen(true)} />
      <DayLine />
      {place === 'sheet' ? <SheetPlace desk={desk} /> : <SketchPlace station={place} desk={desk} />}
      {jobsOpen ? <JobsDialog desk={desk} onClose={() => setJobsOpen(false)} /> : null}
    </div>
  );
}
