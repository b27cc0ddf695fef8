import type { SheetPage } from './page.ts';
import { paintPage } from './paint/paintPage.ts';
import type { Letters, Pen, Step } from './paint/pen.ts';
import { unpackedFont } from './paint/unpackedFont.ts';

/** The bytes of the typeface, regular and semibold (WOFF or TrueType), embedded as far as it is used. */
export interface SheetFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export interface PdfOptions {
  readonly fonts: SheetFonts;
  readonly title: string;
  /** When it was made, for the file's own record. */
  readonly date: Date;
  /** False to keep the page's drawing readable in the file, for measuring it. */
  readonly compress?: boolean;
}

/** Points in one mm. */
const POINT = 72 / 25.4;

type Pdf = PDFKit.PDFDocument;

/** Pages as one PDF, true to scale, with text that can be selected. The writer is loaded only when it is wanted. */
export async function paintPdf(
  pages: readonly SheetPage[],
  { fonts, title, date, compress = true }: PdfOptions,
): Promise<Uint8Array> {
  const { default: PDFDocument } = await import('pdfkit');
  const pdf = new PDFDocument({
    autoFirstPage: false,
    // No built-in typeface: every letter is in the file.
    font: null as unknown as string,
    compress,
    info: { Title: title, CreationDate: date },
    displayTitle: true,
  });
  const whole = collected(pdf);
  for (const cut of ['regular', 'bold'] as const) {
    pdf.registerFont(cut, unpackedFont(fonts[cut]));
    layOutWords(pdf.font(cut));
  }
  for (const page of pages) {
    pdf.addPage({ size: [page.width * POINT, page.height * POINT], margin: 0 });
    pdf.scale(POINT, POINT);
    pdf.lineJoin('round');
    paintPage(pdfPen(pdf), page);
  }
  pdf.end();
  return whole;
}

function collected(pdf: Pdf): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('error', reject);
    pdf.on('end', () => {
      const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
      let at = 0;
      for (const chunk of chunks) {
        whole.set(chunk, at);
        at += chunk.length;
      }
      resolve(whole);
    });
  });
}

/** A pen for a PDF whose unit was made 1 mm. */
function pdfPen(pdf: Pdf): Pen {
  const trace = (steps: readonly Step[]): void => {
    for (const step of steps) {
      switch (step.go) {
        case 'move':
          pdf.moveTo(step.to.x, step.to.y);
          break;
        case 'line':
          pdf.lineTo(step.to.x, step.to.y);
          break;
        case 'curve':
          pdf.bezierCurveTo(step.one.x, step.one.y, step.two.x, step.two.y, step.to.x, step.to.y);
          break;
        case 'close':
          pdf.closePath();
          break;
        default:
          step satisfies never;
      }
    }
  };
  return {
    fill: (path, colour) => {
      trace(path);
      pdf.fill(colour, 'even-odd');
    },
    stroke: (path, { width, dash, colour }) => {
      pdf.lineWidth(width);
      // The writer takes a whole pattern; its types know of a single length alone.
      if (dash.length > 0) pdf.dash(dash as unknown as number, {});
      else pdf.undash();
      trace(path);
      pdf.stroke(colour);
    },
    letters: (letters) => writeLetters(pdf, letters),
    within: (path, draw) => {
      pdf.save();
      trace(path);
      pdf.clip('even-odd');
      draw();
      pdf.restore();
    },
  };
}

/** Without it the typeface makes “2×4” of “2x4”, and who looks for the one doesn't find the other. */
const FEATURES = { calt: false };

/** What the writer keeps to itself: how it lays out the letters of one word. */
interface Inside {
  readonly _font: { layoutRun: (word: string, features?: typeof FEATURES) => unknown };
}

/**
 * Has the writer keep the words that it laid out in the typeface in use: told of the features with every text, it would
 * lay out each text three times and keep none.
 */
function layOutWords(pdf: Pdf): void {
  const { _font: font } = pdf as unknown as Inside;
  const layoutRun = font.layoutRun.bind(font);
  font.layoutRun = (word) => layoutRun(word, FEATURES);
}

function writeLetters(pdf: Pdf, { text, at, size, angle, anchor, bold, colour }: Letters): void {
  pdf.save();
  pdf.translate(at.x, at.y);
  pdf.rotate((-angle * 180) / Math.PI);
  pdf.font(bold ? 'bold' : 'regular').fontSize(size);
  const width = anchor === 'start' ? 0 : pdf.widthOfString(text);
  const x = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  pdf.fillColor(colour);
  pdf.text(text, x, 0, { lineBreak: false, baseline: 'alphabetic' });
  pdf.restore();
}
