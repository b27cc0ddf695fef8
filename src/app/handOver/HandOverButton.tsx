import { useState } from 'react';
import type { SheetPage } from '../../sheet/page.ts';
import { useWords } from '../SessionContext.ts';
import { HandOverDialog } from './HandOverDialog.tsx';

/** Opens the place where the job is handed over. */
export function HandOverButton({ pages }: { readonly pages: readonly SheetPage[] | null }) {
  const words = useWords().app.handOver;
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="plain" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {words.open}
      </button>
      {open ? <HandOverDialog pages={pages} onClose={() => setOpen(false)} /> : null}
    </>
  );
}
