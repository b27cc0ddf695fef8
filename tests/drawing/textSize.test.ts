import { readFileSync } from 'node:fs';
import PDFDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { CAPITALS, textWidth } from '../../src/drawing/textSize.ts';

const FONTS = 'node_modules/@fontsource/inter/files/inter-latin-';

function painted(text: string, cut: '400' | '600', size: number): number {
  const pdf = new PDFDocument({ autoFirstPage: false, font: null as unknown as string });
  pdf.registerFont('cut', readFileSync(`${FONTS}${cut}-normal.woff`));
  return pdf.font('cut').fontSize(size).widthOfString(text);
}

const TEXTS = [
  '12\'-4 1/2"',
  '0123456789',
  '3760 mm',
  '12.345 m',
  'R 4\'-7 3/16"',
  'Ø 6"',
  '134.5°',
  'Older patio, out of square',
  'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
  'abcdefghijklmnopqrstuvwxyz',
  '!"#$%&()*+,-./:;<=>?@[]^_{|}~',
  'Señor Ávila’s patio — “new”',
];

test.each(TEXTS)('%s takes no more room than was kept for it, and not far less', (text) => {
  for (const cut of ['400', '600'] as const) {
    const height = 3;
    const real = painted(text, cut, height / CAPITALS);
    expect(textWidth(text, height)).toBeGreaterThanOrEqual(real * 0.995);
    expect(textWidth(text, height)).toBeLessThan(real * 1.2);
  }
});
