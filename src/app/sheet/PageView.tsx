import { type CSSProperties, useId, useMemo } from 'react';
import type { SheetPage } from '../../sheet/page.ts';
import { printStyle, writeSvg } from '../../sheet/writeSvg.ts';
import { useWords } from '../SessionContext.ts';

interface PageViewProps {
  readonly page: SheetPage;
  readonly number: number;
  readonly of: number;
}

/** One page, on screen as wide as there is room, on paper at its exact size. */
export function PageView({ page, number, of }: PageViewProps) {
  const words = useWords().app.sheet;
  const id = useId();
  const svg = useMemo(() => writeSvg(page, id), [page, id]);
  const size = {
    '--page-width': `${page.width}mm`,
    '--page-height': `${page.height}mm`,
  } as CSSProperties;
  return (
    <figure className="sheet-page" style={size}>
      {number === 1 ? <style>{printStyle(page)}</style> : null}
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own SVG, in which every text is escaped */}
      <div dangerouslySetInnerHTML={{ __html: svg }} />
      <figcaption>{words.page(number, of)}</figcaption>
    </figure>
  );
}
