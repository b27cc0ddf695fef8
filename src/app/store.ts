/** A value that the whole app watches. Everything in it is immutable; a change is a function of what was there. */
export interface Store<T> {
  readonly get: () => T;
  readonly set: (change: (before: T) => T) => void;
  /** Answers with the function that ends the watch. */
  readonly watch: (listener: () => void) => () => void;
}

export function createStore<T>(initial: T): Store<T> {
  let held = initial;
  const listeners = new Set<() => void>();
  return {
    get: () => held,
    set: (change) => {
      const next = change(held);
      if (Object.is(next, held)) return;
      held = next;
      for (const listener of [...listeners]) listener();
    },
    watch: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
