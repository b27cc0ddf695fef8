import { useState } from 'react';
import type { SheetPage } from '../../sheet/page.ts';
import { fileNameOf } from '../../storage/files.ts';
import { HandOverButton } from '../handOver/HandOverButton.tsx';
import { download } from '../jobs/download.ts';
import { useAppState, useWords } from '../SessionContext.ts';
import { makePdf } from './makePdf.ts';

/** On paper, or as a file: where the tools hang at the other stations. */
export function SheetBelt({ pages }: { readonly pages: readonly SheetPage[] | null }) {
  const words = useWords().app.sheet;
  const job = useAppState((state) => state.history.now.job);
  const [making, setMaking] = useState(false);
  const [failed, setFailed] = useState<string | null>(null);

  async function save() {
    if (!pages) return;
    setMaking(true);
    setFailed(null);
    try {
      const bytes = await makePdf(pages, job.name);
      download(fileNameOf(job, 'pdf'), bytes, 'application/pdf');
    } catch (error) {
      setFailed(error instanceof Error ? error.message : String(error));
    } finally {
      setMaking(false);
    }
  }

  return (
    <section className="belt sheet-belt" aria-label={words.out}>
      <div role="alert">
        {failed === null ? null : <p className="field-error">{words.pdfFailed(failed)}</p>}
      </div>
      <button
        type="button"
        className="main-button"
        disabled={!pages}
        onClick={() => window.print()}
      >
        {words.print}
      </button>
      <button type="button" className="plain" disabled={!pages || making} onClick={save}>
        {making ? words.making : words.pdf}
      </button>
      <HandOverButton pages={pages} />
    </section>
  );
}
