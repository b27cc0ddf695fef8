import type { Language } from '../drawing/words/language.ts';
import { PAGE_KINDS, type PageKind } from '../sheet/pageKinds.ts';
import { PAPER_NAMES, type PaperName, TURNS, type Turn } from '../sheet/papers.ts';
import { filled } from '../sheet/words/filled.ts';
import type { Words } from '../sheet/words/words.ts';
import { secondsOf, spoken, type WrongUse, wrong } from './given.ts';

/** What the command for the crew sheet was given, and the words to answer in. */
export interface SheetGiven {
  readonly language: Language;
  readonly words: Words;
  readonly asks: { readonly is: 'help' } | WrongUse | SheetAsked;
}

export interface SheetAsked {
  readonly is: 'sheet';
  /** `-` is standard input. */
  readonly file: string;
  /** Ends in .pdf or .svg. */
  readonly out: string;
  /** By the job's units when not said. */
  readonly paper?: PaperName;
  readonly turn?: Turn;
  /** As it was typed: which scales there are goes by the job's units. */
  readonly scale?: string;
  readonly pages?: readonly PageKind[];
  readonly onePage: boolean;
  /** Titles, heads and names in both languages. */
  readonly both: boolean;
  readonly date?: string;
  readonly seconds: number;
}

const VALUED = ['out', 'paper', 'turn', 'scale', 'pages', 'date', 'search'] as const;
type Valued = (typeof VALUED)[number];

export function readSheetGiven(given: readonly string[]): SheetGiven {
  const { language, words, rest, wrong: refused } = spoken(given);
  return { language, words, asks: refused ?? readAsked(rest, words) };
}

function readAsked(given: readonly string[], words: Words): SheetGiven['asks'] {
  const { cli } = words;
  if (given.includes('--help')) return { is: 'help' };
  const files: string[] = [];
  const typed = new Map<Valued, string>();
  let onePage = false;
  let both = false;
  for (let at = 0; at < given.length; at += 1) {
    const one = given[at]!;
    const option = VALUED.find((name) => one === `--${name}`);
    if (option) {
      at += 1;
      typed.set(option, given[at] ?? '');
    } else if (one === '--one-page') onePage = true;
    else if (one === '--both') both = true;
    else if (one.startsWith('-') && one !== '-') {
      return wrong(filled(cli.unknownOption, { option: one }));
    } else files.push(one);
  }
  const [file, ...more] = files;
  if (file === undefined || more.length > 0) return wrong(cli.oneFile);
  const out = typed.get('out') ?? '';
  if (!/\.(pdf|svg)$/i.test(out)) return wrong(cli.outFile);
  const choice = choiceOf(typed, words);
  return 'is' in choice ? choice : { is: 'sheet', file, out, onePage, both, ...choice };
}

type Choice = Omit<SheetAsked, 'is' | 'file' | 'out' | 'onePage' | 'both'>;

function choiceOf(typed: ReadonlyMap<Valued, string>, words: Words): Choice | WrongUse {
  const oneOf = <T extends string>(
    option: Valued,
    those: readonly T[],
  ): T | undefined | WrongUse => {
    const said = typed.get(option);
    const known = those.find((one) => one === said);
    return said === undefined || known ? known : unknown(words, option, those, said);
  };
  const paper = oneOf('paper', PAPER_NAMES);
  if (typeof paper === 'object') return paper;
  const turn = oneOf('turn', TURNS);
  if (typeof turn === 'object') return turn;
  const listed = typed.get('pages')?.split(',');
  const strange = listed?.find((one) => !PAGE_KINDS.some((kind) => kind === one));
  if (strange !== undefined) return unknown(words, 'pages', PAGE_KINDS, strange);
  const pages = listed && PAGE_KINDS.filter((kind) => listed.includes(kind));
  const seconds = typed.has('search') ? secondsOf(typed.get('search')!, words) : 0;
  if (typeof seconds === 'object') return seconds;
  const scale = typed.get('scale');
  const date = typed.get('date');
  return {
    seconds,
    ...(paper ? { paper } : {}),
    ...(turn ? { turn } : {}),
    ...(scale === undefined ? {} : { scale }),
    ...(pages ? { pages } : {}),
    ...(date === undefined ? {} : { date }),
  };
}

function unknown({ cli }: Words, option: string, those: readonly string[], typed: string) {
  return wrong(filled(cli.unknownChoice, { option, those: those.join(', '), typed }));
}
