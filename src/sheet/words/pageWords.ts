import { drawingWords } from '../../drawing/words/byLanguage.ts';
import type { Language } from '../../drawing/words/language.ts';
import type { TermChoice } from '../../drawing/words/terms.ts';
import { termsEs } from '../../drawing/words/termsEs.ts';
import type { PageWords } from '../sheetOptions.ts';
import { sheetWords } from './byLanguage.ts';
import type { LayoutWords } from './layout.ts';
import { BESIDE, pair } from './pair.ts';

/** What a sheet is written in: one language, or English and Spanish beside each other, for a crew that speaks both. */
export type SheetLanguage = Language | 'both';

/**
 * In both languages every title, heading and name of a page is a pair (“Forms / Cimbra”); sentences, which nobody reads
 * twice, are in Spanish alone, the language of the crew. The plan itself, where room is scarce, keeps the English names;
 * its legend and the sections have the pairs.
 */
export function pageWords(language: SheetLanguage, terms: TermChoice): PageWords {
  if (language !== 'both') {
    return { sheet: sheetWords(language, terms), drawing: drawingWords(language, terms) };
  }
  const first = { sheet: sheetWords('en', terms), drawing: drawingWords('en', terms) };
  const second = { sheet: sheetWords('es', terms), drawing: drawingWords('es', terms) };
  // A measure is written once: its unit reads the same.
  const { areaByLength, loads, weightByArea } = first.sheet;
  const { services } = first.drawing;
  const sheet = paired(first.sheet, second.sheet);
  return {
    sheet: {
      ...sheet,
      areaByLength,
      loads,
      weightByArea,
      layout: {
        ...sheet.layout,
        ...narrow,
        forms: { ...sheet.layout.forms, title: pair('Forms', termsEs(terms).form.One) },
      },
    },
    drawing: {
      ...first.drawing,
      sections: paired(first.drawing.sections, second.drawing.sections),
      services: mapped(services, (service, key) => ({
        ...service,
        carries: pair(service.carries, second.drawing.services[key].carries),
      })),
    },
    sentences: second,
  };
}

/** Where a title block, a legend or a bar leaves no room for two whole sentences. */
const narrow: Partial<LayoutWords> = {
  page: (page, of) => `${page} / ${of}`,
  units: {
    'feet-inches': 'Feet, inches / Pies, pulgadas',
    'decimal-feet': 'Decimal feet / Pies decimales',
    metric: 'mm, m',
  },
  sizes: 'Inside face / Cara de adentro',
  figuresRule: 'Do not scale / No medir en el papel',
  materials: {
    'fresh-concrete': 'New / Nuevo',
    'old-concrete': 'Existing / Existente',
    building: 'Building / Edificio',
    steps: 'Steps / Escalones',
    patch: 'Patch / Parche',
    'no-stake': 'No stakes / Sin estacas',
  },
  checkBar: '2 in (50.8 mm) true / a escala',
  setOut: 'Squaring / Escuadrar',
};

/** Two dictionaries of one shape as one: names side by side, sentences from the second, what is no text from the first. */
function paired<T>(one: T, other: T): T {
  if (typeof one === 'string' && typeof other === 'string') {
    return (isSentence(other) ? other : pair(one, other)) as T;
  }
  if (typeof one === 'function' && typeof other === 'function') {
    // What is a pair already goes into each language by its own half.
    const both = (...given: readonly unknown[]) =>
      paired(one(...given.map((it) => half(it, 0))), other(...given.map((it) => half(it, 1))));
    return both as T;
  }
  if (typeof one !== 'object' || one === null) return one;
  const entries = Object.entries(one).map(([key, value]) => [
    key,
    paired(value, Reflect.get(other as object, key)),
  ]);
  return Object.fromEntries(entries) as T;
}

function isSentence(said: string): boolean {
  return /[.:!?]$/.test(said);
}

function half(given: unknown, at: 0 | 1): unknown {
  return typeof given === 'string' ? (given.split(BESIDE)[at] ?? given) : given;
}

function mapped<K extends string, V>(
  record: Readonly<Record<K, V>>,
  change: (value: V, key: K) => V,
): Readonly<Record<K, V>> {
  const entries = (Object.keys(record) as K[]).map((key) => [key, change(record[key], key)]);
  return Object.fromEntries(entries) as Record<K, V>;
}
