import { boxesMeet } from '../../geometry/box.ts';
import { doubledAreaWithin, isConvex } from '../../geometry/window.ts';
import { carve } from './carve.ts';
import { joinStretches, ringArea } from './edges.ts';
import type { Layout, Member } from './layout.ts';
import { traceOf } from './shapes.ts';
import { withoutSlivers } from './slivers.ts';
import { stretchesOf } from './stretches.ts';

/**
 * Area of pads and patches together before anything is cut out, overlaps counted once, square grid units; nothing when
 * the clipping failed.
 *
 * Where at most two lie over each other, and one of them is convex and straight (a broken corner nearly always is), the
 * overlap is found by cutting the other to it; otherwise they are united by the clipper.
 */
export function grossArea(layout: Layout): number | undefined {
  const concrete = layout.members.filter(({ part }) => part === 'pad' || part === 'patch');
  const sum = concrete.reduce((total, { feature }) => total + traceOf(feature).area, 0);
  const pairs = concrete.flatMap((a, i) =>
    concrete.slice(i + 1).flatMap((b) => (boxesMeet(a.chain.box, b.chain.box, 0) ? [[a, b]] : [])),
  );
  if (pairs.length === 0) return sum;
  const overlap = pairs.length === 1 ? overlapOf(pairs[0]![0]!, pairs[0]![1]!) : undefined;
  return overlap === undefined ? unitedArea(layout) : sum - overlap;
}

/** Area that two members share; nothing when neither is convex or one has arcs. */
function overlapOf(a: Member, b: Member): number | undefined {
  if (hasArcs(a) || hasArcs(b)) return undefined;
  if (isConvex(b.chain.points)) return doubledAreaWithin(a.chain.points, b.chain.points) / 2;
  if (isConvex(a.chain.points)) return doubledAreaWithin(b.chain.points, a.chain.points) / 2;
  return undefined;
}

function hasArcs({ feature: { shape } }: Member): boolean {
  return shape.form === 'round' || shape.corners.some(({ rise }) => rise !== 0);
}

function unitedArea(layout: Layout): number | undefined {
  const only = onlyConcrete(layout);
  const united = carve(only);
  if (!united.ok) return undefined;
  const { pieces } = withoutSlivers(united.value.pieces, layout.tolerance);
  const rings = pieces.flatMap(({ outer, holes }) => [outer, ...holes]);
  return stretchesOf(only, rings, united.value.grid)
    .map((stretches) => ringArea(joinStretches(only, stretches).edges))
    .reduce((total, area) => total + area, 0);
}

/** The layout with nothing but pads and patches, which come first in it. */
function onlyConcrete({ members, welded, tolerance }: Layout): Layout {
  const kept = members.filter(({ part }) => part === 'pad' || part === 'patch');
  const count = kept.length;
  const meets = new Uint8Array(count * count);
  for (let a = 0; a < count; a++) {
    for (let b = 0; b < count; b++) meets[a * count + b] = welded.meets[a * members.length + b]!;
  }
  const chains = welded.chains.slice(0, count);
  return { members: kept, welded: { chains, meets, moves: welded.moves }, tolerance };
}
