import type { Words } from '../sheet/words/words.ts';

/** Why the system didn't open a file, in words where there are any. */
export function whyNot(words: Words, error: unknown): string {
  const code = error instanceof Error ? String(Reflect.get(error, 'code')) : '';
  return words.cli.codes[code] ?? (error instanceof Error ? error.message : String(error));
}
