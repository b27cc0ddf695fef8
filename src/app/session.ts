import type { Command, Refusal } from '../job/commands.ts';
import { begin } from '../job/history.ts';
import type { Job } from '../job/job.ts';
import type { Selection, ToolName } from '../sketch/tools/tool.ts';
import type { View } from '../sketch/view.ts';
import type { LayoutChoice } from '../takeoff/layout/layout.ts';
import type { Place } from './places/places.ts';
import type { Saver } from './saving.ts';
import { keepSpeech, type Speech } from './speech.ts';
import {
  type AppState,
  commit,
  type Hold,
  type Kept,
  openState,
  type Panel,
  type Pull,
  preview,
  shownJob,
  stepBack,
  stepForward,
  type Theme,
} from './state.ts';
import { createStore, type Store } from './store.ts';
import type { LiveTakeoff, LiveTakeoffs } from './worker/live.ts';
import { type Searches, tieSearches } from './worker/searches.ts';

/** The app at work on one job: its state, its takeoff, and everything that can be done from a button. */
export interface Session {
  readonly state: Store<AppState>;
  readonly live: Store<LiveTakeoff>;
  readonly figureAgain: () => void;
  readonly searches: Searches;
  readonly preview: (command: Command | null) => void;
  readonly commit: (command: Command) => void;
  readonly refuse: (refusal: Refusal | null) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly use: (tool: ToolName) => void;
  readonly select: (selection: Selection | null) => void;
  readonly look: (view: View | null) => void;
  readonly go: (place: Place) => void;
  readonly show: (panel: Panel) => void;
  readonly pull: (pull: Pull) => void;
  readonly light: (theme: Theme) => void;
  readonly speak: (change: Partial<Speech>) => void;
  /** Another choice of what to set out by. */
  readonly setOut: (change: (before: LayoutChoice) => LayoutChoice) => void;
  readonly openSettingOut: (open: boolean) => void;
  readonly endWelcome: () => void;
  /** Another job on the table. `untried`: it was read from a file or the store. */
  readonly open: (
    jobId: string,
    job: Job,
    kept: Partial<Kept>,
    how: { readonly untried: boolean; readonly hold: Hold },
  ) => void;
  /** Another tab took the job: from now on this one looks on. */
  readonly lose: (jobId: string) => void;
  /** The other tab saved it: show what it is now. */
  readonly follow: (jobId: string, job: Job) => void;
}

export interface SessionSetup {
  readonly first: AppState;
  readonly untried: boolean;
  readonly takeoffs: LiveTakeoffs;
  readonly searches: Searches;
  readonly saver: Pick<Saver, 'save' | 'soon'>;
  readonly keepTheme: (theme: Theme) => void;
}

export function createSession({
  first,
  untried: firstUntried,
  takeoffs,
  searches,
  saver,
  keepTheme,
}: SessionSetup): Session {
  const state = createStore(first);
  takeoffs.want(shownJob(first), firstUntried);
  tieSearches({ state, takeoffs, searches });

  /** Every change goes through here: the takeoff follows the job on screen, the store the committed one. */
  function change(step: (before: AppState) => AppState) {
    const before = state.get();
    state.set(step);
    const after = state.get();
    if (after === before) return;
    takeoffs.want(shownJob(after));
    if (after.hold !== 'mine') return;
    if (after.history.now.job !== before.history.now.job) {
      saver.save(after.jobId, after.history.now.job, keptOf(after));
    } else if (lookedElsewhere(before, after)) {
      saver.soon(after.jobId, after.history.now.job, keptOf(after));
    }
  }

  function set(part: Partial<AppState>) {
    change((before) => ({ ...before, ...part }));
  }

  return {
    state,
    live: takeoffs.live,
    figureAgain: takeoffs.again,
    searches,
    preview: (command) => change((before) => preview(before, command)),
    commit: (command) => change((before) => commit(before, command)),
    refuse: (refusal) => set({ refusal }),
    undo: () => change(stepBack),
    redo: () => change(stepForward),
    // Who draws needs the ground in sight: on a phone the ticket is let down.
    use: (tool) => set(tool === 'pick' || tool === 'pan' ? { tool } : { tool, pull: 'low' }),
    select: (selection) => set({ selection }),
    look: (view) => set({ view }),
    go: (place) =>
      set({
        place,
        draft: null,
        ...(place === 'sheet' ? { panel: 'ticket' } : {}),
        // Stakes can be picked among the forms alone.
        ...(place !== 'forms' && state.get().selection?.stake ? { selection: null } : {}),
      }),
    show: (panel) => set({ panel }),
    pull: (pull) => set({ pull }),
    light: (theme) => {
      keepTheme(theme);
      set({ theme });
    },
    speak: (part) => {
      const speech = { ...state.get().speech, ...part };
      keepSpeech(speech);
      set({ speech });
    },
    setOut: (next) =>
      change((before) => {
        const { settingOut } = before;
        return { ...before, settingOut: { ...settingOut, choice: next(settingOut.choice) } };
      }),
    openSettingOut: (open) =>
      change((before) => ({ ...before, settingOut: { ...before.settingOut, open } })),
    endWelcome: () => set({ welcome: false }),
    open: (jobId, job, kept, { untried, hold }) => {
      const { theme, speech, pull } = state.get();
      const opened = { ...openState(jobId, job, kept, theme), speech, pull, hold };
      takeoffs.want(job, untried);
      state.set(() => opened);
    },
    lose: (jobId) => {
      if (state.get().jobId === jobId) set({ hold: 'other-tab', draft: null });
    },
    follow: (jobId, job) => {
      if (state.get().jobId !== jobId) return;
      takeoffs.want(job, true);
      state.set((before) => ({ ...before, history: begin(job), draft: null }));
    },
  };
}

function keptOf({ view, place, panel }: AppState): Kept {
  return { view, place, panel };
}

function lookedElsewhere(before: AppState, after: AppState): boolean {
  return after.view !== before.view || after.place !== before.place || after.panel !== before.panel;
}
