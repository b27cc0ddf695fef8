/**
 * The languages that every dictionary is written in. Each of drawing, sheet, sketch and app has its dictionaries by
 * language in its `words/words.ts`: one more code here, and the compiler names the places that lack it.
 */
export const LANGUAGES = ['en', 'es'] as const;

export type Language = (typeof LANGUAGES)[number];

/** What each language calls itself: who looks for it may not read the language that is shown. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = {
  en: 'English',
  es: 'Español',
};
