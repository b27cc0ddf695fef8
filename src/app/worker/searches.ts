import type { BoardPlan, BoardProblem } from '../../takeoff/boards/plan.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Place } from '../places/places.ts';
import type { AppState } from '../state.ts';
import type { Store } from '../store.ts';
import type { LiveTakeoffs } from './live.ts';
import type { Asked, Search } from './search.ts';

/** The slow searches, a trade each. */
export interface Searches {
  readonly boards: Search<BoardProblem, BoardPlan>;
}

/** Where the board plan is looked at; elsewhere nobody waits for a better one. */
const PLANS_SHOWN: readonly Place[] = ['forms', 'sheet'];

interface Tied {
  readonly state: Store<AppState>;
  readonly takeoffs: LiveTakeoffs;
  readonly searches: Searches;
}

/**
 * Ties the searches to the figures on screen: what these need is searched for, and what is found goes into them. A find
 * is only ever used for the very problem that it answers; until there is one, the first answer stands, and says so.
 */
export function tieSearches({ state, takeoffs, searches: { boards } }: Tied): void {
  function look() {
    const { draft, place } = state.get();
    boards.hold(draft !== null || !PLANS_SHOWN.includes(place));
    const { takeoff, standing } = takeoffs.live.get();
    // Figures that are behind ask for what nobody wants any more.
    if (standing !== 'current') return;
    boards.want(asked(takeoff));
    const found = boards.standing.get();
    if (found.is !== 'nothing' && found.best) {
      takeoffs.search({ boards: { key: found.key, plan: found.best } });
    }
  }
  state.watch(look);
  takeoffs.live.watch(look);
  boards.standing.watch(look);
  look();
}

function asked({ boards }: Takeoff): Asked<BoardProblem> | null {
  return boards ? { key: boards.key, question: boards.problem } : null;
}
