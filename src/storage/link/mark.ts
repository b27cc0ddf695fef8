/** How a job stands in the fragment of an address: `#job1.` and the packed job in letters, or `#job1:` and it in digits. */
const MARK = /^#job(\d{1,4})([.:])/;

/** The way of packing that this program writes. Older ones stay readable for ever. */
export const PACKING = 1;

export type LinkLetters = 'letters' | 'digits';

const SIGNS: Readonly<Record<LinkLetters, string>> = { letters: '.', digits: ':' };

export interface LinkMark {
  readonly packing: number;
  readonly letters: LinkLetters;
  readonly packed: string;
}

/** What stands in a fragment (with its `#`), or null when it holds no job. Light: nothing is unpacked. */
export function readMark(fragment: string): LinkMark | null {
  const mark = MARK.exec(fragment);
  if (!mark) return null;
  const letters = mark[2] === SIGNS.digits ? 'digits' : 'letters';
  return { packing: Number(mark[1]), letters, packed: fragment.slice(mark[0].length) };
}

export function writeMark(letters: LinkLetters, packed: string): string {
  return `#job${PACKING}${SIGNS[letters]}${packed}`;
}
