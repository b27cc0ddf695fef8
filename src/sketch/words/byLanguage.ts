import type { Language } from '../../drawing/words/language.ts';
import type { TermChoice } from '../../drawing/words/terms.ts';
import { termsEs } from '../../drawing/words/termsEs.ts';
import { en, type SketchWords } from './en.ts';
import { es } from './es.ts';

const DICTIONARIES: Readonly<Record<Language, (terms: TermChoice) => SketchWords>> = {
  en: () => en,
  es: (terms) => es(termsEs(terms)),
};

export function sketchWords(language: Language, terms: TermChoice): SketchWords {
  return DICTIONARIES[language](terms);
}
