import type { TermChoice } from './terms.ts';

/**
 * A Spanish noun as entries use it. Entries never write an article or an ending beside it themselves: `los ${bag.many}`
 * would be wrong of “fundas”, `${bag.theMany} llen${bag.end}s` is right of every choice.
 */
interface Noun {
  readonly one: string;
  readonly many: string;
  /** With an article: el bulto, la funda. */
  readonly the: string;
  readonly theMany: string;
  readonly a: string;
  /** del bulto, de la funda */
  readonly of: string;
  /** What adjectives and participles end in. */
  readonly end: 'o' | 'a';
}

/**
 * The words that a user may choose, as entries want them. All choices of the form are feminine, so entries write “la” and
 * “las” beside it; a masculine one (encofrado, molde) would first need them written by `the`, as with the bag.
 */
export interface TermsEs {
  readonly form: {
    readonly one: string;
    readonly many: string;
    /** At the start of a label. */
    readonly One: string;
    readonly Many: string;
  };
  readonly bag: Noun & { readonly One: string; readonly Many: string };
}

export function termsEs({ form, bag }: TermChoice): TermsEs {
  return {
    form: { one: form, many: `${form}s`, One: capital(form), Many: `${capital(form)}s` },
    bag: {
      ...(bag === 'funda' ? feminine(bag) : masculine(bag)),
      One: capital(bag),
      Many: `${capital(bag)}s`,
    },
  };
}

function masculine(one: string): Noun {
  const many = `${one}s`;
  return {
    one,
    many,
    the: `el ${one}`,
    theMany: `los ${many}`,
    a: `un ${one}`,
    of: `del ${one}`,
    end: 'o',
  };
}

function feminine(one: string): Noun {
  const many = `${one}s`;
  return {
    one,
    many,
    the: `la ${one}`,
    theMany: `las ${many}`,
    a: `una ${one}`,
    of: `de la ${one}`,
    end: 'a',
  };
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
