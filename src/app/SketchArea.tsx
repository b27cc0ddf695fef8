import { sayProblem } from '../sheet/words/say.ts';
import { SketchStage } from '../sketch/SketchStage.tsx';
import type { Station } from '../takeoff/figure.ts';
import { useLayout } from './layout/useLayout.ts';
import { useShownTheme } from './look/theme.ts';
import { RefusalNote } from './RefusalNote.tsx';
import { useAppState, useLiveTakeoff, useSession, useWords } from './SessionContext.ts';
import { shownJob } from './state.ts';

/** The one sketch, with the layer of the station that is open. */
export function SketchArea({ station }: { readonly station: Station }) {
  const words = useWords();
  const session = useSession();
  const state = useAppState((all) => all);
  const live = useLiveTakeoff();
  const theme = useShownTheme(state.theme);
  const job = shownJob(state);
  const setOut = useLayout();
  return (
    <section className="sketch" aria-label={words.app.sketch.label}>
      <SketchStage
        key={state.jobId}
        job={job}
        takeoff={live.takeoff}
        layout={station === 'forms' ? (setOut?.layout ?? null) : null}
        figuring={live.standing === 'behind'}
        station={station}
        tool={state.tool}
        selection={state.selection}
        view={state.view}
        theme={theme}
        words={words.sketch}
        sayProblem={(problem) => sayProblem(words.sheet, problem)}
        onView={session.look}
        onSelect={session.select}
        onTool={session.use}
        onPreview={session.preview}
        onCommit={session.commit}
        onRefusal={session.refuse}
      />
      {job.features.length === 0 && state.tool === 'pick' ? (
        <p className="sketch-empty">{words.app.sketch.empty}</p>
      ) : null}
      <RefusalNote />
    </section>
  );
}
