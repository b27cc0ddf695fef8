import type { Job } from '../job/job.ts';
import { placeAlong } from '../takeoff/forms/along.ts';
import { DRESSED } from '../takeoff/forms/rules.ts';
import type { FormRun, FormsResult, StakesResult, Takeoff } from '../takeoff/result.ts';
import { HALF_STAKE } from '../takeoff/stakes/rules.ts';
import { type Board, lengthText, toMm } from './dimension/board.ts';
import { drawRunning, type Stop } from './dimension/running.ts';
import { drawForms } from './forms.ts';
import type { Mark } from './marks.ts';
import { markPieces, markRuns } from './pieceMarks.ts';
import { drawStakes, stakesReach } from './stakes.ts';

/** A station's layer: what is drawn of it, what is written beside that before all else, and what is measured of it. */
export interface DrawnLayer {
  readonly marks: readonly Mark[];
  readonly write: () => void;
  /** Gives back the runs and seams that found no room for their distances. */
  readonly measure: () => readonly string[];
  /** Names what can be named anywhere along it. */
  readonly name: () => void;
}

export const NOTHING_WRITTEN = {
  write: () => undefined,
  measure: (): readonly string[] => [],
  name: () => undefined,
};

/**
 * Boards, stakes and what holds the forms elsewhere; then the marks of boards and runs and, on paper, the distance of every
 * stake from the corner at which its run starts.
 */
export function formsLayer(board: Board, job: Job, { forms, boards, stakes }: Takeoff): DrawnLayer {
  if (!forms) return { marks: [], ...NOTHING_WRITTEN };
  const { practices } = job;
  const drawn = drawForms(board, forms, boards, practices);
  const off = DRESSED[practices.formBoard].thickness + HALF_STAKE;
  const staked = stakes ? drawStakes(board, stakes, drawn.band, off) : [];
  return {
    marks: [...drawn.marks, ...staked],
    write: () => markPieces(board, drawn.pieces, drawn.faces, drawn.band),
    measure: () => {
      const reachOn = (run: string) => (stakes ? stakesReach(board, stakes, run, drawn.band) : 0);
      return board.keeps && stakes ? measureStakes(board, forms, stakes, reachOn) : [];
    },
    name: () => markRuns(board, forms.runs, drawn.band),
  };
}

/**
 * Stakes by their distance along their run, from where it starts. Gives back the runs for which there is no room: their
 * stakes stand in the list alone.
 */
function measureStakes(
  board: Board,
  { runs }: FormsResult,
  { stakes, held }: StakesResult,
  reachOn: (run: string) => number,
): readonly string[] {
  const left = new Set<string>();
  const all = new Map<string, Set<number>>();
  for (const { run, along } of [...stakes, ...held]) {
    const places = all.get(run) ?? new Set();
    all.set(run, places.add(along));
  }
  // The longest first: they have the most stakes to tell.
  for (const run of [...runs].sort((a, b) => b.length - a.length)) {
    const places = [...(all.get(run.mark) ?? [])].sort((a, b) => a - b);
    if (places.length === 0) continue;
    const running = {
      origin: stopAt(board, run, 0),
      stops: places.map((place) => stopAt(board, run, place)),
      straight: !run.curved,
      clear: reachOn(run.mark),
    };
    const isRoomy = run.length >= LEAST_MM * board.gridPerMm;
    if (!isRoomy || !drawRunning(board, running)) left.add(run.mark);
  }
  return runs.flatMap(({ mark }) => (left.has(mark) ? [mark] : []));
}

function stopAt(board: Board, { edges }: FormRun, along: number): Stop {
  const place = placeAlong(edges, along);
  return {
    foot: toMm(board, place),
    out: { x: Math.cos(place.outward), y: Math.sin(place.outward) },
    text: lengthText(board, along),
  };
}

/** On a run shorter than this on the output stakes aren't measured, mm. */
const LEAST_MM = 3;
