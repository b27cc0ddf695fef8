import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../src/drawing/textSize.ts';
import { printable, shortened, wrapped } from '../../src/sheet/lettering.ts';
import { fonts } from './made.ts';

/** The letters that a typeface's own file has. */
function lettersIn(file: Uint8Array): ReadonlySet<number> {
  const pdf = new PDFDocument({ autoFirstPage: false, font: null as unknown as string });
  pdf.registerFont('cut', file).font('cut');
  const inside = pdf as unknown as { _font: { font: { characterSet: readonly number[] } } };
  return new Set(inside._font.font.characterSet);
}

describe('letters that can be printed', () => {
  test.each(Object.entries(fonts))('all that pass are in the typeface: %s', (_, file) => {
    const there = lettersIn(file);
    expect(there.size).toBeGreaterThan(150);
    for (let code = 0x20; code < 0x3000; code++) {
      const { text, lacks } = printable(`a${String.fromCodePoint(code)}a`);
      for (const letter of text)
        expect(there, `U+${code.toString(16)}`).toContain(letter.codePointAt(0));
      if (!lacks && text.length === 3 && text[1] !== ' ')
        expect(there).toContain(text.codePointAt(1));
    }
  });

  test.each([
    ['Señora Ávila’s “patio”', 'Señora Ávila’s “patio”', false],
    ['3 ≥ 2 → √9', '3 >= 2 -> sqrt9', false],
    ['庭園', '??', true],
    ['🚧 site', '? site', true],
    // One person at work is one letter, though five code points.
    ['👷‍♀️', '?', true],
    ['رصيف', '????', true],
    ['tab\tand\nline', 'tab and line', false],
    ['   ', '', false],
    // An accent set apart joins its letter.
    ['cafe\u0301', 'café', false],
    ['\u202eevil\u202c', 'evil', false],
  ])('%s', (typed, text, lacks) => {
    expect(printable(typed)).toEqual({ text, lacks });
  });
});

describe('lines', () => {
  test('no line is wider than asked for, and no word is lost', () => {
    const said =
      'Have buried lines marked before you drive a stake, Donaudampfschifffahrtsgesellschaft too.';
    for (const width of [12, 20, 33, 80]) {
      const lines = wrapped(said, 2.5, width);
      for (const line of lines) expect(textWidth(line, 2.5)).toBeLessThanOrEqual(width);
      expect(lines.join('').replaceAll(' ', '')).toBe(said.replaceAll(' ', ''));
    }
  });

  test('a letter wider than the line still stands', () => {
    expect(wrapped('WW', 10, 1)).toEqual(['W', 'W']);
  });

  test('what is cut shows that it was', () => {
    expect(shortened('short', 2.5, 50)).toBe('short');
    const cut = shortened('a name that goes on and on', 2.5, 20);
    expect(cut.endsWith('…')).toBe(true);
    expect(textWidth(cut, 2.5)).toBeLessThanOrEqual(20);
  });
});
