import { useId, useMemo } from 'react';
import { costPage } from '../../sheet/pages/costPlot.ts';
import { writeSvg } from '../../sheet/writeSvg.ts';
import type { Comparison } from '../../takeoff/order/orderResult.ts';
import { useAppState, useWords } from '../SessionContext.ts';
import { shownJob } from '../state.ts';

/** Wide enough that its letters are read on a phone, mm. */
const WIDTH_MM = 92;

/** Bags and truck over volume, with this job's volume marked. */
export function CostPart({ compare }: { readonly compare: Comparison }) {
  const words = useWords();
  const id = useId();
  const job = useAppState(shownJob);
  const svg = useMemo(
    () => writeSvg(costPage(job, compare, WIDTH_MM, words.sheet), id),
    [job, compare, words, id],
  );
  return (
    <section className="slip under-slip" aria-label={words.sheet.layout.order.plot}>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own SVG, in which every text is escaped */}
      <div className="section-drawing cost-plot" dangerouslySetInnerHTML={{ __html: svg }} />
    </section>
  );
}
