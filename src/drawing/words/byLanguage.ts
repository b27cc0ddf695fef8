import { type DrawingWords, en } from './en.ts';
import { es } from './es.ts';
import type { Language } from './language.ts';
import type { TermChoice } from './terms.ts';
import { termsEs } from './termsEs.ts';

const DICTIONARIES: Readonly<Record<Language, (terms: TermChoice) => DrawingWords>> = {
  en: () => en,
  es: (terms) => es(termsEs(terms)),
};

export function drawingWords(language: Language, terms: TermChoice): DrawingWords {
  return DICTIONARIES[language](terms);
}
