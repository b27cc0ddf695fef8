import type { MatchLine } from '../../drawing/matchLines.ts';
import type { Box } from '../../geometry/box.ts';
import type { Rect } from '../page.ts';

/** A part of a plan that goes over several pages. */
export interface Tile {
  /** 1, 2, 3… row by row, from the upper left. */
  readonly number: number;
  /** What this part shows alone, up to its match lines, grid units. */
  readonly own: Box;
  /** As `own`, but without end where no other part lies: what is there belongs to this one. */
  readonly holds: Box;
  /** Middle of what its page shows: its own and the overlap with its neighbours. */
  readonly centre: { readonly x: number; readonly y: number };
}

export interface Tiling {
  readonly tiles: readonly Tile[];
  readonly lines: readonly MatchLine[];
}

/** How far parts reach over each other, mm of paper: wide enough to lay one on the other. */
export const OVERLAP_MM = 16;
/** More parts than this nobody lays out on a tailgate. */
export const PARTS_MOST = 24;
/** Match lines reach beyond the plan so far, mm. */
const BEYOND_MM = 5;

/** What stands along a match line, longer words first. */
type Wording = (letters: string, part: number) => readonly string[];

/**
 * The fewest parts, all alike, in which a plan goes into a room on paper.
 * @param needed Round all that must be seen, grid units.
 * @param room Of one page, mm, clear of its frame.
 * @param say What stands along a match line.
 * @returns Nothing where there would be more parts than anybody wants.
 */
export function tilingOf(
  needed: Box,
  room: Pick<Rect, 'width' | 'height'>,
  perMm: number,
  say: Wording,
): Tiling | undefined {
  const columns = partsOf((needed.maxX - needed.minX) / perMm, room.width);
  const rows = partsOf((needed.maxY - needed.minY) / perMm, room.height);
  if (columns * rows > PARTS_MOST) return undefined;
  const xs = cuts(needed.minX, needed.maxX, columns);
  const ys = cuts(needed.minY, needed.maxY, rows).reverse();
  const over = (OVERLAP_MM / 2) * perMm;
  const tiles = Array.from({ length: columns * rows }, (_, i): Tile => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    const own = { minX: xs[column]!, maxX: xs[column + 1]!, minY: ys[row + 1]!, maxY: ys[row]! };
    const seen = {
      minX: own.minX - (column > 0 ? over : 0),
      maxX: own.maxX + (column < columns - 1 ? over : 0),
      minY: own.minY - (row < rows - 1 ? over : 0),
      maxY: own.maxY + (row > 0 ? over : 0),
    };
    return {
      number: i + 1,
      own,
      holds: {
        minX: column > 0 ? own.minX : Number.NEGATIVE_INFINITY,
        maxX: column < columns - 1 ? own.maxX : Number.POSITIVE_INFINITY,
        minY: row < rows - 1 ? own.minY : Number.NEGATIVE_INFINITY,
        maxY: row > 0 ? own.maxY : Number.POSITIVE_INFINITY,
      },
      centre: { x: (seen.minX + seen.maxX) / 2, y: (seen.minY + seen.maxY) / 2 },
    };
  });
  return { tiles, lines: linesBetween(needed, xs, ys, tiles, perMm, say) };
}

/** One when it fits; else so many that each, with the overlap, fits. */
function partsOf(size: number, room: number): number {
  if (size <= room) return 1;
  if (size / 2 + OVERLAP_MM / 2 <= room) return 2;
  return Math.max(3, Math.ceil(size / Math.max(1, room - OVERLAP_MM)));
}

function cuts(low: number, high: number, parts: number): number[] {
  return Array.from({ length: parts + 1 }, (_, i) => Math.round(low + ((high - low) * i) / parts));
}

function linesBetween(
  { minX, maxX, minY, maxY }: Box,
  xs: readonly number[],
  ys: readonly number[],
  tiles: readonly Tile[],
  perMm: number,
  say: Wording,
): readonly MatchLine[] {
  const beyond = BEYOND_MM * perMm;
  const columns = xs.length - 1;
  const inner = (places: readonly number[]) => places.slice(1, -1);
  const part = (column: number, row: number) => tiles[row * columns + column]!;
  const upright = inner(xs).map((x, i): MatchLine => {
    const letters = lettersOf(i);
    return {
      from: { x, y: minY - beyond },
      to: { x, y: maxY + beyond },
      said: inner([...ys, 0]).flatMap((_, row) => {
        const [left, right] = [part(i, row), part(i + 1, row)];
        const stretch = { from: { x, y: left.own.minY }, to: { x, y: left.own.maxY } };
        return [
          { ...stretch, texts: say(letters, right.number), toward: { x: -1, y: 0 } },
          { ...stretch, texts: say(letters, left.number), toward: { x: 1, y: 0 } },
        ];
      }),
    };
  });
  const level = inner(ys).map((y, i): MatchLine => {
    const letters = lettersOf(upright.length + i);
    return {
      from: { x: minX - beyond, y },
      to: { x: maxX + beyond, y },
      said: inner([...xs, 0]).flatMap((_, column) => {
        const [above, below] = [part(column, i), part(column, i + 1)];
        const stretch = { from: { x: above.own.minX, y }, to: { x: above.own.maxX, y } };
        return [
          { ...stretch, texts: say(letters, below.number), toward: { x: 0, y: 1 } },
          { ...stretch, texts: say(letters, above.number), toward: { x: 0, y: -1 } },
        ];
      }),
    };
  });
  return [...upright, ...level];
}

/** AA, BB, CC…: doubled, since single ones name corners. */
function lettersOf(index: number): string {
  return String.fromCharCode(65 + index).repeat(2);
}

/** Whether a place belongs to a part. A place on a match line belongs to the part below and to the right of it. */
export function isOn({ holds: { minX, maxX, minY, maxY } }: Tile, x: number, y: number): boolean {
  return x >= minX && x < maxX && y > minY && y <= maxY;
}
