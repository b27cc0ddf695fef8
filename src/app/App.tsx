import { useEffect, useRef, useState } from 'react';
import { Head } from './Head.tsx';
import type { Desk } from './jobs/desk.ts';
import { JobsDialog } from './jobs/JobsDialog.tsx';
import { useShownTheme } from './look/theme.ts';
import { DayLine } from './places/DayLine.tsx';
import { isStation } from './places/places.ts';
import { SheetPlace } from './places/SheetPlace.tsx';
import { SketchPlace } from './places/SketchPlace.tsx';
import { PourDayPlace } from './pourDay/PourDayPlace.tsx';
import { useAppState } from './SessionContext.ts';
import { Strips } from './Strips.tsx';
import { useUndoKeys } from './undoKeys.ts';

/** The whole screen: name and state above, the day's stations, and one of its places at work. */
export function App({ desk }: { readonly desk: Desk }) {
  const [jobsOpen, setJobsOpen] = useState(desk.board.get().refused !== null);
  const place = useAppState((state) => state.place);
  const panel = useAppState((state) => (isStation(state.place) ? state.panel : 'ticket'));
  const pull = useAppState((state) => state.pull);
  useShownTheme(useAppState((state) => state.theme));
  const language = useAppState((state) => state.speech.screen);
  useEffect(() => {
    document.documentElement.lang = language;
  }, [language]);
  useUndoKeys();
  const jobsButton = useRef<HTMLButtonElement>(null);
  function openJobs() {
    // The focus comes back to where the dialog was opened from, and the word of welcome may be gone by then.
    jobsButton.current?.focus();
    setJobsOpen(true);
  }
  return (
    <div className="app" data-pull={pull} data-place={place} data-panel={panel}>
      <Head jobsButton={jobsButton} onJobs={openJobs} />
      <Strips desk={desk} onJobs={openJobs} />
      <DayLine />
      {place === 'sheet' ? <SheetPlace desk={desk} /> : null}
      {place === 'pour-day' ? <PourDayPlace desk={desk} /> : null}
      {isStation(place) ? <SketchPlace station={place} desk={desk} /> : null}
      {jobsOpen ? <JobsDialog desk={desk} onClose={() => setJobsOpen(false)} /> : null}
    </div>
  );
}
