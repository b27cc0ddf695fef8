import { useState } from 'react';
import type { Problem, Result } from '../../units/result.ts';

/** A field of a form that is read when the form is sent: what is wrong with it stands until it is typed over. */
export function useAsked(first: string) {
  const [text, setText] = useState(first);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  return {
    text,
    problems,
    set: (typed: string) => {
      setText(typed);
      setProblems([]);
    },
    read: <T>(parse: (text: string) => Result<T>): Result<T> => {
      const result = parse(text);
      setProblems(result.ok ? [] : result.problems);
      return result;
    },
  };
}
