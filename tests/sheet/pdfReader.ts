/** A PDF as a reader that had no part in writing it sees it: PDFium, in WebAssembly. */
import { PDFiumLibrary, type PDFiumPage } from '@hyzyla/pdfium';

/** A page painted in grey: 0 black to 255 white, row by row. */
export interface Painted {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

export interface ReadPage {
  /** Points. */
  readonly size: readonly [number, number];
  readonly text: string;
  /** Whether the letters of each text are in the file. */
  readonly embedded: readonly boolean[];
  readonly paint: (dotsPerInch: number) => Promise<Painted>;
}

/** What the reader's wrapper keeps to itself. */
interface Inside {
  readonly module: {
    readonly _FPDFTextObj_GetFont: (object: number) => number;
    readonly _FPDFFont_GetIsEmbedded: (font: number) => number;
  };
  readonly objectIdx: number;
}

let library: Promise<PDFiumLibrary> | undefined;

export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  library ??= PDFiumLibrary.init();
  const document = await (await library).loadDocument(bytes);
  return Array.from({ length: document.getPageCount() }, (_, i) => readPage(document.getPage(i)));
}

function readPage(page: PDFiumPage): ReadPage {
  const { originalWidth, originalHeight } = page.getOriginalSize();
  const embedded = [...page.objects()].flatMap((object) => {
    if (object.type !== 'text') return [];
    const { module, objectIdx } = object as unknown as Inside;
    return [module._FPDFFont_GetIsEmbedded(module._FPDFTextObj_GetFont(objectIdx)) === 1];
  });
  return {
    size: [originalWidth, originalHeight],
    text: page.getText(),
    embedded,
    paint: async (dotsPerInch) => {
      const { data, width, height } = await page.render({
        scale: dotsPerInch / 72,
        render: 'bitmap',
      });
      // Blue, green, red, and how solid: the page is white under all.
      const grey = Uint8Array.from({ length: width * height }, (_, i) =>
        Math.round((data[4 * i]! + data[4 * i + 1]! + data[4 * i + 2]!) / 3),
      );
      return { width, height, grey };
    },
  };
}
