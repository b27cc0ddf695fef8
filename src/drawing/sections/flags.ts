import { addBox, DIMENSION, type Place, SYMBOL } from '../clearance.ts';
import { type Board, rule, toGridPoint, toMm, write } from '../dimension/board.ts';
import type { BreakLines, Flag } from './cut.ts';

/** Where flags stand, mm. */
interface FlagRoom {
  /** The top of what is drawn: below it a line may slant to what it points at. */
  readonly over: number;
  /** The top of all that is there, sizes too: words stand above. */
  readonly top: number;
  /** Words reach no farther to the right than this. */
  readonly right: number;
  readonly lines: BreakLines;
}

/** Between the lines of two flags. */
const APART = 2.6;
const LINE_MM = 4.2;
const SHOULDER = 1.4;
const LEAST_WIDTH = 24;
const TARGET_MM = 0.9;

/**
 * Words over a section, each with a line straight down and then to what it speaks of. The one farthest right stands lowest
 * and its words run on to the right, so that no line meets another, nor any words.
 */
export function writeFlags(board: Board, flags: readonly Flag[], room: FlagRoom): void {
  const { height } = board.lettering;
  const standing = postsOf(board, flags, room);
  let level = room.top + 2.5;
  for (const { flag, target, post } of standing.toReversed()) {
    const lines = room.lines(flag.text, height, room.right - post - SHOULDER - 0.6);
    const base = level + (lines.length - 1) * LINE_MM;
    const shoulder = base + height / 2;
    lines.forEach((text, i) => {
      write(board, {
        text,
        at: { x: post + SHOULDER + 0.6, y: base - i * LINE_MM },
        angle: 0,
        anchor: 'start',
        height,
        style: 'small',
        layer: 'labels',
      });
    });
    const knee: Place = { x: post, y: room.over + 0.8 };
    rule(
      board,
      'dimension',
      DIMENSION,
      { x: post + SHOULDER, y: shoulder },
      { x: post, y: shoulder },
    );
    rule(board, 'dimension', DIMENSION, { x: post, y: shoulder }, knee);
    rule(board, 'dimension', DIMENSION, knee, target);
    point(board, target);
    level = base + LINE_MM + 0.8;
  }
}

interface Post {
  readonly flag: Flag;
  readonly target: Place;
  /** Where its line goes up. */
  readonly post: number;
}

/** Posts in the order of what they point at, apart from each other, and with room for words to the right of the last. */
function postsOf(board: Board, flags: readonly Flag[], { right }: FlagRoom): readonly Post[] {
  const targets = flags
    .map((flag) => ({ flag, target: toMm(board, flag.at) }))
    .toSorted((a, b) => a.target.x - b.target.x || b.target.y - a.target.y);
  const posts: Post[] = [];
  // From the right, no nearer to its end than words need; each to the left of the one before.
  let most = right - LEAST_WIDTH;
  for (const { flag, target } of targets.toReversed()) {
    const post = Math.min(target.x, most);
    posts.push({ flag, target, post });
    most = post - APART;
  }
  return posts.toReversed();
}

/** A dot on what is pointed at. */
function point(board: Board, at: Place): void {
  board.marks.push({
    kind: 'symbol',
    layer: 'labels',
    symbol: 'dot',
    at: toGridPoint(board, at),
    size: TARGET_MM,
    angle: 0,
  });
  addBox(board.clearance, SYMBOL, { ...at, halfWidth: 0.5, halfHeight: 0.5, cos: 1, sin: 0 });
}
