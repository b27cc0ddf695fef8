import regularUrl from '@fontsource/inter/files/inter-latin-400-normal.woff?url';
import boldUrl from '@fontsource/inter/files/inter-latin-600-normal.woff?url';
import type { SheetPage } from '../../sheet/page.ts';
import { fontBytes } from '../sheet/fontBytes.ts';

/** Dots to the mm: 300 to the inch, what a printer shows. */
const DOTS = 300 / 25.4;
/** No side longer than this: some phones paint no larger picture. */
const MOST_DOTS = 4_096;

/** An SVG of a page as a picture. The typeface goes along inside it: a picture takes none from the page. */
export async function paintPng(
  svg: string,
  { width, height }: Pick<SheetPage, 'width' | 'height'>,
): Promise<Blob> {
  const [regular, bold] = await Promise.all([fontBytes(regularUrl), fontBytes(boldUrl)]);
  const faces = `<style>${face(regular, 400)}${face(bold, 600)}</style>`;
  const withFaces = svg.replace(/^<svg[^>]*>/, (head) => head + faces);
  const url = URL.createObjectURL(new Blob([withFaces], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const dots = Math.min(DOTS, MOST_DOTS / width, MOST_DOTS / height);
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width * dots);
    canvas.height = Math.round(height * dots);
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('2d');
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('png'))), 'image/png');
    });
  } finally {
    URL.revokeObjectURL(url);
  }
}

function face(bytes: Uint8Array, weight: number): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return `@font-face{font-family:Inter;font-weight:${weight};src:url(data:font/woff;base64,${btoa(text)})}`;
}
