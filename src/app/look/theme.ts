import { useEffect, useSyncExternalStore } from 'react';
import type { Theme } from '../state.ts';

export const THEMES: readonly Theme[] = ['system', 'light', 'dark'];

const KEY = 'notchpad-light';
const evening = window.matchMedia('(prefers-color-scheme: dark)');

/** The theme chosen last on this device. A browser that keeps nothing gets the device's own. */
export function keptTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEY);
    return THEMES.find((theme) => theme === kept) ?? 'system';
  } catch {
    return 'system';
  }
}

export function keepTheme(theme: Theme): void {
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // Private windows may refuse; the choice then lasts as long as the page.
  }
}

/** What is shown: the choice, or what the device says. Also set on <html>, where the style sheet reads it. */
export function useShownTheme(theme: Theme): 'light' | 'dark' {
  const deviceIsDark = useSyncExternalStore(
    (listener) => {
      evening.addEventListener('change', listener);
      return () => evening.removeEventListener('change', listener);
    },
    () => evening.matches,
  );
  const shown = theme === 'system' ? (deviceIsDark ? 'dark' : 'light') : theme;
  useEffect(() => {
    document.documentElement.dataset['theme'] = shown;
  }, [shown]);
  return shown;
}
