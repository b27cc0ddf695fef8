import { apply, type Command, type Refusal } from '../job/commands.ts';
import { begin, type History, push, redo, undo } from '../job/history.ts';
import type { Job } from '../job/job.ts';
import type { Selection, ToolName } from '../sketch/tools/tool.ts';
import type { View } from '../sketch/view.ts';
import type { LayoutChoice } from '../takeoff/layout/layout.ts';
import type { Problem } from '../units/result.ts';
import type { Place } from './places/places.ts';
import { type Speech, USUAL_SPEECH } from './speech.ts';

export type Theme = 'system' | 'light' | 'dark';
/** What the panel beside (or under) the sketch shows. */
export type Panel = 'ticket' | 'practices' | 'corners';
/** How far the ticket is pulled up on a phone. */
export type Pull = 'low' | 'half' | 'full';

export type Saving =
  | { readonly is: 'saved' }
  | { readonly is: 'saving' }
  | { readonly is: 'not-saved'; readonly problem: Problem };

/** Who may write the job: this tab, another tab that holds it, or nobody because it can't be kept here. */
export type Hold = 'mine' | 'other-tab';

export interface AppState {
  readonly jobId: string;
  readonly history: History;
  /** The job as it would be if the gesture under way ended now. */
  readonly draft: Job | null;
  readonly tool: ToolName;
  readonly selection: Selection | null;
  /** null: fit the sketch to the screen. */
  readonly view: View | null;
  readonly place: Place;
  readonly panel: Panel;
  readonly pull: Pull;
  readonly theme: Theme;
  readonly speech: Speech;
  readonly saving: Saving;
  readonly hold: Hold;
  /** The last thing that couldn't be done, until the next thing that can. */
  readonly refusal: Refusal | null;
  /** Squaring and setting out: whether it lies open, and what was chosen and read for it. No part of the job file. */
  readonly settingOut: { readonly open: boolean; readonly choice: LayoutChoice };
  /** True on the first visit: the sample job with a word on how to start one's own. */
  readonly welcome: boolean;
}

/** What is kept beside the job, so that a reload comes back to the same place. */
export interface Kept {
  readonly view: View | null;
  readonly place: Place;
  readonly panel: Panel;
}

export function openState(jobId: string, job: Job, kept: Partial<Kept>, theme: Theme): AppState {
  return {
    jobId,
    history: begin(job),
    draft: null,
    tool: 'pick',
    selection: null,
    view: kept.view ?? null,
    place: kept.place ?? 'ground',
    panel: kept.panel ?? 'ticket',
    pull: 'low',
    theme,
    speech: USUAL_SPEECH,
    saving: { is: 'saved' },
    hold: 'mine',
    refusal: null,
    settingOut: { open: false, choice: {} },
    welcome: false,
  };
}

/** The job on screen: the draft of a gesture under way, else the last one committed. */
export function shownJob(state: AppState): Job {
  return state.draft ?? state.history.now.job;
}

/** Shows what a gesture would do. A preview that can't be done leaves the last one that could. */
export function preview(state: AppState, command: Command | null): AppState {
  if (!command) return state.draft ? { ...state, draft: null } : state;
  const outcome = apply(state.history.now.job, command);
  return outcome.ok ? { ...state, draft: outcome.value } : state;
}

/** One command, one step of undo. What can't be done changes nothing and says why. */
export function commit(state: AppState, command: Command): AppState {
  if (state.hold !== 'mine') {
    return { ...state, draft: null, refusal: { code: 'open-in-other-tab' } };
  }
  const outcome = apply(state.history.now.job, command);
  if (!outcome.ok) return { ...state, draft: null, refusal: outcome.problems };
  return stillThere({
    ...state,
    draft: null,
    refusal: null,
    history: push(state.history, outcome.value, command.do),
  });
}

export function stepBack(state: AppState): AppState {
  return step(state, undo(state.history));
}

export function stepForward(state: AppState): AppState {
  return step(state, redo(state.history));
}

function step(state: AppState, history: History): AppState {
  if (history === state.history || state.hold !== 'mine') return state;
  return stillThere({ ...state, history, draft: null, refusal: null });
}

/** Lets go of a selection whose feature or corner is no longer in the job. */
function stillThere(state: AppState): AppState {
  const { selection } = state;
  if (!selection) return state;
  const { stake } = selection;
  if (stake) {
    const gone =
      'hand' in stake && !state.history.now.job.handStakes.some(({ id }) => id === stake.hand);
    return gone ? { ...state, selection: null } : state;
  }
  const feature = state.history.now.job.features.find((one) => one.id === selection.feature);
  if (!feature) return { ...state, selection: null };
  const shape = feature.shape;
  const cornerGone =
    selection.corner !== undefined &&
    !(shape.form === 'outline' && shape.corners.some((corner) => corner.id === selection.corner));
  return cornerGone ? { ...state, selection: { feature: feature.id } } : state;
}
