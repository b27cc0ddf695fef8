import { useId, useMemo } from 'react';
import { oneTimeline } from '../../sheet/pages/oneTimeline.ts';
import { writeSvg } from '../../sheet/writeSvg.ts';
import { useLiveTakeoff, useWords } from '../SessionContext.ts';

/** Width that the day is laid out for, mm: its letters are then read on a phone. */
const WIDTH_MM = 96;

/** How the pour goes, drawn: batches, strips and passes over the day. */
export function TimelinePart() {
  const { drawing, sheet } = useWords();
  const id = useId();
  const { placing } = useLiveTakeoff().takeoff;
  const svg = useMemo(
    () => (placing ? writeSvg(oneTimeline(placing, WIDTH_MM, { drawing, sheet }), id) : null),
    [placing, drawing, sheet, id],
  );
  if (svg === null) return null;
  return (
    <section className="sections" aria-label={sheet.layout.howItGoes}>
      <h3 className="slip-role">{sheet.layout.howItGoes}</h3>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own SVG, in which every text is escaped */}
      <div className="section-drawing" dangerouslySetInnerHTML={{ __html: svg }} />
    </section>
  );
}
