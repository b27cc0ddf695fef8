import { useEffect, useState } from 'react';
import { keepOffline, type NewVersion } from './offline/keepOffline.ts';
import { useWords } from './SessionContext.ts';

/** A new version never changes figures under somebody's hands: it waits until they say so and all is saved. */
export function NewVersionNote({ idle }: { readonly idle: () => Promise<void> }) {
  const words = useWords().app.fresh;
  const [version, setVersion] = useState<NewVersion | null>(null);
  useEffect(() => {
    keepOffline(setVersion).catch((error: unknown) => {
      // The app works as before, only not without signal.
      console.warn('Not kept for offline use:', error);
    });
  }, []);
  if (!version) return null;
  return (
    <div className="strip" role="status">
      <p>{words.says}</p>
      <button
        type="button"
        className="plain"
        onClick={async () => {
          await idle();
          version.takeOver();
        }}
      >
        {words.now}
      </button>
      <button type="button" className="plain" onClick={() => setVersion(null)}>
        {words.later}
      </button>
    </div>
  );
}
