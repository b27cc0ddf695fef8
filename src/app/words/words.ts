import { en as drawingEn } from '../../drawing/words/en.ts';
import { en as sheetEn } from '../../sheet/words/en.ts';
import { layoutEn } from '../../sheet/words/layout.ts';
import { en as sketchEn } from '../../sketch/words/en.ts';
import { en as appEn } from './en.ts';

const LANGUAGES = {
  en: { app: appEn, sketch: sketchEn, sheet: sheetEn, layout: layoutEn, drawing: drawingEn },
};

export type Language = keyof typeof LANGUAGES;
export type AllWords = (typeof LANGUAGES)['en'];

export function wordsFor(language: Language): AllWords {
  return LANGUAGES[language];
}
