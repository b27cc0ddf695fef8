import { boxOf } from '../../geometry/box.ts';
import { distanceToEdge, distanceToRing, locate } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { placeAlong } from '../forms/along.ts';
import { DRESSED } from '../forms/rules.ts';
import type { NetPour } from '../outline/pour.ts';
import { traceOf } from '../outline/shapes.ts';
import type { FormRun, FormsResult } from '../result.ts';
import type { Ground } from '../stakes/clearOf.ts';
import type { FormSite } from '../stakes/formSite.ts';
import { addBar, type BarField, barField, barsNear } from './barField.ts';
import {
  cornerNeed,
  type FreeEnd,
  type InsideNeed,
  runEnds,
  type Which,
  wayAt,
} from './corners.ts';
import type { BoardEnd } from './plan.ts';
import { type Bar, barOf, boxIn, clearPast, placeIn, type Strip } from './roomPast.ts';
import { LAP_GAP, LEAST_LAP } from './rules.ts';

/** What becomes of the boards at the ends of every straight run, and the places that must be said. */
export interface Laid {
  readonly ends: ReadonlyMap<FormRun, Readonly<Record<Which, BoardEnd>>>;
  /** Corners where neither board can pass. */
  readonly tight: readonly Point[];
  /** Ends where a board stops against what stands there, and where it is lapped onto it. */
  readonly stops: readonly Point[];
  readonly laps: readonly Point[];
}

/** An end before it is known how far past its corner the board may run. */
interface Settled extends Omit<BoardEnd, 'room'> {
  /** Whether it may run past what it needs where there is room. */
  readonly long: boolean;
  /** The run round the corner that it passes. */
  readonly beside?: FormRun;
}

/** The boards as they are being laid: each takes its ground from those that come after it. */
interface Laying {
  readonly ends: Map<FormRun, { [which in Which]?: Settled }>;
  readonly field: BarField;
  readonly ground: Ground;
  /** Thickness of the boards, and what they may lie into something: readings of one line differ. */
  readonly width: Grid;
  readonly slack: Grid;
}

/**
 * All round each board passes the corner at its end and butts at its start, so that each has an end that may run long.
 * Where the ground past a corner isn't clear for it the other board passes there. At an inside corner the shorter of the
 * two runs comes to the corner. Ground is given to one board alone, in the order of the runs.
 */
export function layBoards(job: Job, pour: NetPour, forms: FormsResult, site: FormSite): Laid {
  const { formBoard, boards, closeEnough } = job.practices;
  const width = DRESSED[formBoard].thickness;
  const laying: Laying = {
    ends: new Map(),
    field: barField(site.standing),
    ground: site.ground,
    width,
    slack: closeEnough,
  };
  const found = runEnds(pour, forms);
  const corners = found.flatMap((end) =>
    end.is === 'corner' ? [{ ...end, need: cornerNeed(end.turn, width) }] : [],
  );
  // First those that need no ground beyond, so that the others see each board as it lies.
  for (const { before, after, need } of corners) {
    if (need.is === 'flat') {
      settle(laying, before, 'end', 'flat', 0);
      settle(laying, after, 'start', 'flat', 0);
    } else if (need.is === 'inside') settleInside(laying, before, after, need);
  }
  for (const run of forms.runs) {
    for (const bar of boardBars(laying, run)) addBar(laying.field, bar);
  }
  const tight: Point[] = [];
  for (const { before, after, need, at } of corners) {
    if (need.is === 'outside' && !settleOutside(laying, before, after, need.pass)) tight.push(at);
  }
  const stops: Point[] = [];
  const laps: Point[] = [];
  for (const end of found) {
    if (end.is !== 'end' || end.run.curved) continue;
    const lapped = settleFreeEnd(laying, end, boards.lapOn, job);
    (lapped ? laps : stops).push(end.at);
  }
  const straight = forms.runs.filter(({ curved }) => !curved);
  const ends = new Map(
    straight.map((run) => {
      const start = withRoom(laying, run, 'start', boards.runLong);
      const end = withRoom(laying, run, 'end', boards.runLong);
      return [run, { start, end }];
    }),
  );
  return { ends, tight, stops, laps };
}

function settle(
  laying: Laying,
  run: FormRun,
  which: Which,
  kind: BoardEnd['kind'],
  past: Grid,
  more: Pick<Settled, 'long' | 'beside'> = { long: false },
): void {
  const ends = laying.ends.get(run) ?? {};
  ends[which] = { kind, past, ...more };
  laying.ends.set(run, ends);
  if (past > 0) takeGround(laying, run, which, past);
}

function settleInside(
  laying: Laying,
  before: FormRun,
  after: FormRun,
  { come, short }: InsideNeed,
): void {
  // A bent strip is cut to fit; of two boards the shorter has the less to lose.
  const beforeComes = after.curved || (!before.curved && before.length <= after.length);
  settle(laying, before, 'end', beforeComes ? 'passes' : 'butts', beforeComes ? come : -short);
  settle(laying, after, 'start', beforeComes ? 'butts' : 'passes', beforeComes ? -short : come);
}

/** Whether one of the two boards at an outside corner passes; when none can, both end there. */
function settleOutside(laying: Laying, before: FormRun, after: FormRun, pass: Grid): boolean {
  const passes = (run: FormRun, which: Which, beside: FormRun) =>
    !run.curved && clear(laying, run, which, pass, beside) >= pass;
  if (passes(before, 'end', after)) {
    settle(laying, before, 'end', 'passes', pass, { long: true, beside: after });
    settle(laying, after, 'start', 'butts', 0);
    return true;
  }
  if (passes(after, 'start', before)) {
    settle(laying, before, 'end', 'butts', 0);
    settle(laying, after, 'start', 'passes', pass, { long: true, beside: before });
    return true;
  }
  settle(laying, before, 'end', 'stops', 0);
  settle(laying, after, 'start', 'stops', 0);
  return false;
}

/** Whether a board is lapped onto what stands where its run ends; else it stops there. */
function settleFreeEnd(
  laying: Laying,
  { run, which, against }: FreeEnd,
  lapOn: Grid,
  job: Job,
): boolean {
  const beside = job.features.find(({ id }) => id === against.feature);
  const room = Math.min(lapOn, clear(laying, run, which, lapOn));
  const strip = stripPast(laying, run, which);
  const lapped = room >= LEAST_LAP && beside !== undefined && holds(traceOf(beside).chain, strip);
  settle(laying, run, which, lapped ? 'laps' : 'stops', lapped ? room : 0, { long: true });
  return lapped;
}

/** Whether the side of something runs along a strip, near enough to hold a board there. */
function holds(
  { points, closed }: { readonly points: readonly Point[]; readonly closed: boolean },
  strip: Strip,
): boolean {
  const at = placeIn(strip, LEAST_LAP, 0);
  if (closed) return locate(at, points) !== 'outside' || distanceToRing(at, points) <= LAP_GAP;
  return points.some((point, i) => i > 0 && distanceToEdge(at, points[i - 1]!, point) <= LAP_GAP);
}

/** An end with the room past its corner, which its board then takes. */
function withRoom(laying: Laying, run: FormRun, which: Which, runLong: Grid): BoardEnd {
  const { kind, past, long, beside } = laying.ends.get(run)![which]!;
  if (!long || runLong <= past) return { kind, past, room: past };
  const room = Math.max(past, clear(laying, run, which, runLong, beside));
  if (room > past) takeGround(laying, run, which, room);
  return { kind, past, room };
}

/** Nearer to its corner than this many thicknesses a bent board is cut to fit the one that passes. */
const CUT_TO_FIT = 3;

/**
 * How far past its corner a board has clear ground, `reach` at most. Along a wall that can't be poured against there is
 * none: the wall goes on.
 * @param beside The run round the corner: its board begins where this one passes.
 */
function clear(laying: Laying, run: FormRun, which: Which, reach: Grid, beside?: FormRun): Grid {
  if (run.kind === 'wall-formed') return 0;
  const strip = stripPast(laying, run, which);
  const fits = ({ points }: Bar) =>
    !beside?.curved || distanceToRing(strip.at, points) <= CUT_TO_FIT * laying.width;
  const near = barsNear(laying.field, boxOf(boxIn(strip, 0, reach)));
  const bars = near.filter(
    (bar) =>
      bar.run === undefined || (bar.run !== run.mark && !(bar.run === beside?.mark && fits(bar))),
  );
  return clearPast(strip, reach, laying.slack, { ...laying.ground, bars });
}

/** The ground past one end of a run. */
function stripPast({ width }: Laying, run: FormRun, which: Which): Strip {
  const way = wayAt(run, which);
  const at = which === 'end' ? run.edges.at(-1)!.to : run.edges[0]!.from;
  const along = which === 'end' ? way : { x: -way.x, y: -way.y };
  return { at, along, out: { x: way.y, y: -way.x }, width };
}

function takeGround(laying: Laying, run: FormRun, which: Which, past: Grid): void {
  addBar(laying.field, barOf(boxIn(stripPast(laying, run, which), 0, past), run.mark));
}

/** The ground under the board of a run, between its corners. */
function boardBars(laying: Laying, run: FormRun): readonly Bar[] {
  if (run.curved) return bentBars(run, laying.width);
  const { start, end } = laying.ends.get(run) ?? {};
  const from = -run.length - Math.min(0, start?.past ?? 0);
  const to = Math.min(0, end?.past ?? 0);
  return from < to ? [barOf(boxIn(stripPast(laying, run, 'end'), from, to), run.mark)] : [];
}

/** A bent board as short straight ones, none turning more than this. */
const BENT_STEP = Math.PI / 16;

function bentBars(run: FormRun, width: Grid): readonly Bar[] {
  const turn = run.edges.reduce((sum, { arc }) => sum + Math.abs(arc?.sweep ?? 0), 0);
  const steps = Math.ceil(turn / BENT_STEP);
  const faces = Array.from({ length: steps + 1 }, (_, i) =>
    placeAlong(run.edges, (i / steps) * run.length),
  );
  return faces.slice(1).map((b, i) => {
    const a = faces[i]!;
    const out = ({ x, y, outward }: typeof a) => ({
      x: x + width * Math.cos(outward),
      y: y + width * Math.sin(outward),
    });
    return barOf([a, b, out(b), out(a)], run.mark);
  });
}
