/** What stands between two languages. No entry of a dictionary has it inside (a test says so). */
export const BESIDE = ' / ';

/** A word in two languages; once, when both write it alike. */
export function pair(one: string, other: string): string {
  return one === other ? one : `${one}${BESIDE}${other}`;
}
