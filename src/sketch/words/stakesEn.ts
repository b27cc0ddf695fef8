import type { BrokenRule } from '../../takeoff/result.ts';

type State = 'planned' | 'pinned' | 'removed';

/** What the form setter reads and hears of single stakes. */
export const stakesEn = {
  named: {
    planned: (run: string) => `Stake on ${run}, where the plan has it`,
    pinned: (run: string) => `Stake on ${run}, pinned by hand`,
    removed: (run: string) => `Stake on ${run}, taken away by hand`,
  } satisfies Record<State, (run: string) => string>,
  is: {
    planned: 'planned',
    pinned: 'pinned',
    removed: 'taken away',
  } satisfies Record<State, string>,
  off: {
    pinned: 'A pinned stake is on no form any more.',
    removed: 'A place that a stake was taken from is on no form any more.',
  } satisfies Record<Exclude<State, 'planned'>, string>,
  selected: (stake: string, fromStart: string, start: string) =>
    `Selected: ${stake}, ${fromStart} from ${start}`,
  start: 'the start',
  end: 'the end',
  corner: (letter: string) => `corner ${letter}`,
  cornerOf: (feature: string, letter: string) => `corner ${letter} of ${feature}`,
  from: (place: string) => `From ${place}`,
  pin: 'Pin here',
  remove: 'Take away',
  free: 'Free',
  freeWhy: 'Back to where the plan has it',
  tooNearEnd: (least: string, most: string) =>
    `A stake needs its whole width on the board: type from ${least} to ${most}.`,
  broken: {
    spacing: (found: string, allowed: string) =>
      `Breaks the spacing: the gap is ${found}, and ${allowed} is the widest.`,
    'from-end': (found: string, allowed: string) =>
      `Breaks the distance from the end: the next stake is ${found} from it, and ${allowed} is the most.`,
    splice: (found: string, allowed: string) =>
      `Leaves a splice without a stake on one side: the next is ${found} away, and ${allowed} is the most.`,
    blocked: (found: string, allowed: string) =>
      `Can’t be driven here: it is ${found} from what is in the way, and ${allowed} is the least.`,
  } satisfies Record<BrokenRule['rule'], (found: string, allowed: string) => string>,
  table: {
    title: 'Stakes',
    hint: 'Pinned stakes stay where they are, and the plan sets the others round them.',
    none: 'No stakes are figured yet.',
    run: 'Form run',
    part: (run: string, first: number, last: number) => `${run}, stakes ${first} to ${last}`,
    stake: 'Stake',
    state: 'How it stands',
    more: 'Pin, take away, free',
    cell: (stake: number, place: string) => `Stake ${stake}, distance from ${place}`,
    select: (stake: number) => `Show stake ${stake} on the sketch`,
    pin: (stake: number) => `Pin stake ${stake} here`,
    remove: (stake: number) => `Take away stake ${stake}`,
    free: (stake: number) => `Free stake ${stake}`,
    addAt: (place: string) => `One more, at this distance from ${place}`,
    add: 'Pin one more',
    freeAll: (count: number) => (count === 1 ? 'Free the one set by hand' : `Free all ${count}`),
  },
};
