import type { HeldPlace, Stake, StakesResult } from '../takeoff/result.ts';
import { addBox, SYMBOL } from './clearance.ts';
import { type Board, toMm } from './dimension/board.ts';
import type { Mark } from './marks.ts';

/** A stake is drawn at this size, mm of output, whatever the scale. */
const STAKE_MM = 1.8;
const BLOCKED_MM = 2.6;

/** Stakes where they are driven, and where something else must hold the form, crossed. */
export function drawStakes(board: Board, { stakes, held }: StakesResult): readonly Mark[] {
  return [
    ...stakes.map((stake) => drawn(board, stake, 'stake', STAKE_MM)),
    ...held.map((place) => drawn(board, place, 'stake-blocked', BLOCKED_MM)),
  ];
}

function drawn(
  board: Board,
  { at, outward }: Stake | HeldPlace,
  symbol: 'stake' | 'stake-blocked',
  size: number,
): Mark {
  const half = size / 2 + 0.2;
  const { x, y } = toMm(board, at);
  addBox(board.clearance, SYMBOL, {
    x,
    y,
    halfWidth: half,
    halfHeight: half,
    cos: Math.cos(outward),
    sin: Math.sin(outward),
  });
  return { kind: 'symbol', layer: 'forms', symbol, at, size, angle: outward };
}
