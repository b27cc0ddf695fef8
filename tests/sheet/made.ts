import { readFileSync } from 'node:fs';
import { en as drawing } from '../../src/drawing/words/en.ts';
import type { Job } from '../../src/job/job.ts';
import { layoutSheet } from '../../src/sheet/layoutSheet.ts';
import type { SheetPage } from '../../src/sheet/page.ts';
import { paintPdf } from '../../src/sheet/paintPdf.ts';
import type { SheetOptions } from '../../src/sheet/sheetOptions.ts';
import { en as sheet } from '../../src/sheet/words/en.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';

const FONTS = 'node_modules/@fontsource/inter/files/inter-latin-';

export const fonts = {
  regular: readFileSync(`${FONTS}400-normal.woff`),
  bold: readFileSync(`${FONTS}600-normal.woff`),
};

export const words = { drawing, sheet };

export function sheetOf(job: Job, more: Partial<SheetOptions> = {}): readonly SheetPage[] {
  return layoutSheet(job, takeoff(job), { paper: 'letter', words, ...more });
}

export async function pdfOf(pages: readonly SheetPage[]): Promise<string> {
  const bytes = await paintPdf(pages, {
    fonts,
    title: 'A test',
    date: new Date(0),
    compress: false,
  });
  return Buffer.from(bytes).toString('latin1');
}

/** All that is written on the pages, one text a line. */
export function writtenOn(pages: readonly SheetPage[]): string {
  return pages
    .flatMap(({ parts }) => parts.flatMap(({ marks }) => marks))
    .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
    .join('\n');
}
