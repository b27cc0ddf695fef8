import { sayProblem } from '../../sheet/words/say.ts';
import type { Problem } from '../../units/result.ts';
import type { AllWords } from '../words/words.ts';

/** What is wrong with a typed value of any kind, in words. */
export function sayReading(words: AllWords, { code, facts = {}, ...rest }: Problem): string {
  const says = words.app.practices;
  if (code === 'out-of-range') return says.range(String(facts['least']), String(facts['most']));
  if (code === 'not-whole') return says.whole;
  if (code === 'not-quarters') return says.mix.quarters;
  if (code === 'not-minutes') return says.mix.minutes;
  return sayProblem(words.sheet, { code, facts, ...rest });
}
