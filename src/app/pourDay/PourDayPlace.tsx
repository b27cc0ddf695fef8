import { useState } from 'react';
import type { Desk } from '../jobs/desk.ts';
import { RefusalNote } from '../RefusalNote.tsx';
import { useAppState, useWords } from '../SessionContext.ts';
import { Guard } from '../Trouble.tsx';
import { AfterPart } from './AfterPart.tsx';
import { BeforePart } from './BeforePart.tsx';
import { PourPart } from './PourPart.tsx';
import { useAwake } from './useAwake.ts';
import { usePour } from './usePour.ts';

type Part = 'before' | 'pour' | 'after';

const PARTS: readonly Part[] = ['before', 'pour', 'after'];

/** The day of the pour: what to look at first, the count while it goes, and what it took. */
export function PourDayPlace({ desk }: { readonly desk: Desk }) {
  const jobId = useAppState((state) => state.jobId);
  return (
    <main className="pour-day">
      <Guard of={`${jobId} pour-day`} onExport={desk.exportOpen}>
        <PourDayParts key={jobId} desk={desk} />
      </Guard>
      <RefusalNote />
    </main>
  );
}

function PourDayParts({ desk }: { readonly desk: Desk }) {
  const words = useWords().app.pourDay;
  const pour = usePour();
  const { job, log } = pour;
  // A reload, or a phone that was locked, comes back to where the pour stands.
  const standing: Part = job.closeOut ? 'after' : log.entries.length > 0 ? 'pour' : 'before';
  const [part, setPart] = useState<Part>(standing);
  const { awake, ask } = useAwake(part === 'pour');

  return (
    <>
      <fieldset className="pour-parts" aria-label={words.parts.label}>
        {PARTS.map((one) => (
          <button key={one} type="button" aria-pressed={one === part} onClick={() => setPart(one)}>
            {words.parts[one]}
          </button>
        ))}
      </fieldset>
      {part === 'before' ? <BeforePart pour={pour} onPour={() => setPart('pour')} /> : null}
      {part === 'pour' ? <PourPart pour={pour} awake={awake} onAwake={ask} /> : null}
      {part === 'after' ? <AfterPart pour={pour} desk={desk} /> : null}
    </>
  );
}
