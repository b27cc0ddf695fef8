import { LANGUAGES, type Language } from '../drawing/words/language.ts';
import { USUAL_TERMS } from '../drawing/words/terms.ts';
import { sheetWords } from '../sheet/words/byLanguage.ts';
import { filled } from '../sheet/words/say.ts';
import type { Words } from '../sheet/words/words.ts';

/** What the command for the takeoff was given, and the words to answer in. */
export interface TakeoffGiven {
  readonly words: Words;
  readonly asks: TakeoffAsked;
}

type TakeoffAsked =
  | { readonly is: 'help' }
  | { readonly is: 'wrong'; readonly why: string }
  | {
      readonly is: 'job';
      /** `-` is standard input. */
      readonly file: string;
      readonly text: boolean;
      readonly workings: boolean;
      /** How long the slow searches may take in all; 0 leaves it at first answers. */
      readonly seconds: number;
      /** The folder that the tables go to. */
      readonly csv?: string;
      /** The address of the app that a link to the job should open. */
      readonly link?: string;
    };

const MOST_SECONDS = 3600;
const USUAL_LANGUAGE: Language = 'en';

/** The language is read before all else, so that a wrong use is answered in it. */
export function readTakeoffGiven(given: readonly string[]): TakeoffGiven {
  const at = given.indexOf('--language');
  const typed = at < 0 ? USUAL_LANGUAGE : (given[at + 1] ?? '');
  const language = LANGUAGES.find((one) => one === typed);
  const words = sheetWords(language ?? USUAL_LANGUAGE, USUAL_TERMS);
  if (language === undefined) {
    const languages = LANGUAGES.join(', ');
    return { words, asks: wrong(filled(words.cli.unknownLanguage, { languages, typed })) };
  }
  const rest = at < 0 ? given : [...given.slice(0, at), ...given.slice(at + 2)];
  return { words, asks: readAsked(rest, words) };
}

function readAsked(given: readonly string[], { cli }: Words): TakeoffAsked {
  if (given.includes('--help')) return { is: 'help' };
  const files: string[] = [];
  let text = false;
  let workings = false;
  // Unasked, the same job gives the same answer on a slow machine as on a quick one.
  let seconds = 0;
  let csv: string | undefined;
  let link: string | undefined;
  for (let at = 0; at < given.length; at += 1) {
    const one = given[at]!;
    if (one === '--text') text = true;
    else if (one === '--workings') workings = true;
    else if (one === '--search') {
      at += 1;
      const typed = given[at] ?? '';
      seconds = /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : Number.NaN;
      if (!(seconds <= MOST_SECONDS)) {
        return wrong(filled(cli.searchSeconds, { typed, most: `${MOST_SECONDS}` }));
      }
    } else if (one === '--csv') {
      at += 1;
      csv = given[at] ?? '';
      if (csv === '' || csv.startsWith('-')) return wrong(cli.csvFolder);
    } else if (one === '--link') {
      at += 1;
      link = given[at] ?? '';
      if (!isWebAddress(link)) return wrong(filled(cli.linkAddress, { typed: link }));
    } else if (one.startsWith('-') && one !== '-') {
      return wrong(filled(cli.unknownOption, { option: one }));
    } else files.push(one);
  }
  const [file, ...more] = files;
  if (file === undefined || more.length > 0) return wrong(cli.oneFile);
  return {
    is: 'job',
    file,
    text,
    workings,
    seconds,
    ...(csv === undefined ? {} : { csv }),
    ...(link === undefined ? {} : { link }),
  };
}

function isWebAddress(typed: string): boolean {
  return /^https?:/i.test(typed) && URL.canParse(typed);
}

function wrong(why: string): TakeoffAsked {
  return { is: 'wrong', why };
}
