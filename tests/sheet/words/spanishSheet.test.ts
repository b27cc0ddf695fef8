import { expect, test } from 'vitest';
import { USUAL_TERMS } from '../../../src/drawing/words/terms.ts';
import { demoJob } from '../../../src/job/demo.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { pageWords, type SheetLanguage } from '../../../src/sheet/words/pageWords.ts';
import { pdfOf, sheetOf } from '../made.ts';
import { writtenIn } from '../readPdfText.ts';

async function pdfText(language: SheetLanguage): Promise<string> {
  return writtenIn(await pdfOf(sheetOf(demoJob(), { words: pageWords(language, USUAL_TERMS) })));
}

// Made once: it is the slow part.
const inSpanish = pdfText('es');

test('a sheet in Spanish has its words, accents and all, and lengths as the tape has them', async () => {
  const written = await inSpanish;
  for (const words of ['Orillas del colado', 'Lista de materiales', 'Página 1 de ']) {
    expect(written).toContain(words);
  }
  expect(written).toMatch(/Área neta\n/);
  expect(written).toMatch(/^Cimbra y estacas$/m);
  // The sample's own shape; the side is so long in every language.
  expect(written).toMatch(/^8'-0 1\/2"$/m);
  expect(written).not.toMatch(/\d,\d(?!\d\d)/);
});

test('nothing of it is left in English but what the user wrote', async () => {
  const written = new Set((await inSpanish).split('\n'));
  const { layout } = en;
  const english = [
    ...Object.values(en.figures),
    ...Object.values(en.tables),
    ...Object.values(en.columns),
    ...Object.values(en.weights),
    ...Object.values(layout.edgeKinds),
    ...Object.values(layout.materials),
    ...[layout.strip, layout.ground, layout.buried, layout.setOut, layout.materialList],
  ];
  expect(english.filter((words) => written.has(words))).toEqual([]);
});

test('a sheet in both has each term beside the other, and legends by rows', async () => {
  const written = await pdfText('both');
  expect(written).toContain('Forms / Cimbra');
  expect(written).toContain('Material list / Lista de materiales');
  expect(written).toContain('Free edge: form\nOrilla libre: cimbra');
});
