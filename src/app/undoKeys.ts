import { useEffect } from 'react';
import { useSession } from './SessionContext.ts';

/** Ctrl/Cmd-Z, and Shift-Ctrl/Cmd-Z or Ctrl-Y, as everywhere; in a text field they belong to the field. */
export function useUndoKeys(): void {
  const session = useSession();
  useEffect(() => {
    function onKeyDown(event: KeyboardEvent) {
      const key = event.key.toLowerCase();
      const back = key === 'z' && (event.ctrlKey || event.metaKey) && !event.shiftKey;
      const again =
        (key === 'z' && (event.ctrlKey || event.metaKey) && event.shiftKey) ||
        (key === 'y' && event.ctrlKey);
      if (!back && !again) return;
      if (event.target instanceof HTMLElement && event.target.matches('input, textarea, select')) {
        return;
      }
      event.preventDefault();
      if (again) session.redo();
      else session.undo();
    }
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [session]);
}
