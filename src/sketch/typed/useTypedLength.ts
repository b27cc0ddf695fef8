import type { Grid } from '../../units/grid.ts';
import { bareLength, parseLength } from '../../units/length.ts';
import type { Problem } from '../../units/result.ts';
import type { LengthStyle } from '../../units/writtenLength.ts';
import type { SketchWords } from '../words/en.ts';
import { type TypedText, useTyped } from './useTyped.ts';

export interface TypedLength extends TypedText<Grid> {
  /** How a number without a unit is taken. */
  readonly hint?: string;
}

/** A length being typed; a bare number says at once what it is taken for. */
export function useTypedLength(
  units: LengthStyle,
  words: SketchWords,
  sayProblem: (problem: Problem) => string,
): TypedLength {
  const typed = useTyped((text) => parseLength(text, units), sayProblem);
  const taken = bareLength(typed.text, units);
  return taken === null ? typed : { ...typed, hint: words.bar.takenAs(taken) };
}
