/** What went wrong, in a form that any language file can put into words. */
export interface Problem {
  /** Names the sentence in the language files (`sheet/words`). */
  readonly code: string;
  /** Where: a path into a file (`features[2].shape`), a feature id, or the text that was typed. */
  readonly where?: string;
  /** Values that the sentence quotes: what was seen, what was expected. */
  readonly facts?: Readonly<Record<string, string | number>>;
}

/** An outcome that can fail because of a person or a file. Our own mistakes throw instead. */
export type Result<T, P = readonly Problem[]> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: P };

export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function fail(...problems: readonly Problem[]): {
  readonly ok: false;
  readonly problems: readonly Problem[];
} {
  return { ok: false, problems };
}
