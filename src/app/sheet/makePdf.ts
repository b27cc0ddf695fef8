import regularUrl from '@fontsource/inter/files/inter-latin-400-normal.woff?url';
import boldUrl from '@fontsource/inter/files/inter-latin-600-normal.woff?url';
import type { SheetPage } from '../../sheet/page.ts';

/** The pages as one PDF. The writer and the typeface come down only now. */
export async function makePdf(
  pages: readonly SheetPage[],
  title: string,
): Promise<Uint8Array<ArrayBuffer>> {
  const [{ paintPdf }, regular, bold] = await Promise.all([
    import('../../sheet/paintPdf.ts'),
    bytesOf(regularUrl),
    bytesOf(boldUrl),
  ]);
  const bytes = await paintPdf(pages, { fonts: { regular, bold }, title, date: new Date() });
  return new Uint8Array(bytes);
}

async function bytesOf(url: string): Promise<Uint8Array> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return new Uint8Array(await response.arrayBuffer());
}
