import type { BoardPlan, BoardProblem } from '../../takeoff/boards/plan.ts';
import type { JointPlan, JointProblem } from '../../takeoff/joints/layout.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Searched } from '../../takeoff/searched.ts';
import type { MeshPlan, MeshProblem } from '../../takeoff/steel/plan.ts';
import type { Place } from '../places/places.ts';
import type { AppState } from '../state.ts';
import type { Store } from '../store.ts';
import type { LiveTakeoffs } from './live.ts';
import type { Asked, Search } from './search.ts';

/** The slow searches, a trade each. */
export interface Searches {
  readonly boards: Search<BoardProblem, BoardPlan>;
  /** Bars are cut as boards are, and looked for alike. */
  readonly bars: Search<BoardProblem, BoardPlan>;
  readonly mesh: Search<MeshProblem, MeshPlan>;
  /** A question and an answer for each piece of the pour. */
  readonly joints: Search<readonly JointProblem[], readonly JointPlan[]>;
}

/** Where each is looked at; elsewhere nobody waits for a better one. */
const PLANS_SHOWN: readonly Place[] = ['forms', 'order', 'sheet'];
const STEEL_SHOWN: readonly Place[] = ['steel', 'order', 'sheet'];
const JOINTS_SHOWN: readonly Place[] = ['joints', 'mix', 'order', 'sheet', 'pour-day'];

interface Tied {
  readonly state: Store<AppState>;
  readonly takeoffs: LiveTakeoffs;
  readonly searches: Searches;
}

/**
 * Ties the searches to the figures on screen: what these need is searched for, and what is found goes into them. A find
 * is only ever used for the very problem that it answers; until there is one, the first answer stands, and says so.
 */
export function tieSearches({ state, takeoffs, searches }: Tied): void {
  const { boards, bars, mesh, joints } = searches;

  function look() {
    const { draft, place, history } = state.get();
    // What is left over is asked for once the pour is closed; till then the phone has better to do.
    const closed = place === 'pour-day' && history.now.job.closeOut !== undefined;
    const plans = PLANS_SHOWN.includes(place) || closed;
    const steel = STEEL_SHOWN.includes(place) || closed;
    boards.hold(draft !== null || !plans);
    bars.hold(draft !== null || !steel);
    mesh.hold(draft !== null || !steel);
    joints.hold(draft !== null || !JOINTS_SHOWN.includes(place));
    const { takeoff, standing } = takeoffs.live.get();
    // Figures that are behind ask for what nobody wants any more.
    if (standing !== 'current') return;
    boards.want(asked(takeoff));
    bars.want(askedBars(takeoff));
    mesh.want(askedMesh(takeoff));
    joints.want(askedJoints(takeoff));
    const found: Searched = {
      ...named('boards', bestOf(boards)),
      ...named('bars', bestOf(bars)),
      ...named('mesh', bestOf(mesh)),
      ...named('joints', bestOf(joints)),
    };
    if (Object.keys(found).length > 0) takeoffs.search(found);
  }
  state.watch(look);
  takeoffs.live.watch(look);
  boards.standing.watch(look);
  bars.standing.watch(look);
  mesh.standing.watch(look);
  joints.standing.watch(look);
  look();
}

function asked({ boards }: Takeoff): Asked<BoardProblem> | null {
  return boards ? { key: boards.key, question: boards.problem } : null;
}

function askedBars({ steel }: Takeoff): Asked<BoardProblem> | null {
  const cuts = steel?.bars?.cuts;
  return cuts ? { key: cuts.key, question: cuts.problem } : null;
}

function askedMesh({ steel }: Takeoff): Asked<MeshProblem> | null {
  return steel?.mesh ? { key: steel.mesh.key, question: steel.mesh.problem } : null;
}

/** Joints drawn by hand are as they are: nothing is looked for. */
function askedJoints({ joints }: Takeoff): Asked<readonly JointProblem[]> | null {
  const layout = joints?.layout;
  if (!layout || layout.by === 'by-hand') return null;
  return { key: layout.key, question: layout.problems };
}

/** Under its own name, when there is one. */
function named<K extends keyof Searched>(key: K, found: Searched[K] | undefined) {
  return found ? ({ [key]: found } as { readonly [k in K]: NonNullable<Searched[K]> }) : {};
}

/** The best that a search found for what is on screen. */
function bestOf<Plan>({ standing }: Pick<Search<never, Plan>, 'standing'>) {
  const found = standing.get();
  return found.is !== 'nothing' && found.best ? { key: found.key, plan: found.best } : undefined;
}
