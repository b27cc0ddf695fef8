import { doubledArea } from '../../src/geometry/area.ts';
import { clip } from '../../src/geometry/clip.ts';
import { carve } from '../../src/takeoff/outline/carve.ts';
import { joinStretches } from '../../src/takeoff/outline/edges.ts';
import {
  type Layout,
  LEAST_TOLERANCE,
  layOut,
  type Part,
} from '../../src/takeoff/outline/layout.ts';
import { netPour } from '../../src/takeoff/outline/netPour.ts';
import { EDGE_KINDS, type NetPour } from '../../src/takeoff/outline/pour.ts';
import { withoutSlivers } from '../../src/takeoff/outline/slivers.ts';
import { stretchesOf } from '../../src/takeoff/outline/stretches.ts';
import { walkedLengths } from './edgeWalk.ts';
import { doubledExactArea } from './exactArea.ts';
import { MOVES, moved } from './moved.ts';
import { secondOpinion } from './secondOpinion.ts';
import { slabJob } from './slabJobs.ts';

/** A relative error no larger than this. */
const CLOSE = 1e-9;
/** Areas smaller than this (about one square inch) are compared as if they were this large. */
const SQUARE_INCH = 8128 * 8128;

/** The area of the pour of welded outlines by slab decomposition, square grid units. */
export function exactArea({ members }: Layout): number {
  const closed = members.filter(({ part, chain }) => part !== 'line' && chain.points.length > 2);
  const isIn = (windings: readonly number[]): boolean => {
    const within = new Set<Part>();
    windings.forEach((winding, i) => {
      if (winding !== 0) within.add(closed[i]!.part);
    });
    if (within.has('cutter')) return false;
    return within.has('patch') || (within.has('pad') && !within.has('existing'));
  };
  return (
    doubledExactArea(
      closed.map(({ chain }) => chain.points),
      isIn,
    ) / 2
  );
}

/**
 * What is wrong with the area of one random job, in words; nothing when all is right.
 * @param unanswered Takes the seed when the other library has no answer.
 */
export function areaFaults(seed: number, unanswered: number[] = []): string[] {
  const { job } = slabJob(seed);
  const { pour, notes } = netPour(job);
  const layout = layOut(job.features, job.practices.closeEnough);
  const faults: string[] = [];
  const stops = notes.filter(({ weight }) => weight === 'stop').map(({ code }) => code);
  if (!pour) {
    if (stops.length === 0) faults.push('no pour and no reason');
    if (stops.some((code) => code === 'crosses-itself' || code === 'no-area')) return faults;
  } else if (stops.length > 0) faults.push(`a pour in spite of ${stops}`);

  const exact = exactArea(layout);
  const scale = Math.max(exact, SQUARE_INCH);
  const isClose = (area: number) => Math.abs(area - exact) <= CLOSE * scale;
  const clipped = clipWhole(layout);
  if (!clipped.ok) return [...faults, 'the clipping failed'];
  const { doubledAreaUnrounded, retries, engine } = clipped.value;
  if (retries > 0 || engine !== 'polygon-clipping') faults.push(`${engine} after ${retries} tries`);
  if (!isClose(doubledAreaUnrounded / 2)) {
    faults.push(`clipped area ${doubledAreaUnrounded / 2}, exactly ${exact}`);
  }
  const other = secondOpinion(layout);
  if (other && !isClose(other.area)) {
    faults.push(`the other library says ${other.area}, exactly ${exact}`);
  }
  if (!other) unanswered.push(seed);

  // Rounding a crossing to the grid moves it by at most 0.71 in each of the two edges that meet there.
  const carved = carve(layout);
  if (!carved.ok) return [...faults, 'the carving failed'];
  const rings = carved.value.pieces.flatMap(({ outer, holes }) => [outer, ...holes]);
  const onGrid = rings.reduce((sum, { points }) => sum + doubledArea(points) / 2, 0);
  const girth = rings.reduce((sum, { points }) => sum + girthOf(points), 0);
  if (Math.abs(onGrid - exact) > girth + 1) faults.push(`on the grid ${onGrid}, exactly ${exact}`);
  if (!pour && exact > layout.tolerance * girth) faults.push(`stopped with ${exact} to pour`);
  return faults;
}

function girthOf(points: readonly { x: number; y: number }[]): number {
  return points.reduce((sum, a, i) => {
    const b = points[(i + 1) % points.length]!;
    return sum + Math.hypot(b.x - a.x, b.y - a.y);
  }, 0);
}

/** All welded outlines through the clipper in one call, with none of the net pour's shortcuts. */
function clipWhole({ members }: Layout) {
  const of = (...parts: readonly Part[]) =>
    members.filter(({ part, chain }) => parts.includes(part) && chain.points.length > 2);
  const patches = of('patch').map(({ chain }) => chain.points);
  return clip(
    of('pad', 'patch').map(({ chain }) => chain.points),
    of('existing', 'cutter').map(({ part, chain }) => ({
      outer: chain.points,
      kept: part === 'existing' ? patches : [],
    })),
  );
}

/** What is wrong with the edges of one random job. */
export function edgeFaults(seed: number): string[] {
  const { job } = slabJob(seed);
  const { pour } = netPour(job);
  if (!pour) return [];
  const layout = layOut(job.features, job.practices.closeEnough);
  const faults = sumFaults(pour);
  const edges = pour.pieces.flatMap(({ rings }) => rings.flatMap((ring) => ring.edges));
  const carved = carve(layout);
  if (!carved.ok) return [...faults, 'the carving failed'];
  const { pieces, slivers } = withoutSlivers(carved.value.pieces, layout.tolerance);
  const rings = pieces.flatMap(({ outer, holes }) => [outer, ...holes]);
  const stretches = stretchesOf(layout, rings, carved.value.grid);
  const bits = stretches.flat();
  const straight = bits.reduce(
    (sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y),
    0,
  );
  const dissolved = slivers.reduce((sum, { length }) => sum + 2 * length + 2, 0);
  const walked = walkedLengths(layout);
  // Every corner may be rounded, and each edge with it; where two lines part at a slight angle, both are one line to the
  // count for a little way from the tip.
  const rounding = 2 * bits.length + 2 * LEAST_TOLERANCE;
  if (Math.abs(walked.total - straight) > rounding + dissolved) {
    faults.push(`boundary ${straight}, counted edge by edge ${walked.total}`);
  }
  // Joining a side that the weld bent by less than the tolerance takes out no more than that at each bend.
  const joined = stretches.reduce((sum, ring) => sum + ring.length, 0) - edges.length;
  const chords = edges.some(({ arc }) => arc) ? straight * 1e-3 : 0;
  if (straight - pour.perimeter > 2 * layout.tolerance * joined + rounding) {
    faults.push(`perimeter ${pour.perimeter} of ${straight}`);
  }
  if (pour.perimeter - straight > chords + rounding) {
    faults.push(`perimeter ${pour.perimeter}, more than the ${straight} that there is`);
  }
  // Where one thing ends and another begins is told apart to within the tolerance.
  const slack = layout.tolerance * edges.length + dissolved + chords;
  for (const kind of EDGE_KINDS) {
    if (Math.abs(walked[kind] - pour.lengthByKind[kind]) > slack) {
      faults.push(`${kind} ${pour.lengthByKind[kind]}, counted edge by edge ${walked[kind]}`);
    }
  }
  if (Math.abs(walked.patch - pour.patchLength) > slack) {
    faults.push(`patch ${pour.patchLength}, counted edge by edge ${walked.patch}`);
  }
  const known = new Set(job.features.map(({ id }) => id));
  if (!edges.every(({ feature }) => known.has(feature))) faults.push('an edge from nowhere');
  if (stretches.some((ring) => !closes(joinStretches(layout, ring).edges))) {
    faults.push('a ring that does not close');
  }
  return faults;
}

function closes(edges: NetPour['pieces'][number]['rings'][number]['edges']): boolean {
  return edges.every(({ to }, i) => {
    const { from } = edges[(i + 1) % edges.length]!;
    return to.x === from.x && to.y === from.y;
  });
}

/** Lengths by kind must add up to the perimeter to the last grid unit, and so must the edges. */
function sumFaults(pour: NetPour): string[] {
  const kinds = EDGE_KINDS.reduce((sum, kind) => sum + pour.lengthByKind[kind], 0);
  const edges = pour.pieces.flatMap(({ rings }) => rings.flatMap((ring) => ring.edges));
  const lengths = edges.reduce((sum, { length }) => sum + length, 0);
  const patches = edges.filter(({ patch }) => patch).reduce((sum, { length }) => sum + length, 0);
  const isWhole = edges.every(({ length }) => Number.isInteger(length));
  return kinds === pour.perimeter && lengths === kinds && patches === pour.patchLength && isWhole
    ? []
    : [`kinds ${kinds}, edges ${lengths}, perimeter ${pour.perimeter}`];
}

/** What changes when one random job is shifted or turned. */
export function moveFaults(seed: number): string[] {
  const { job, hasArcs } = slabJob(seed);
  const said = sayPour(netPour(job).pour, hasArcs);
  return Object.entries(MOVES).flatMap(([name, place]) => {
    const then = sayPour(netPour(moved(job, place)).pour, hasArcs);
    return then === said ? [] : [`${name}: ${then}, not ${said}`];
  });
}

/** Areas to the half unit where all is straight; arcs' areas are floats and are held to twelve places. */
function sayPour(pour: NetPour | undefined, hasArcs: boolean): string {
  if (!pour) return 'no pour';
  const { area, grossArea, perimeter, lengthByKind, patchLength, pieces } = pour;
  const say = (value: number) => (hasArcs ? value.toPrecision(12) : String(value));
  const rings = pieces.flatMap((piece) =>
    piece.rings.map(({ edges }) => {
      const said = edges.map(({ length, kind, feature, patch }) =>
        [length, kind, feature, patch].join(' '),
      );
      // A circle has no first corner, so its edges are listed from whichever is easternmost.
      return hasArcs ? said.sort() : said;
    }),
  );
  return JSON.stringify([say(area), say(grossArea), perimeter, lengthByKind, patchLength, rings]);
}
