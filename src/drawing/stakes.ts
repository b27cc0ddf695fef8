import type { Point } from '../geometry/point.ts';
import type { HeldPlace, Stake, StakesResult } from '../takeoff/result.ts';
import { HALF_STAKE } from '../takeoff/stakes/rules.ts';
import { addBox, addLine, FEATURE, isBoxFree, SYMBOL, TEXT } from './clearance.ts';
import { type Board, toMm } from './dimension/board.ts';
import type { BoardBand } from './laidBoards.ts';
import type { Mark, SymbolName } from './marks.ts';
import { polyline } from './paths.ts';

/** A stake is drawn at its own size, but never smaller than this, mm of output. */
export const STAKE_MM = 1.8;
export const WEIGHT_MM = 2.4;
export const END_BAR_MM = 2.4;
export const FOOT_MM = 1.5;
/** How far out the foot of a kicker is drawn where its place isn't told, and the strut of a spreader. */
const KICKER_MM = 4.5;
const SPREADER_MM = 4;
/** Between the line of the form's face and a stake inside it. */
const INSIDE_GAP_MM = 0.7;
export const LOOK_HERE_MM = 3.4;

/**
 * Stakes where they are driven, what holds the form where none can be, and a mark to look at wherever a rule is broken.
 * @param off From the inside face to the middle of a stake, grid units.
 */
export function drawStakes(
  board: Board,
  { stakes, held, broken }: StakesResult,
  band: BoardBand,
  off: number,
): readonly Mark[] {
  const size = Math.max(STAKE_MM, (2 * HALF_STAKE) / board.gridPerMm);
  const outside = { board, size, shift: clearOfBand(board, band, off, size) };
  return [
    // Stakes alike follow each other, so that they are painted in one go.
    ...stakes.flatMap((stake) => (stake.kicker ? kicker(outside, stake) : [])),
    ...stakes.filter(({ hand }) => hand === undefined).map((one) => driven(outside, one, 'stake')),
    ...stakes.flatMap((one) =>
      one.hand === undefined ? [] : [driven(outside, one, 'stake-hand')],
    ),
    ...held.flatMap((place) => holding(outside, place, off)),
    ...broken.flatMap(({ at }) => lookHere(board, at)),
  ];
}

/** How far out of the inside face of a run its stakes, weights and braces are drawn at most, mm of output. */
export function stakesReach(
  board: Board,
  { stakes, held }: StakesResult,
  run: string,
  { outer }: BoardBand,
): number {
  const size = Math.max(STAKE_MM, (2 * HALF_STAKE) / board.gridPerMm);
  const kicked = stakes.some((stake) => stake.run === run && stake.kicker);
  const weighted = held.some((place) => place.run === run && place.how !== 'inside-stake');
  const braced = kicked ? size + KICKER_MM + FOOT_MM : 0;
  const holds = weighted ? SPREADER_MM + END_BAR_MM : 0;
  return outer / board.gridPerMm + Math.max(size, braced, holds) + 0.6;
}

interface Outside {
  readonly board: Board;
  /** mm of output. */
  readonly size: number;
  /** How much farther out than it stands a stake is drawn, so that it lies beside its board: grid units. */
  readonly shift: number;
}

function clearOfBand(
  { gridPerMm }: Board,
  { outer }: BoardBand,
  off: number,
  size: number,
): number {
  return Math.max(0, outer + (size / 2) * gridPerMm - off);
}

function moved({ x, y }: Point, angle: number, distance: number): Point {
  return { x: x + distance * Math.cos(angle), y: y + distance * Math.sin(angle) };
}

function driven({ board, size, shift }: Outside, { at, outward }: Stake, symbol: SymbolName): Mark {
  return placed(board, symbol, moved(at, outward, shift), outward, size);
}

/** A symbol that nothing is written over. */
function placed(board: Board, symbol: SymbolName, at: Point, angle: number, size: number): Mark {
  const { x, y } = toMm(board, at);
  const half = size / 2 + 0.2;
  addBox(board.clearance, SYMBOL, {
    x,
    y,
    halfWidth: half,
    halfHeight: half,
    cos: Math.cos(angle),
    sin: Math.sin(angle),
  });
  return { kind: 'symbol', layer: 'forms', symbol, at, size, angle };
}

function brace(board: Board, from: Point, to: Point): Mark {
  addLine(board.clearance, FEATURE, toMm(board, from), toMm(board, to));
  return { kind: 'line', layer: 'forms', style: 'brace', path: polyline([from, to]) };
}

/** The brace of a stake, out to its foot. */
function kicker({ board, size, shift }: Outside, { at, outward }: Stake): readonly Mark[] {
  const from = moved(at, outward, shift);
  const foot = moved(from, outward, (size / 2 + KICKER_MM) * board.gridPerMm);
  return [brace(board, from, foot), placed(board, 'dot', foot, outward, FOOT_MM)];
}

/** What holds the form at a place behind which no stake can be driven. */
function holding(outside: Outside, place: HeldPlace, off: number): readonly Mark[] {
  const { board, size, shift } = outside;
  const { gridPerMm } = board;
  const { at, outward, how, to } = place;
  const behind = moved(at, outward, shift - (size / 2) * gridPerMm);
  switch (how) {
    case 'inside-stake': {
      const face = moved(at, outward, -off);
      const inside = to ?? moved(face, outward, -HALF_STAKE);
      const gap = (size / 2 + INSIDE_GAP_MM) * gridPerMm;
      const depth = Math.hypot(inside.x - face.x, inside.y - face.y);
      const seen = moved(inside, outward, -Math.max(0, gap - depth));
      return [placed(board, 'stake-inside', seen, outward, size)];
    }
    case 'kicker': {
      const foot = farEnd(behind, outward, KICKER_MM * gridPerMm, to);
      return [brace(board, behind, foot), placed(board, 'dot', foot, outward, FOOT_MM)];
    }
    case 'spreader': {
      const far = farEnd(behind, outward, SPREADER_MM * gridPerMm, to);
      return [
        brace(board, behind, far),
        placed(board, 'end-bar', behind, outward, END_BAR_MM),
        placed(board, 'end-bar', far, outward, END_BAR_MM),
      ];
    }
    case 'weight': {
      const beside = moved(behind, outward, (WEIGHT_MM / 2 + 0.4) * gridPerMm);
      return [placed(board, 'weight', beside, outward, WEIGHT_MM)];
    }
    default:
      return how satisfies never;
  }
}

/** The far end of a brace, no nearer than lets it be seen: a wall may stand right behind the board. */
function farEnd(behind: Point, outward: number, least: number, to: Point | undefined): Point {
  const reach = to ? Math.hypot(to.x - behind.x, to.y - behind.y) : 0;
  return to && reach > least ? to : moved(behind, outward, least);
}

/** From a place to the mark that says to look at it, mm: near ones first. */
const REACHES = [3, 4.5, 6, 8, 11];
const TURNS = 16;

/** A mark near a place, joined to it by a line, clear of stakes and of other marks. */
function lookHere(board: Board, at: Point): readonly Mark[] {
  const half = LOOK_HERE_MM / 2 + 0.2;
  const spots = REACHES.flatMap((reach) =>
    Array.from({ length: TURNS }, (_, i) =>
      moved(at, (i * 2 * Math.PI) / TURNS, reach * board.gridPerMm),
    ),
  );
  const spot =
    spots.find((one) =>
      isBoxFree(
        board.clearance,
        { ...toMm(board, one), halfWidth: half, halfHeight: half, cos: 1, sin: 0 },
        TEXT | SYMBOL,
      ),
    ) ?? at;
  return [brace(board, at, spot), placed(board, 'look-here', spot, 0, LOOK_HERE_MM)];
}
