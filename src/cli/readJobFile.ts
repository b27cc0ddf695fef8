import { readFileSync } from 'node:fs';
import type { Job } from '../job/job.ts';
import { parseJob } from '../job/parse.ts';
import { filled } from '../sheet/words/filled.ts';
import { sayProblem } from '../sheet/words/say.ts';
import type { Words } from '../sheet/words/words.ts';
import { whyNot } from './whyNot.ts';

/**
 * The job of a file, `-` for standard input; nothing when it can't be read or is no job, and then that is said.
 * @param say Takes what is wrong, line by line.
 */
export function readJobFile(
  file: string,
  words: Words,
  say: (lines: readonly string[]) => void,
): Job | undefined {
  const name = file === '-' ? words.cli.standardInput : file;
  let text: string;
  try {
    text = readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    say([filled(words.cli.cantRead, { file: name, why: whyNot(words, error) })]);
    return undefined;
  }
  const read = parseJob(text);
  if (read.ok) return read.value;
  const problems = read.problems.map((problem) => `  ${sayProblem(words, problem)}`);
  say([filled(words.cli.refused, { file: name }), ...problems]);
  return undefined;
}
