import { en } from '../sheet/words/en.ts';
import { filled } from '../sheet/words/say.ts';

/** What the command for the takeoff was given. */
export type TakeoffGiven =
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
    };

const MOST_SECONDS = 3600;

export function readTakeoffGiven(given: readonly string[]): TakeoffGiven {
  if (given.includes('--help')) return { is: 'help' };
  const files: string[] = [];
  let text = false;
  let workings = false;
  // Unasked, the same job gives the same answer on a slow machine as on a quick one.
  let seconds = 0;
  for (let at = 0; at < given.length; at += 1) {
    const one = given[at]!;
    if (one === '--text') text = true;
    else if (one === '--workings') workings = true;
    else if (one === '--search') {
      at += 1;
      const typed = given[at] ?? '';
      seconds = /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : Number.NaN;
      if (!(seconds <= MOST_SECONDS)) {
        return wrong(filled(en.cli.searchSeconds, { typed, most: `${MOST_SECONDS}` }));
      }
    } else if (one.startsWith('-') && one !== '-') {
      return wrong(filled(en.cli.unknownOption, { option: one }));
    } else files.push(one);
  }
  const [file, ...more] = files;
  if (file === undefined || more.length > 0) return wrong(en.cli.oneFile);
  return { is: 'job', file, text, workings, seconds };
}

function wrong(why: string): TakeoffGiven {
  return { is: 'wrong', why };
}
