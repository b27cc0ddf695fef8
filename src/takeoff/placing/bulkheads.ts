import { doubledArea } from '../../geometry/area.ts';
import { faces } from '../../geometry/faces.ts';
import type { Polygon } from '../../geometry/point.ts';
import type { JointLine } from '../joints/layout.ts';
import type { PourPiece } from '../outline/pour.ts';
import { type Given, isInTrouble, type Plan, planPour } from './plan.ts';

/** The pour parted by bulkheads at joints. */
export interface Sections {
  /** Of the joints, by their number. */
  readonly joints: readonly number[];
  /** Square grid units each. */
  readonly areas: readonly number[];
  /** The plan of the section that is hardest to pour. */
  readonly worst: Plan;
}

/** The joints that part the pour most evenly are tried together, at most so many of them at once: it has to be quick. */
const MOST_TRIED = 4;
const MOST_BULKHEADS = 3;
/** A pour with more corners than this is parted by single joints alone: it has to be quick. */
const MOST_CORNERS = 200;

/**
 * The fewest bulkheads at joints that let every section be poured in time; of as many the ones that part the volume most
 * evenly. Where none do, the best of those tried; nothing where no joint goes from edge to edge.
 */
export function bulkheads(given: Given, joints: readonly JointLine[]): Sections | undefined {
  const polygons = given.pieces.map(({ polygon }) => polygon);
  const singles = joints
    .flatMap((_, at) => partedBy(polygons, joints, [at]) ?? [])
    .sort((a, b) => a.share - b.share)
    .slice(0, MOST_TRIED);
  if (singles.length === 0) return undefined;
  const corners = polygons.reduce((sum, { outer }) => sum + outer.length, 0);
  const most = corners > MOST_CORNERS ? 1 : MOST_BULKHEADS;
  let best: Sections | undefined;
  for (let count = 1; count <= most; count++) {
    const choices = chosen(
      singles.map(({ joints: [one] }) => one!),
      count,
    );
    const parted = choices.flatMap((choice) => partedBy(polygons, joints, choice) ?? []);
    const even = parted.reduce<Parted | undefined>(
      (found, one) => (found && found.share <= one.share + 1e-9 ? found : one),
      undefined,
    );
    const sections = even && sectionsOf(given, even);
    if (!sections) continue;
    if (!best || sections.worst.timeline.placed < best.worst.timeline.placed) best = sections;
    if (!isInTrouble(sections.worst)) return sections;
  }
  return best;
}

interface Parted {
  readonly joints: readonly number[];
  readonly parts: readonly Polygon[];
  /** Of the largest part. */
  readonly share: number;
}

/** Parts between joints; nothing unless each of the joints parts something. */
function partedBy(
  polygons: readonly Polygon[],
  joints: readonly JointLine[],
  chosenJoints: readonly number[],
): Parted | undefined {
  const parts = faces(
    polygons,
    chosenJoints.map((at) => joints[at]!),
  );
  if (parts.length < polygons.length + chosenJoints.length) return undefined;
  const areas = parts.map(areaOf);
  const whole = areas.reduce((sum, one) => sum + one, 0);
  return {
    joints: chosenJoints.toSorted((a, b) => a - b),
    parts,
    share: Math.max(...areas) / whole,
  };
}

function areaOf({ outer, holes }: Polygon): number {
  return holes.reduce((sum, hole) => sum + doubledArea(hole), doubledArea(outer)) / 2;
}

/** Every choice of so many. */
function chosen(from: readonly number[], count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return from.flatMap((first, i) =>
    chosen(from.slice(i + 1), count - 1).map((rest) => [first, ...rest]),
  );
}

/** Bulkheads and forms are all there is round a section: what its board rides on isn't asked here. */
const NO_EDGES: PourPiece = { rings: [], area: 0 };

function sectionsOf(given: Given, { joints, parts }: Parted): Sections | undefined {
  const areas = parts.map(areaOf);
  const whole = areas.reduce((sum, one) => sum + one, 0);
  const volume = given.batches.reduce((sum, one) => sum + one, 0);
  const plans = parts.flatMap((polygon, i) => {
    const own = (volume * areas[i]!) / whole;
    const batches = batchesOf(own, given.batches[0]!);
    const plan = planPour({ ...given, pieces: [{ polygon, piece: NO_EDGES }], batches });
    return plan ? [plan] : [];
  });
  if (plans.length < parts.length) return undefined;
  const worst = plans.reduce((found, one) => (isWorse(one, found) ? one : found));
  return { joints, areas, worst };
}

function isWorse(one: Plan, other: Plan): boolean {
  if (isInTrouble(one) !== isInTrouble(other)) return isInTrouble(one);
  return one.timeline.placed > other.timeline.placed;
}

function batchesOf(volume: number, full: number): readonly number[] {
  const count = Math.max(1, Math.ceil(volume / full - 1e-9));
  return Array.from({ length: count }, (_, i) => (i < count - 1 ? full : volume - full * i));
}
