import { useCallback, useEffect, useState } from 'react';

/** on: the screen stays on. off: it may go dark, and can be asked again. none: no such thing here. refused: it said no. */
export type Awake = 'on' | 'off' | 'none' | 'refused';

/**
 * Keeps the screen on while the page is in sight. The browser lets go whenever the page is put away, so it is asked anew
 * each time that it comes back.
 */
export function useAwake(wanted: boolean): { readonly awake: Awake; readonly ask: () => void } {
  const [awake, setAwake] = useState<Awake>('wakeLock' in navigator ? 'off' : 'none');
  const [asked, setAsked] = useState(0);

  useEffect(() => {
    // `asked` is how often somebody asked by hand: each time is a new try.
    if (!wanted || !('wakeLock' in navigator) || asked < 0) return;
    let held: WakeLockSentinel | null = null;
    let ended = false;

    async function hold() {
      if (document.visibilityState !== 'visible' || (held && !held.released)) return;
      try {
        const lock = await navigator.wakeLock.request('screen');
        if (ended) return void lock.release();
        held = lock;
        setAwake('on');
        lock.addEventListener('release', () => {
          if (!ended) setAwake('off');
        });
      } catch {
        if (!ended) setAwake('refused');
      }
    }

    void hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      ended = true;
      document.removeEventListener('visibilitychange', hold);
      void held?.release();
    };
  }, [wanted, asked]);

  return { awake, ask: useCallback(() => setAsked((count) => count + 1), []) };
}
