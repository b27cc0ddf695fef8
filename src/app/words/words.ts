import { drawingWords } from '../../drawing/words/byLanguage.ts';
import type { DrawingWords } from '../../drawing/words/en.ts';
import type { Language } from '../../drawing/words/language.ts';
import type { TermChoice } from '../../drawing/words/terms.ts';
import { termsEs } from '../../drawing/words/termsEs.ts';
import { sheetWords } from '../../sheet/words/byLanguage.ts';
import type { Words } from '../../sheet/words/words.ts';
import { sketchWords } from '../../sketch/words/byLanguage.ts';
import type { SketchWords } from '../../sketch/words/en.ts';
import { type AppWords, en } from './en.ts';
import { es } from './es.ts';

/** The dictionaries of every room, in one language. */
export interface AllWords {
  readonly language: Language;
  readonly app: AppWords;
  readonly sketch: SketchWords;
  readonly sheet: Words;
  readonly drawing: DrawingWords;
}

const DICTIONARIES: Readonly<Record<Language, (terms: TermChoice) => AppWords>> = {
  en: () => en,
  es: (terms) => es(termsEs(terms)),
};

/** A dictionary is made once, so that what is drawn with it isn't drawn again for nothing. */
const made = new Map<string, AllWords>();

export function wordsFor(language: Language, terms: TermChoice): AllWords {
  const called = [language, terms.form, terms.bag].join(' ');
  const before = made.get(called);
  if (before) return before;
  const words = {
    language,
    app: DICTIONARIES[language](terms),
    sketch: sketchWords(language, terms),
    sheet: sheetWords(language, terms),
    drawing: drawingWords(language, terms),
  };
  made.set(called, words);
  return words;
}
