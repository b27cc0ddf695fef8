import type { Language } from '../../drawing/words/language.ts';
import type { TermChoice } from '../../drawing/words/terms.ts';
import { termsEs } from '../../drawing/words/termsEs.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import type { Words } from './words.ts';

const DICTIONARIES: Readonly<Record<Language, (terms: TermChoice) => Words>> = {
  en: () => en,
  es: (terms) => es(termsEs(terms)),
};

export function sheetWords(language: Language, terms: TermChoice): Words {
  return DICTIONARIES[language](terms);
}
