import { textWidth } from '../drawing/textSize.ts';

/**
 * Letters that the sheet's typeface has (the Latin cut of it), as first and last code points. Checked against the
 * typeface's own file by a test.
 */
// biome-ignore format: a table
const HAS: readonly (readonly [number, number])[] = [
  [0x20, 0x7e], [0xa0, 0xac], [0xae, 0xff], [0x131, 0x131], [0x152, 0x153], [0x2c6, 0x2c6], [0x2da, 0x2da],
  [0x2dc, 0x2dc], [0x2002, 0x2002], [0x2009, 0x2009], [0x2013, 0x2014], [0x2018, 0x201a], [0x201c, 0x201e],
  [0x2022, 0x2022], [0x2026, 0x2026], [0x2032, 0x2033], [0x2039, 0x203a], [0x2044, 0x2044], [0x20ac, 0x20ac],
  [0x2122, 0x2122], [0x2191, 0x2191], [0x2193, 0x2193], [0x2212, 0x2212],
];

/** Signs that can be said in letters that are there. */
const SAID: Readonly<Record<string, string>> = {
  '≥': '>=',
  '≤': '<=',
  '≈': 'about',
  '→': '->',
  '←': '<-',
  '√': 'sqrt',
  π: 'pi',
  '⌈': 'round up(',
  '⌉': ')',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
  '\u00ad': '',
  '\u200b': '',
};

const MISSING = '?';

export interface Printable {
  readonly text: string;
  /** Whether a letter had to be replaced. */
  readonly lacks: boolean;
}

/** A text in the letters that can be printed: one “?” for each that can't. White space of any kind becomes a space. */
export function printable(text: string): Printable {
  let lacks = false;
  let written = '';
  // Letters made of several code points (accents set apart, families of emoji) count as one.
  for (const letter of lettersOf(text.normalize('NFC').replace(/\s+/gu, ' ').trim())) {
    const said = SAID[letter];
    if (said !== undefined) written += said;
    else if ([...letter].every(isThere)) written += letter;
    else if (/^(?:\p{Cf}|\p{Cc}|\p{M})+$/u.test(letter)) continue;
    else {
      written += MISSING;
      lacks = true;
    }
  }
  return { text: written, lacks };
}

function lettersOf(text: string): readonly string[] {
  const letters: string[] = [];
  let joined = false;
  for (const letter of text) {
    const follows = /\p{M}|[\u{1f3fb}-\u{1f3ff}]|\u200d/u.test(letter);
    if (letters.length > 0 && (follows || joined)) letters[letters.length - 1] += letter;
    else letters.push(letter);
    joined = letter === '\u200d';
  }
  return letters;
}

function isThere(letter: string): boolean {
  const code = letter.codePointAt(0)!;
  return HAS.some(([first, last]) => first <= code && code <= last);
}

/** A text cut to a width, with “…” where it was cut. Widths and heights of capitals in mm. */
export function shortened(text: string, height: number, width: number): string {
  if (textWidth(text, height) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join('')}…`, height) > width) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

/** A text broken into lines of a width: between words, and inside a word that is longer than a line. */
export function wrapped(text: string, height: number, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer, height) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const letter of word) {
      if (line !== '' && textWidth(line + letter, height) > width) {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  lines.push(line);
  return lines;
}
