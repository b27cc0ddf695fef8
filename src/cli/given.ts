import { LANGUAGES, type Language } from '../drawing/words/language.ts';
import { USUAL_TERMS } from '../drawing/words/terms.ts';
import { sheetWords } from '../sheet/words/byLanguage.ts';
import { filled } from '../sheet/words/filled.ts';
import type { Words } from '../sheet/words/words.ts';

/** A wrong use of a command, and why. */
export interface WrongUse {
  readonly is: 'wrong';
  readonly why: string;
}

export function wrong(why: string): WrongUse {
  return { is: 'wrong', why };
}

const USUAL_LANGUAGE: Language = 'en';

/** What a command was given but for its language, and the words of that; which languages there are, if it isn't one. */
export interface Spoken {
  readonly language: Language;
  readonly words: Words;
  readonly rest: readonly string[];
  readonly wrong?: WrongUse;
}

/** The language is read before all else, so that a wrong use is answered in it. */
export function spoken(given: readonly string[]): Spoken {
  const at = given.indexOf('--language');
  const typed = at < 0 ? USUAL_LANGUAGE : (given[at + 1] ?? '');
  const known = LANGUAGES.find((one) => one === typed);
  const language = known ?? USUAL_LANGUAGE;
  const words = sheetWords(language, USUAL_TERMS);
  const rest = at < 0 ? given : [...given.slice(0, at), ...given.slice(at + 2)];
  const languages = LANGUAGES.join(', ');
  return {
    language,
    words,
    rest,
    ...(known ? {} : { wrong: wrong(filled(words.cli.unknownLanguage, { languages, typed })) }),
  };
}

const MOST_SECONDS = 3600;

/** How long the slow searches may take, or why what was typed says nothing of the kind. */
export function secondsOf(typed: string, { cli }: Words): number | WrongUse {
  const seconds = /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : Number.NaN;
  return seconds <= MOST_SECONDS
    ? seconds
    : wrong(filled(cli.searchSeconds, { typed, most: `${MOST_SECONDS}` }));
}
