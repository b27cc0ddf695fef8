import { useAppState, useWords } from './SessionContext.ts';

/** Whether the job is kept, always in view and told to screen readers when it changes. */
export function SavedMark() {
  const words = useWords().app.saving;
  const saving = useAppState((state) => state.saving);
  const says = { saved: words.saved, saving: words.saving, 'not-saved': words.notSaved }[saving.is];
  return (
    <output className="saved-mark" data-is={saving.is} aria-live="polite">
      {says}
    </output>
  );
}
