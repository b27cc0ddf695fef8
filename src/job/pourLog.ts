import type { Grid } from '../units/grid.ts';

/** Bags of one mix: whole ones, or parts of one where a batch took half a bag. */
export interface BagsOf {
  readonly mix: string;
  readonly bags: number;
}

/**
 * What was tapped while the pour was on. `at`: whole milliseconds since 1970, stamped by the app.
 * batch: a mixer load that went in, and what it was made of. front: how far the concrete has got, as a line square to
 * `toward` (whole degrees, counter-clockwise from east), `along` that way from the origin. more: bags that were fetched.
 */
export type PourEntry =
  | { readonly is: 'batch'; readonly at: number; readonly bags: readonly BagsOf[] }
  | { readonly is: 'front'; readonly at: number; readonly toward: number; readonly along: Grid }
  | { readonly is: 'more'; readonly at: number; readonly bags: readonly BagsOf[] };

/** The pour as it went: nothing in it is figured, all of it was tapped. */
export interface PourLog {
  /** What was ticked off before water touched powder: names of ours, and ids of the user's own. */
  readonly checked: readonly string[];
  /** Which way the front goes, whole degrees. Absent: along the pour's longer side. */
  readonly toward?: number;
  /** Bags at the pad when the pour began. Absent: those of the ticket. */
  readonly onHand?: readonly BagsOf[];
  /** In the order in which they were tapped. */
  readonly entries: readonly PourEntry[];
}

export const TASKS = [
  'forms',
  'steel',
  'mixing',
  'placing',
  'finishing',
  'stripping',
  'driving',
  'other',
] as const;
export type Task = (typeof TASKS)[number];

export const TROUBLES = [
  'short',
  'left-over',
  'deeper',
  'form-moved',
  'set-fast',
  'set-slow',
  'cold-joint',
  'too-wet',
  'rain',
  'heat',
  'cold',
  'mixer',
  'hands',
] as const;
export type Trouble = (typeof TROUBLES)[number];

/** What became of the bags of one mix, with what a bag was said to make that day. */
export interface BagsClosed {
  readonly mix: string;
  readonly name: string;
  /** Cubic grid units. */
  readonly yield: number;
  readonly used: number;
  readonly left: number;
  readonly returned: number;
}

/** A job after it: what it took. Net and area are kept as they were, since practices and sketch may change later. */
export interface CloseOut {
  /** Whole milliseconds since 1970. */
  readonly at: number;
  /** The takeoff's net, cubic grid units, and its area, square grid units. */
  readonly net: number;
  readonly area: number;
  readonly bags: readonly BagsClosed[];
  readonly hours: readonly { readonly task: Task; readonly hours: number }[];
  readonly wrong: readonly Trouble[];
  readonly says: string;
  /** As it was measured: the mean of what was taped. */
  readonly depth?: Grid;
}

/** The user's own for the day of the pour. */
export interface PourDayPractices {
  /** To the yard and back, and how much sooner somebody is sent, minutes. */
  readonly tripMinutes: number;
  readonly marginMinutes: number;
  /** How far the depth of a patch of 2 by 2 ft may be off the whole slab's mean, one standard deviation. */
  readonly patchDepth: Grid;
  /** How far off a tapped front may be. */
  readonly frontError: Grid;
  /** Things of the user's own to tick off. */
  readonly checks: readonly { readonly id: string; readonly text: string }[];
}

export function emptyPourLog(): PourLog {
  return { checked: [], entries: [] };
}

/** The log with what was tapped last taken back; the same log when there is nothing. */
export function withoutLast(log: PourLog): PourLog {
  return log.entries.length === 0 ? log : { ...log, entries: log.entries.slice(0, -1) };
}

export function withEntry(log: PourLog, entry: PourEntry): PourLog {
  return { ...log, entries: [...log.entries, entry] };
}

/** Another thing ticked, or no longer. */
export function withChecked(log: PourLog, key: string, done: boolean): PourLog {
  const others = log.checked.filter((one) => one !== key);
  return { ...log, checked: done ? [...others, key] : others };
}
