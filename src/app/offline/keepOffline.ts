/** A newer version of the app that has come down and waits until the user lets it in. */
export interface NewVersion {
  /** Switches to it and loads the page again. Call it only once the job is saved. */
  readonly takeOver: () => void;
}

/**
 * Keeps the app on this device for use without signal. Does nothing where the browser doesn't offer it (plain HTTP on
 * a network address) and while developing; the app works the same then, as long as there is a connection.
 */
export async function keepOffline(
  onNewVersion: (version: NewVersion) => void,
): Promise<'kept' | 'not-offered'> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return 'not-offered';
  const registration = await navigator.serviceWorker.register('./service-worker.js');
  const offer = (waiting: ServiceWorker) =>
    onNewVersion({
      takeOver: () => {
        navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), {
          once: true,
        });
        waiting.postMessage('take-over');
      },
    });
  if (registration.waiting && navigator.serviceWorker.controller) offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      // With no controller this is the first version on this device, not a newer one.
      if (coming.state === 'installed' && navigator.serviceWorker.controller) offer(coming);
    });
  });
  return 'kept';
}
