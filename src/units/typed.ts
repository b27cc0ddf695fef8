const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/** Longer than anybody means; what is longer is no number, and is not looked at. */
const LONGEST = 60;

/** What was typed, with every way of writing a prime, a dash, a space or a fraction made one. */
export interface Typed {
  readonly negative: boolean;
  /** A sign was typed, + or -. */
  readonly signed: boolean;
  /** Lower case, no sign, single spaces. */
  readonly text: string;
}

/**
 * Takes a typed number apart into sign and plain text: primes and quotation marks of all kinds become ' and ",
 * two of ' become ", dashes become -, `4½` becomes `4 1/2`. Nothing is left out, so that nonsense stays nonsense.
 * Null when it is too long to be a number.
 */
export function plain(typed: string): Typed | null {
  if (typed.length > LONGEST) return null;
  const text = typed
    .replace(/[′’‘`´ʹ]/g, "'")
    .replace(/[″”“„ʺ]|''/g, '"')
    .replace(/[−–—‐‑]/g, '-')
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${FRACTIONS[sign]}`)
    .replace(/⁄/g, '/')
    .replace(/\s+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .replace(/([-'"]) (?=\d+\/)/g, '$1')
    .toLowerCase()
    .trim();
  const sign = /^[-+] ?/.exec(text)?.[0] ?? '';
  return { negative: sign.startsWith('-'), signed: sign !== '', text: text.slice(sign.length) };
}

/** True where three digits follow a comma: in one country that is 3,760 pieces, in another 3.760. */
export function unclearComma(text: string): boolean {
  return /,.*[,.]|\..*,|,\d{3}(?!\d)/.test(text);
}
