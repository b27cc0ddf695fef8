import { useMemo, useState } from 'react';
import { isSmallPad } from '../../sheet/pages/onePage.ts';
import { useJobCode } from '../handOver/useJobCode.ts';
import type { Desk } from '../jobs/desk.ts';
import { useAppState, useLiveTakeoff, useWords } from '../SessionContext.ts';
import { keepChoice, keptChoice, type SheetChoice } from '../sheet/choice.ts';
import { layOut } from '../sheet/layOut.ts';
import { PageView } from '../sheet/PageView.tsx';
import { SheetBelt } from '../sheet/SheetBelt.tsx';
import { SheetOptions } from '../sheet/SheetOptions.tsx';
import { Guard } from '../Trouble.tsx';
import { Side } from './Side.tsx';

/** The crew sheet as it will come out of the printer, and what it is printed on. */
export function SheetPlace({ desk }: { readonly desk: Desk }) {
  const words = useWords();
  const jobId = useAppState((state) => state.jobId);
  const units = useAppState((state) => state.history.now.job.units);
  const setOut = useAppState((state) => state.settingOut.choice);
  const speech = useAppState((state) => state.speech);
  const written = speech.sheet ?? speech.screen;
  const live = useLiveTakeoff();
  const [choice, setChoice] = useState<SheetChoice>(() => keptChoice(units));
  const guardOf = `${jobId} sheet`;
  // A sheet is only made of figures that are true of the job.
  const job = live.standing === 'current' ? live.of : null;
  const code = useJobCode(choice.pages.includes('code') ? job : null);
  const laid = useMemo(
    () =>
      job && code !== 'making' ? layOut(job, live.takeoff, choice, setOut, speech, code) : null,
    [job, live.takeoff, choice, setOut, speech, code],
  );

  function choose(next: SheetChoice) {
    keepChoice(next);
    setChoice(next);
  }

  return (
    <>
      <main className="site">
        <Guard of={guardOf} onExport={desk.exportOpen}>
          <section
            className="sheet-view"
            aria-label={words.app.sheet.title}
            lang={written === 'both' ? undefined : written}
            // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region is reached by keyboard
            tabIndex={0}
          >
            {laid === null ? <p role="status">{words.app.sheet.wait}</p> : null}
            {laid && 'failed' in laid ? (
              <p className="note" data-weight="stop" role="alert">
                {words.app.sheet.failed} {laid.failed}
              </p>
            ) : null}
            {laid && 'pages' in laid
              ? laid.pages.map((page, index) => (
                  <PageView
                    key={page.title}
                    page={page}
                    number={index + 1}
                    of={laid.pages.length}
                  />
                ))
              : null}
          </section>
        </Guard>
      </main>
      <SheetBelt pages={laid && 'pages' in laid ? laid.pages : null} />
      <Side
        content={{
          ticket: () => (
            <SheetOptions
              choice={choice}
              units={units}
              small={isSmallPad(live.takeoff)}
              onChoice={choose}
            />
          ),
          practices: () => null,
          corners: () => null,
        }}
      />
    </>
  );
}
