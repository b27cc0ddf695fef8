import { filled } from '../sheet/words/filled.ts';
import type { Words } from '../sheet/words/words.ts';
import { secondsOf, spoken, type WrongUse, wrong } from './given.ts';

/** What the command for the takeoff was given, and the words to answer in. */
export interface TakeoffGiven {
  readonly words: Words;
  readonly asks: TakeoffAsked;
}

type TakeoffAsked =
  | { readonly is: 'help' }
  | WrongUse
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

export function readTakeoffGiven(given: readonly string[]): TakeoffGiven {
  const { words, rest, wrong: refused } = spoken(given);
  return { words, asks: refused ?? readAsked(rest, words) };
}

function readAsked(given: readonly string[], words: Words): TakeoffAsked {
  const { cli } = words;
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
      const read = secondsOf(given[at] ?? '', words);
      if (typeof read !== 'number') return read;
      seconds = read;
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
