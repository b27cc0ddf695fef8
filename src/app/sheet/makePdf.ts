import regularUrl from '@fontsource/inter/files/inter-latin-400-normal.woff?url';
import boldUrl from '@fontsource/inter/files/inter-latin-600-normal.woff?url';
import type { SheetPage } from '../../sheet/page.ts';
import { fontBytes } from './fontBytes.ts';

/** The pages as one PDF. The writer and the typeface come down only now. */
export async function makePdf(
  pages: readonly SheetPage[],
  title: string,
): Promise<Uint8Array<ArrayBuffer>> {
  const [{ paintPdf }, regular, bold] = await Promise.all([
    import('../../sheet/paintPdf.ts'),
    fontBytes(regularUrl),
    fontBytes(boldUrl),
  ]);
  const bytes = await paintPdf(pages, { fonts: { regular, bold }, title, date: new Date() });
  return new Uint8Array(bytes);
}
