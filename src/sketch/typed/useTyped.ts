import { useState } from 'react';
import type { Problem, Result } from '../../units/result.ts';

/** A text being typed, and what was wrong with it when it was last read. */
export interface TypedText<T> {
  readonly text: string;
  readonly problem: string | null;
  readonly onText: (text: string) => void;
  /** The value, or null with its problem now shown. */
  readonly read: () => T | null;
  readonly refuse: (problem: string) => void;
  readonly clear: () => void;
}

export function useTyped<T>(
  parse: (text: string) => Result<T>,
  sayProblem: (problem: Problem) => string,
  start = '',
): TypedText<T> {
  const [text, setText] = useState(start);
  const [problem, setProblem] = useState<string | null>(null);
  return {
    text,
    problem,
    onText(next) {
      setText(next);
      setProblem(null);
    },
    read() {
      const outcome = parse(text);
      if (outcome.ok) return outcome.value;
      setProblem(outcome.problems.map(sayProblem).join(' '));
      return null;
    },
    refuse: setProblem,
    clear() {
      setText('');
      setProblem(null);
    },
  };
}
