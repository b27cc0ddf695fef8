import type { Point } from '../../geometry/point.ts';
import {
  addBox,
  DIMENSION,
  EVERYTHING,
  isBoxFree,
  isLineFree,
  type Place,
  SYMBOL,
  TEXT,
} from '../clearance.ts';
import { circlePath } from '../paths.ts';
import { textWidth } from '../textSize.ts';
import { along, type Board, type KeyedSize, rule, toGridPoint, toMm, write } from './board.ts';

export interface ToKey {
  readonly what: KeyedSize['what'];
  readonly text: string;
  readonly from: Point;
  readonly to: Point;
  /** What the number points at. */
  readonly target: Place;
  readonly toward: Place;
}

const REACHES = [3.4, 5, 7, 10, 14, 19, 25, 33, 42, 54];
const TURNS = 16;

/**
 * What found no room on the plan goes into the list, and a number in a ring, joined by a line to its place, stands for
 * it. Where not even the number finds room, the list gives the place instead. On a screen nothing is kept.
 */
export function keep(board: Board, { what, text, from, to, target, toward }: ToKey): void {
  if (!board.keeps) return;
  const key = board.keyed.length + 1;
  const marked = markKey(board, String(key), target, toward);
  board.keyed.push({ key, what, text, marked, from, to });
}

function markKey(board: Board, number: string, target: Place, toward: Place): boolean {
  const { height } = board.lettering;
  const small = height * 0.85;
  const radius = Math.max(small * 0.95, textWidth(number, small) / 2 + 0.7);
  const base = Math.atan2(toward.y, toward.x);
  for (const strict of [true, false]) {
    for (const reach of REACHES) {
      for (let i = 0; i < TURNS; i++) {
        const turn = (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * ((2 * Math.PI) / TURNS);
        const way = { x: Math.cos(base + turn), y: Math.sin(base + turn) };
        const middle = along(target, way, reach + radius);
        const box = {
          ...middle,
          halfWidth: radius + 0.4,
          halfHeight: radius + 0.4,
          cos: 1,
          sin: 0,
        };
        if (!isBoxFree(board.clearance, box, EVERYTHING)) continue;
        const foot = along(target, way, 0.4);
        const end = along(target, way, reach);
        const avoid = TEXT | SYMBOL | (strict ? DIMENSION : 0);
        if (!isLineFree(board.clearance, foot, end, avoid)) continue;
        rule(board, 'dimension', DIMENSION, target, end);
        addBox(board.clearance, SYMBOL, box);
        board.marks.push({
          kind: 'line',
          layer: 'dimensions',
          style: 'dimension',
          path: circlePath(toGridPoint(board, middle), radius * board.gridPerMm),
        });
        write(board, {
          text: number,
          at: { x: middle.x, y: middle.y - small / 2 },
          angle: 0,
          anchor: 'middle',
          height: small,
          style: 'dimension',
        });
        return true;
      }
    }
  }
  return false;
}

/** The middle of two grid points, in mm. */
export function middleOf(board: Board, from: Point, to: Point): Place {
  return toMm(board, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
}
