import type { Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { MeshPiece, MeshPlan } from './plan.ts';
import { directionOf } from './rows.ts';

/** Where two pieces of mesh lie over each other. */
export interface MeshLap {
  /** Marks of the two; the second lies on top. */
  readonly between: readonly [number, number];
  readonly corners: readonly Point[];
  /** How far they lie over each other: the shorter side. */
  readonly lap: Grid;
  readonly length: Grid;
}

/** A side of a piece, or a part of it; hidden under a piece that is laid later. */
export interface MeshSide {
  readonly from: Point;
  readonly to: Point;
  readonly hidden: boolean;
}

interface Placed {
  readonly mark: number;
  readonly u: readonly [number, number];
  readonly v: readonly [number, number];
}

/** Grid rounding makes sides that are one differ by one unit at most. */
const SLACK = 2;

/** Every lap of a plan. Pieces are laid in the order of their numbers, so the later one lies on top. */
export function lapsOf({ angle, pieces }: MeshPlan): readonly MeshLap[] {
  const placed = pieces.map(inFrame);
  const at = toGround(angle);
  return placed.flatMap((upper, i) =>
    placed.slice(0, i).flatMap((under): readonly MeshLap[] => {
      const [left, right] = shared(under.u, upper.u);
      const [low, high] = shared(under.v, upper.v);
      const [long, wide] = [right - left, high - low];
      if (long <= SLACK || wide <= SLACK) return [];
      return [
        {
          between: [under.mark, upper.mark],
          corners: [at(left, low), at(right, low), at(right, high), at(left, high)],
          lap: Math.round(Math.min(long, wide)),
          length: Math.round(Math.max(long, wide)),
        },
      ];
    }),
  );
}

/** The four sides of every piece, parted where a piece that is laid later covers them. */
export function sidesOf({ angle, pieces }: MeshPlan): readonly (readonly MeshSide[])[] {
  const placed = pieces.map(inFrame);
  const at = toGround(angle);
  return placed.map(({ u, v }, i) => {
    const over = placed.slice(i + 1);
    const along = v.flatMap((height) =>
      parted(
        u,
        over.filter((one) => isWithin(height, one.v)).map((one) => one.u),
      ).map(({ from, to, hidden }) => ({ from: at(from, height), to: at(to, height), hidden })),
    );
    const across = u.flatMap((place) =>
      parted(
        v,
        over.filter((one) => isWithin(place, one.u)).map((one) => one.v),
      ).map(({ from, to, hidden }) => ({ from: at(place, from), to: at(place, to), hidden })),
    );
    return [...along, ...across];
  });
}

/** A stretch parted into what others cover of it and what they don't. */
function parted(
  [from, to]: readonly [number, number],
  covers: readonly (readonly [number, number])[],
): readonly { readonly from: number; readonly to: number; readonly hidden: boolean }[] {
  const inner = covers.flat().filter((one) => one > from + SLACK && one < to - SLACK);
  const stops = [from, ...inner.sort((a, b) => a - b), to];
  return stops.slice(1).flatMap((stop, i) => {
    const start = stops[i]!;
    if (stop - start <= 0) return [];
    const middle = (start + stop) / 2;
    const hidden = covers.some(([low, high]) => low < middle && middle < high);
    return [{ from: start, to: stop, hidden }];
  });
}

function isWithin(value: number, [low, high]: readonly [number, number]): boolean {
  return value > low + SLACK && value < high - SLACK;
}

function shared(
  a: readonly [number, number],
  b: readonly [number, number],
): readonly [number, number] {
  return [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
}

/** A piece in the rows' own frame: u along them, v across. */
function inFrame({ mark, corner: { x, y }, angle, length, width }: MeshPiece): Placed {
  const [cos, sin] = directionOf(angle);
  const [u, v] = [x * cos + y * sin, y * cos - x * sin];
  return { mark, u: [u, u + length], v: [v, v + width] };
}

function toGround(angle: number): (u: number, v: number) => Point {
  const [cos, sin] = directionOf(angle);
  return (u, v) => ({ x: u * cos - v * sin, y: u * sin + v * cos });
}
