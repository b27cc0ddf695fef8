/** What the page asks of the worker of the searches. */
export interface SearchAsk<Question> {
  readonly id: number;
  readonly question: Question;
  /** How long it may look, seconds. */
  readonly seconds: number;
}

/**
 * What comes back: any number of better answers, then the last one or why there is none. `failed` is our own fault or a
 * file that didn't come down, for the record.
 */
export type SearchSent<Answer> =
  | { readonly id: number; readonly better: Answer }
  | { readonly id: number; readonly done: Answer }
  | { readonly id: number; readonly failed: string };
