/** What is remembered of a question: its best answer so far, and whether any more is looked for. */
export interface Remembered<Answer> {
  readonly key: string;
  readonly best?: Answer;
  /** open: the search was broken off, and may be taken up again. */
  readonly is: 'open' | 'done' | 'stopped';
}

export interface Answers<Answer> {
  readonly of: (key: string) => Remembered<Answer> | undefined;
  readonly remember: (answer: Remembered<Answer>) => void;
}

/** The answers to the last questions, so that a step of undo has its answer at once. */
export function createAnswers<Answer>(most: number): Answers<Answer> {
  // A map keeps the order in which its keys were put in: the oldest comes first.
  const kept = new Map<string, Remembered<Answer>>();
  return {
    of: (key) => kept.get(key),
    remember: (answer) => {
      kept.delete(answer.key);
      kept.set(answer.key, answer);
      const [oldest] = kept.keys();
      if (kept.size > most && oldest !== undefined) kept.delete(oldest);
    },
  };
}
