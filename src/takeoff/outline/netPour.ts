import { boxAround, boxOf } from '../../geometry/box.ts';
import type { Chain } from '../../geometry/chain.ts';
import { clip } from '../../geometry/clip.ts';
import type { Feature, Job } from '../../job/job.ts';
import { EXTENT_LIMIT, type Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { type Carved, type CarvedPiece, carve } from './carve.ts';
import { cautionsOf, idleBlockOuts } from './cautions.ts';
import { isBefore, type Joined, joinStretches, ringArea } from './edges.ts';
import { grossArea } from './gross.ts';
import { type Layout, layOut, partOf } from './layout.ts';
import { neckPlaces } from './necks.ts';
import { faultNote, length, outlineNote } from './notes.ts';
import { EDGE_KINDS, type EdgeKind, type NetPour, type PourPiece, type Sliver } from './pour.ts';
import { traceOf } from './shapes.ts';
import { withoutSlivers } from './slivers.ts';
import { stretchesOf } from './stretches.ts';

/** The pour when it can be figured, and what has to be known about it; without a pour a 'stop' note says why. */
export interface NetPourOutcome {
  readonly pour?: NetPour;
  readonly notes: readonly Note[];
}

/**
 * The net pour: (pads ∪ patches) − existing slabs − building footprints − steps − block-outs, where a patch is pour
 * even inside an existing slab, with what each edge of it meets.
 *
 * Lengths are grid units, each edge rounded once, so that lengths by kind add up to the perimeter exactly. Areas are
 * square grid units: exact sums over the corners, with arcs counted as arcs. Source: geometry.
 */
export function netPour(job: Job): NetPourOutcome {
  const stops = stopsOf(job.features);
  if (stops.length > 0) return { notes: stops };
  const layout = layOut(job.features, job.practices.closeEnough);
  const carved = carve(layout);
  if (!carved.ok) return { notes: [outlineNote('clip-failed', 'stop')] };
  const { pieces, slivers } = withoutSlivers(carved.value.pieces, layout.tolerance);
  if (pieces.length === 0) return { notes: [coveredNote(layout)] };
  const gross = grossArea(layout);
  if (gross === undefined) return { notes: [outlineNote('clip-failed', 'stop')] };
  const { pour, sided } = assemble(layout, carved.value, pieces, slivers, gross);
  const notes = cautionsOf(layout, pour);
  const necks = neckPlaces(sided, layout.tolerance);
  if (necks.length > 0) {
    const facts = { closeEnough: length(layout.tolerance) };
    notes.push(outlineNote('narrow-neck', 'caution', { at: necks, facts }));
  }
  notes.push(...idleNotes(job.features, layout, pour));
  return { pour, notes };
}

/** Everything that forbids a pour: no figure is made from a sketch that doesn't say what it means. */
function stopsOf(features: readonly Feature[]): Note[] {
  const notes: Note[] = [];
  const boxes = [];
  let concrete = 0;
  for (const feature of features) {
    if (feature.kind === 'pad' || feature.kind === 'patch') concrete++;
    if (!partOf(feature)) continue;
    const { fault, chain } = traceOf(feature);
    if (fault) notes.push(faultNote(feature, fault));
    else boxes.push(chain.box);
  }
  if (concrete === 0) notes.push(outlineNote('no-pad', 'stop'));
  if (notes.length > 0) return notes;
  const { minX, minY, maxX, maxY } = boxAround(boxes);
  const extent = Math.max(maxX - minX, maxY - minY);
  if (extent > EXTENT_LIMIT) {
    return [outlineNote('too-large', 'stop', { facts: { extent: length(extent) } })];
  }
  return notes;
}

/** Why nothing is left to pour. */
function coveredNote({ members }: Layout): Note {
  const pads = members.filter(({ part }) => part === 'pad');
  const concrete = members.filter(({ part }) => part === 'pad' || part === 'patch');
  const rings = concrete.map(({ chain }) => chain.points);
  const slab = members.find(({ part, chain }) => {
    if (part !== 'existing') return false;
    const left = clip(rings, [{ outer: chain.points, kept: [] }]);
    return left.ok && left.value.polygons.length === 0;
  });
  const features = pads.map(({ feature }) => feature.id);
  if (slab) {
    return outlineNote('pad-inside-existing-slab', 'stop', {
      features: [...features, slab.feature.id],
    });
  }
  const covers = members.filter(({ part }) => part === 'existing' || part === 'cutter');
  return outlineNote('pad-covered', 'stop', {
    features: [...features, ...covers.map(({ feature }) => feature.id)],
  });
}

interface Ringed {
  readonly joined: Joined;
  readonly hole: boolean;
}

function assemble(
  layout: Layout,
  carved: Carved,
  pieces: readonly CarvedPiece[],
  slivers: readonly Sliver[],
  grossArea: number,
): { pour: NetPour; sided: Chain[] } {
  const rings = pieces.flatMap(({ outer, holes }) => [outer, ...holes]);
  const stretched = stretchesOf(layout, rings, carved.grid);
  const sided: Chain[] = [];
  let next = 0;
  const take = (hole: boolean): Ringed => {
    const stretches = stretched[next]!;
    const joined = joinStretches(layout, stretches);
    const points = stretches.map(({ from }) => from);
    // A block-out that stands alone comes near nothing.
    if (!(hole && rings[next]!.lone !== undefined)) {
      sided.push({ points, tags: joined.edgeOf, closed: true, box: boxOf(points) });
    }
    next++;
    return { joined, hole };
  };
  const sorted = pieces
    .map(({ holes }) => [take(false), ...holes.map(() => take(true)).sort(inOrder)])
    .sort((a, b) => inOrder(a[0]!, b[0]!));
  const lengthByKind = Object.fromEntries(EDGE_KINDS.map((kind) => [kind, 0])) as Record<
    EdgeKind,
    Grid
  >;
  let perimeter = 0;
  let patchLength = 0;
  let area = 0;
  const poured = sorted.map((piece): PourPiece => {
    let pieceArea = 0;
    for (const { joined } of piece) {
      pieceArea += ringArea(joined.edges);
      for (const edge of joined.edges) {
        lengthByKind[edge.kind] += edge.length;
        perimeter += edge.length;
        if (edge.patch) patchLength += edge.length;
      }
    }
    area += pieceArea;
    return {
      rings: piece.map(({ joined, hole }) => ({ hole, edges: joined.edges })),
      area: pieceArea,
    };
  });
  const { engine, retries } = carved;
  const pour = {
    pieces: poured,
    area,
    grossArea,
    perimeter,
    lengthByKind,
    patchLength,
    slivers,
    clip: { engine, retries },
  };
  return { pour, sided };
}

function inOrder(a: Ringed, b: Ringed): number {
  return isBefore(a.joined.place, b.joined.place) ? -1 : 1;
}

/** Features that were drawn to change the pour and don't. */
function idleNotes(features: readonly Feature[], layout: Layout, pour: NetPour): Note[] {
  const edges = pour.pieces.flatMap(({ rings }) => rings.flatMap((ring) => ring.edges));
  const notes: Note[] = [];
  const blockOuts = features.filter(({ kind }) => kind === 'block-out').map(({ id }) => id);
  const idle = idleBlockOuts(blockOuts, edges);
  if (idle.length > 0) notes.push(outlineNote('block-out-outside', 'caution', { features: idle }));
  const pads = layout.members.filter(({ part }) => part === 'pad');
  if (pads.length > 1) {
    const met = new Set(edges.map(({ feature }) => feature));
    for (const { feature } of pads) {
      if (!met.has(feature.id) && addsNothing(layout, feature)) {
        notes.push(outlineNote('adds-nothing', 'caution', { features: [feature.id] }));
      }
    }
  }
  for (const feature of features) {
    if (feature.kind === 'no-stake-zone' && traceOf(feature).fault) {
      notes.push(outlineNote('zone-ignored', 'caution', { features: [feature.id] }));
    }
    if (feature.kind === 'utility-line' && traceOf(feature).fault) {
      notes.push(outlineNote('line-ignored', 'caution', { features: [feature.id] }));
    }
  }
  return notes;
}

/** Whether the pour would be the same without a pad. */
function addsNothing({ members }: Layout, pad: Feature): boolean {
  const own = members.find(({ feature }) => feature === pad)!;
  const rest = members.filter(
    ({ part, feature }) => feature !== pad && part !== 'line' && part !== 'existing',
  );
  const kept = members.filter(({ part }) => part === 'patch').map(({ chain }) => chain.points);
  const cutters = [
    ...rest.map(({ chain }) => ({ outer: chain.points, kept: [] })),
    ...members
      .filter(({ part }) => part === 'existing')
      .map(({ chain }) => ({ outer: chain.points, kept })),
  ];
  const left = clip([own.chain.points], cutters);
  return left.ok && left.value.polygons.length === 0;
}
