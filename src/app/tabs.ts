import type { Hold } from './state.ts';

/** What tabs of this app tell one another. */
export type TabNews =
  | { readonly do: 'let-go'; readonly id: string }
  | { readonly do: 'saved'; readonly id: string };

export interface TabsSetup {
  /** Absent where the browser has none (an address that isn't https or localhost). */
  readonly locks: LockManager | undefined;
  readonly channel: Pick<BroadcastChannel, 'postMessage' | 'onmessage'> | undefined;
  /** Called before this tab lets go: finish writing. */
  readonly finish: () => Promise<void>;
  readonly onLost: (id: string) => void;
  readonly onSavedElsewhere: (id: string) => void;
  /** How long another tab may take to let go, ms. */
  readonly patience: number;
}

export interface Tabs {
  /** Hold a job for writing, letting go of the one held before. */
  readonly take: (id: string) => Promise<Hold>;
  /** Ask the other tab to finish and let go; take it anyway when it doesn't answer. */
  readonly takeOver: (id: string) => Promise<Hold>;
  readonly tellSaved: (id: string) => void;
}

/** One tab at a time writes a job: two would overwrite each other's work in turns. */
export function createTabs(setup: TabsSetup): Tabs {
  const { locks, channel } = setup;
  let held: { readonly id: string; readonly letGo: () => void } | null = null;

  function letGo() {
    held?.letGo();
    held = null;
  }

  function request(id: string, options: LockOptions): Promise<Hold> {
    if (!locks) return Promise.resolve('mine');
    return new Promise((resolve, reject) => {
      locks
        .request(`notchpad-job-${id}`, options, (lock) => {
          if (!lock) return resolve('other-tab');
          return new Promise<void>((done) => {
            held = { id, letGo: done };
            resolve('mine');
          });
        })
        .catch((error: unknown) => {
          // Either the wait ran out, or another tab took the lock that was held here.
          if (held?.id === id && options.signal?.aborted !== true) {
            held = null;
            setup.onLost(id);
          }
          reject(error);
        });
    });
  }

  if (channel) {
    channel.onmessage = async ({ data }: MessageEvent<TabNews>) => {
      if (data.do === 'saved') setup.onSavedElsewhere(data.id);
      else if (held?.id === data.id) {
        await setup.finish();
        letGo();
        setup.onLost(data.id);
      }
    };
  }

  return {
    take: (id) => {
      letGo();
      return request(id, { ifAvailable: true });
    },
    takeOver: async (id) => {
      channel?.postMessage({ do: 'let-go', id });
      try {
        return await request(id, { signal: AbortSignal.timeout(setup.patience) });
      } catch {
        return request(id, { steal: true });
      }
    },
    tellSaved: (id) => channel?.postMessage({ do: 'saved', id }),
  };
}
