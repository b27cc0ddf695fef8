import { LANGUAGES, type Language } from '../drawing/words/language.ts';
import { BAG_WORDS, FORM_WORDS, type TermChoice, USUAL_TERMS } from '../drawing/words/terms.ts';
import type { SheetLanguage } from '../sheet/words/pageWords.ts';

/** What is spoken on this device: on the screen, on the sheet, and which words of the trade. No part of a job. */
export interface Speech {
  readonly screen: Language;
  /** null: as on screen. */
  readonly sheet: SheetLanguage | null;
  readonly terms: TermChoice;
}

export const USUAL_SPEECH: Speech = { screen: 'en', sheet: null, terms: USUAL_TERMS };

export const SHEET_LANGUAGES: readonly SheetLanguage[] = [...LANGUAGES, 'both'];

const KEY = 'notchpad-speech';

/** What was chosen last on this device; before any choice, the first of the browser's languages that we speak. */
export function keptSpeech(): Speech {
  const usual = { ...USUAL_SPEECH, screen: languageOf(navigator.languages) };
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    return typeof kept === 'object' && kept !== null ? readSpeech(kept, usual) : usual;
  } catch {
    return usual;
  }
}

export function keepSpeech(speech: Speech): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(speech));
  } catch {
    // Private windows may refuse; the choice then lasts as long as the page.
  }
}

/** What was kept, as far as this version speaks it; what it doesn't is as usual. */
export function readSpeech(kept: object, usual: Speech): Speech {
  const terms: unknown = Reflect.get(kept, 'terms');
  const term = (name: string): unknown =>
    typeof terms === 'object' && terms !== null ? Reflect.get(terms, name) : undefined;
  return {
    screen: LANGUAGES.find((one) => one === Reflect.get(kept, 'screen')) ?? usual.screen,
    sheet: SHEET_LANGUAGES.find((one) => one === Reflect.get(kept, 'sheet')) ?? null,
    terms: {
      form: FORM_WORDS.find((one) => one === term('form')) ?? usual.terms.form,
      bag: BAG_WORDS.find((one) => one === term('bag')) ?? usual.terms.bag,
    },
  };
}

export function languageOf(tags: readonly string[]): Language {
  return tags.map(spokenIn).find((one) => one !== undefined) ?? USUAL_SPEECH.screen;
}

/** How dates are written in a language: as this device's own kind of it writes them, where it has one. */
export function localeOf(language: Language): string {
  return navigator.languages.find((tag) => spokenIn(tag) === language && isTag(tag)) ?? language;
}

/** Some systems name their language in ways that dates can't be written in (`en-US@posix`). */
function isTag(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length > 0;
  } catch {
    return false;
  }
}

function spokenIn(tag: string): Language | undefined {
  return LANGUAGES.find((one) => one === tag.toLowerCase().split('-')[0]);
}
