import { useEffect } from 'react';
import { useSession } from './SessionContext.ts';

/** Ctrl/Cmd-Z and Shift-Ctrl/Cmd-Z, as everywhere; in a text field they belong to the field. */
export function useUndoKeys(): void {
  const session = useSession();
  useEffect(() => {
    function onKeyDown(event: KeyboardEvent) {
      if (event.key.toLowerCase() !== 'z' || !(event.ctrlKey || event.metaKey)) return;
      if (event.target instanceof HTMLElement && event.target.matches('input, textarea, select')) {
        return;
      }
      event.preventDefault();
      if (event.shiftKey) session.redo();
      else session.undo();
    }
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [session]);
}
