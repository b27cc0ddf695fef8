import { afterEach, expect, test, vi } from 'vitest';
import { localeOf } from '../../src/app/speech.ts';

afterEach(() => vi.unstubAllGlobals());

test.each([
  [['en-GB', 'es'], 'en', 'en-GB'],
  [['es-MX'], 'es', 'es-MX'],
  [['de'], 'en', 'en'],
  // What a system without a language of its own calls itself: dates can't be written in it.
  [['en-US@posix'], 'en', 'en'],
] as const)(
  'dates on a device that speaks %j, in %s, are written as in %s',
  (languages, language, locale) => {
    vi.stubGlobal('navigator', { languages });
    expect(localeOf(language)).toBe(locale);
    expect(() => new Intl.DateTimeFormat(localeOf(language))).not.toThrow();
  },
);
