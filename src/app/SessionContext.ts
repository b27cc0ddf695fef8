import { createContext, use, useSyncExternalStore } from 'react';
import type { Session } from './session.ts';
import type { AppState } from './state.ts';
import type { Store } from './store.ts';
import { type AllWords, wordsFor } from './words/words.ts';
import type { LiveTakeoff } from './worker/live.ts';

export const SessionContext = createContext<Session | null>(null);

export function useSession(): Session {
  const session = use(SessionContext);
  if (!session) throw new Error('A part of the app was shown outside its session.');
  return session;
}

/** `pick` answers with something that is in the state, not with a new object. */
export function useAppState<T>(pick: (state: AppState) => T): T {
  return useStore(useSession().state, pick);
}

export function useLiveTakeoff(): LiveTakeoff {
  return useStore(useSession().live, (live) => live);
}

export function useStore<S, T>(store: Store<S>, pick: (held: S) => T): T {
  return useSyncExternalStore(store.watch, () => pick(store.get()));
}

export function useWords(): AllWords {
  const { screen, terms } = useAppState((state) => state.speech);
  return wordsFor(screen, terms);
}
