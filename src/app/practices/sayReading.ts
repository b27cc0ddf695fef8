import { sayProblem } from '../../sheet/words/say.ts';
import type { Problem } from '../../units/result.ts';
import type { AllWords } from '../words/words.ts';

/** What is wrong with a typed value of any kind, in words. */
export function sayReading(words: AllWords, { code, facts = {}, ...rest }: Problem): string {
  const says = words.app.practices;
  if (code === 'out-of-range') return says.range(String(facts['least']), String(facts['most']));
  if (code === 'not-whole') return says.whole;
  return sayProblem(words.sheet, { code, facts, ...rest });
}
