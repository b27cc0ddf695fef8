import { describe, expect, test } from 'vitest';
import { wordsFor } from '../../../src/app/words/words.ts';
import {
  BAG_WORDS,
  FORM_WORDS,
  type TermChoice,
  USUAL_TERMS,
} from '../../../src/drawing/words/terms.ts';
import { printable } from '../../../src/sheet/lettering.ts';
import { pageWords } from '../../../src/sheet/words/pageWords.ts';
import { BESIDE } from '../../../src/sheet/words/pair.ts';

/** What is given to every entry that is a function: whatever of it English says, Spanish says too. */
const GIVEN = ['71', '82', '93', '64'];

/** Entries that take no plain texts. */
const OTHERWISE: Readonly<Record<string, readonly unknown[]>> = {
  '.sketch.stage.snapped': [GIVEN],
  '.app.handOver.link.part': ['notes', '82'],
};

/** Every text of a dictionary by its place in it, those with blanks filled in. */
function textsOf(entry: unknown, place = ''): readonly (readonly [string, string])[] {
  if (typeof entry === 'string') return [[place, entry]];
  if (typeof entry === 'function') {
    return textsOf(entry(...(OTHERWISE[place] ?? GIVEN.slice(0, entry.length))), place);
  }
  if (typeof entry !== 'object' || entry === null) return [];
  return Object.entries(entry).flatMap(([key, value]) => textsOf(value, `${place}.${key}`));
}

function texts(language: 'en' | 'es', terms: TermChoice = USUAL_TERMS) {
  const { app, sketch, sheet, drawing } = wordsFor(language, terms);
  return new Map(textsOf({ app, sketch, sheet, drawing }));
}

const english = texts('en');
const spanish = texts('es');

const CHOICES: readonly TermChoice[] = FORM_WORDS.flatMap((form) =>
  BAG_WORDS.map((bag) => ({ form, bag })),
);

/** Words that both languages write alike. Whatever else reads the same was not translated. */
const SAME: readonly string[] = [
  ...[
    'Notchpad',
    'A',
    'Ø',
    'Gas',
    'GAS',
    'No',
    'Diagonal',
    'diagonal',
    'Total',
    'Error',
    'PDF',
    'SVG',
    'PNG',
    'CSV',
    'Extra',
    'Extras',
    'Base',
  ],
  ...['psi', 'MPa', 'GPa', 'R', 'E', 'S', 'B', 'C', 'X', '!', '±'],
];

/** Text without its figures, signs and units: what is left is to be translated. */
function lettersOf(text: string): string {
  return text
    .replace(/\{\w+\}/g, ' ')
    .replace(/#\d|\d+x?|[×W./°²³·:,()–—%'"“”]/g, ' ')
    .replace(/\b(?:lb|kg|in|ft|mm|m|N|kPa|ksi|L|mL|fl oz|yd|min|h|gal|km|mph|C|F)\b/g, ' ')
    .trim();
}

test('Spanish has every entry of English, and no other', () => {
  expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort());
  expect(spanish.size).toBeGreaterThan(900);
});

test('an empty entry is empty in both, and no other is', () => {
  for (const [place, text] of spanish) {
    expect(text.trim() === '', place).toBe(english.get(place)!.trim() === '');
  }
});

test('what stays to be filled in is the same in both', () => {
  const blanks = (text: string) =>
    [...new Set(text.match(/\{\w+\}|71|82|93|64/g) ?? [])].sort().join(' ');
  for (const [place, text] of spanish) {
    expect(blanks(text), place).toBe(blanks(english.get(place)!));
  }
});

test('nothing reads as in English but the words that both write alike', () => {
  const left = [...spanish].filter(([place, text]) => {
    const letters = lettersOf(text);
    return letters !== '' && text === english.get(place) && !SAME.includes(letters);
  });
  expect(left).toEqual([]);
});

describe('sentences', () => {
  const LEFT_BEHIND =
    /\b(?:the|and|of|with|edge|slab|stake|board|boards|form|forms|mesh|joint|bag|bags|steel|sheet|sketch|corner|corners|length|width|depth|nail|screw|splice|cleat|kicker|screed|wall|steps|patch|block-out|lap|chair|dowel|batch|fixme|tbd|lorem)\b/i;

  /** What is quoted as it is: options of the command line, titles of publications, the pair of terms. */
  const QUOTED =
    /--[\w-]+|npm run \w+|\w+(?:,[\w-]+)+|Farmers’ Bulletin 1279, Plain Concrete for Farm Use|Engineering Aid|Concrete Construction: Methods and Costs|FORM \/|JSON Schema/g;

  test('keep no English word of the trade, and nothing that stands in for a word', () => {
    for (const [place, text] of spanish) {
      const own = text.replace(QUOTED, '').replace(/\{\w+\}/g, '');
      expect(own, place).not.toMatch(LEFT_BEHIND);
      expect(own, place).not.toMatch(/\?\?|\bxx+\b|\bTODO\b/);
    }
  });

  test('open what they close: ¿? and ¡!', () => {
    for (const [place, text] of spanish) {
      const own = text.replace(/“\?”| !$/, '');
      expect(own.split('¿').length, place).toBe(own.split('?').length);
      expect(own.split('¡').length, place).toBe(own.split('!').length);
    }
  });

  test('have their accents', () => {
    const BARE =
      /(?<!\p{L})(?:\w+[cs]ion|pagina|numero|angulo|diametro|area|practicas?|linea|lineas|calculo|maximo|maxima|minimo|rapido|ultimo|ultima|mas|facil|tambien|detras|pestana|tamano|pequeno|metrico|rectangulo|codigo|podra|sera|silice|musica|galon|aqui|ahi|asi|despues|segun|electrica|epoxico|perimetro|formula|arbol)(?!\p{L})/iu;
    for (const [place, text] of spanish) {
      // A place in the sentence is no word of it.
      expect(text.replace(/\{\w+\}/g, ''), place).not.toMatch(BARE);
    }
  });

  test('write lengths as the tape has them: no decimal comma', () => {
    for (const [place, text] of spanish) expect(text, place).not.toMatch(/\d,\d(?!\d\d)/);
  });

  test('are printed in the letters that the sheet has, wherever the English are', () => {
    for (const [place, text] of spanish) {
      if (printable(english.get(place)!).lacks) continue;
      expect(printable(text).lacks, `${place}: ${text}`).toBe(false);
    }
  });
});

describe('the words that crews choose between', () => {
  test.each(CHOICES)('$form and $bag stand everywhere, and no other', (terms) => {
    const others = [...FORM_WORDS, ...BAG_WORDS].filter(
      (word) => word !== terms.form && word !== terms.bag,
    );
    // “Forma” is said of nothing else here.
    const other = new RegExp(`\\b(?:${others.join('|')})s?\\b`, 'i');
    for (const [place, text] of texts('es', terms)) expect(text, place).not.toMatch(other);
  });

  test('the articles and endings beside them agree', () => {
    const feminine =
      /\b(?:el|los|un|del|al|estos|esos|unos|todos los|muchos) (?:funda|forma|cimbra)/i;
    const masculine = /\b(?:la|las|una|estas|esas|unas) (?:bulto|saco)/i;
    const endings = /\bfundas (?:\w+os)\b|\b(?:bultos|sacos) (?:enteras|incompletas|chicas)\b/i;
    for (const terms of CHOICES) {
      for (const [place, text] of texts('es', terms)) {
        expect(text, place).not.toMatch(feminine);
        expect(text, place).not.toMatch(masculine);
        expect(text.replace(/fundas como/g, ''), place).not.toMatch(endings);
      }
    }
    const funda = texts('es', { form: 'forma', bag: 'funda' });
    expect(funda.get('.sheet.figures.open-rounding')).toBe('Queda en fundas abiertas');
    expect(spanish.get('.sheet.figures.open-rounding')).toBe('Queda en bultos abiertos');
  });
});

describe('a sheet in both languages', () => {
  const both = pageWords('both', USUAL_TERMS);
  const one = pageWords('en', USUAL_TERMS);
  test('has the terms in pairs, what reads the same once', () => {
    expect(both.sheet.stations.forms).toBe('Forms / Cimbra');
    expect(both.sheet.layout.keyWhat.diagonal).toBe('Diagonal');
    expect(both.sheet.layout.keyMore(2)).toBe(
      '2 more on the next pages / 2 más en las páginas siguientes',
    );
    const mesh = both.drawing.sections.mesh('W1.4');
    expect(both.drawing.sections.steelHeld(mesh, 'chairs')).toBe(
      'Mesh W1.4, on chairs / Malla W1.4, sobre silletas',
    );
    // The title block has no room for two.
    expect(both.sheet.layout.page(1, 3)).toBe('1 / 3');
    expect(both.drawing.services.gas.carries).toBe('Gas');
    expect(both.drawing.services.water.carries).toBe('Water / Agua');
  });
  test('can be parted again: no entry has in it what stands between the two', () => {
    for (const [place, text] of [...english, ...spanish]) {
      if (place.startsWith('.app.')) continue;
      expect(text, place).not.toContain(BESIDE);
    }
  });
  test('counts, measures and the names on the plan stay as they are', () => {
    expect(both.sheet.isOne(1)).toBe(true);
    expect(both.sheet.weightByArea).toBe(one.sheet.weightByArea);
    expect(both.drawing.kinds).toBe(one.drawing.kinds);
  });
});
