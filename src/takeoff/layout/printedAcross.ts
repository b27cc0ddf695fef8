import type { Point } from '../../geometry/point.ts';
import type { UnitStyle } from '../../job/job.ts';
import { printedLength } from '../../units/printed.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import { between } from './corners.ts';

/** A place or a way, in any unit. */
interface Way {
  readonly x: number;
  readonly y: number;
}

/** The two ways that a form is measured along, square to each other, each of length 1. */
export interface Axes {
  readonly u: Way;
  readonly v: Way;
}

/** Along the longest straight edge, turned so that u runs nearest to east. */
export function axesAlong(
  edges: readonly (Pick<PourEdge, 'from' | 'to' | 'length'> & { readonly arc?: unknown })[],
): Axes {
  let longest: (typeof edges)[number] | undefined;
  for (const edge of edges) {
    if (!edge.arc && (!longest || edge.length > longest.length)) longest = edge;
  }
  let u: Way = { x: 1, y: 0 };
  if (longest) {
    const { from, to } = longest;
    const length = between(from, to) || 1;
    u = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  }
  // Quarter turns until it runs between north-east and south-east.
  while (u.x < Math.abs(u.y) - 1e-9) u = { x: -u.y, y: u.x };
  return { u, v: { x: -u.y, y: u.x } };
}

/**
 * A length across a form, figured from what lies between its ends along both axes as it is printed: who builds to the
 * printed sides has the printed diagonals. Grid units, a float. Source: common practice.
 */
export function printedAcross(from: Point, to: Point, { u, v }: Axes, units: UnitStyle): number {
  const apart = { x: to.x - from.x, y: to.y - from.y };
  const along = printedLength(apart.x * u.x + apart.y * u.y, units);
  const out = printedLength(apart.x * v.x + apart.y * v.y, units);
  return Math.hypot(along, out);
}

/** The axes that the sizes between two places of a pour are printed along; none where no edge of it ends at both. */
export function axesBetween(
  pour: NetPour | undefined,
): (from: Point, to: Point) => Axes | undefined {
  const outers = (pour?.pieces ?? []).flatMap(({ rings }) => rings.filter(({ hole }) => !hole));
  const places = outers.map(({ edges }) => new Set(edges.map(({ from }) => placeOf(from))));
  const axes = outers.map(({ edges }) => axesAlong(edges));
  return (from, to) =>
    axes[places.findIndex((one) => one.has(placeOf(from)) && one.has(placeOf(to)))];
}

function placeOf({ x, y }: Point): string {
  return `${x} ${y}`;
}
