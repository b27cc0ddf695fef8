import { faces } from '../../geometry/faces.ts';
import type { Polygon } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import { type Chord, chordsIn, splitAlong } from '../../geometry/split.ts';
import { candidates } from './candidates.ts';
import type { JointLine, JointProblem, Panel } from './layout.ts';
import { endsAt, isSharp, lengthOf, meetingOf, meets } from './meeting.ts';
import { jointRules, MEETINGS, panelOf, panelRules } from './panels.ts';
import { badnessOf, sharpWeight, weightOf } from './weights.ts';

/** A line that a joint may be laid along, and what there is to know of it before any is laid. */
export interface Way {
  readonly joint: JointLine;
  /** Grid units, whole. */
  readonly length: number;
  /** How bad it is by itself: ends at slight angles to edges and to joints drawn by hand. */
  readonly bad: number;
  /** The needs that it helps to meet, by number. */
  readonly serves: readonly number[];
}

/** A corner, block-out or older joint that so many joints must come to. */
export interface Need {
  readonly weight: number;
  readonly joints: number;
  readonly ways: readonly number[];
}

/** A part of the slab between joints, as far as a search has to know it. */
export interface Part {
  readonly panel: Panel;
  /** How bad it is as it is, and how much of that stays whatever parts it further. */
  readonly bad: number;
  readonly stays: number;
  /** The part that it came of, and the ways that pass through it: looked for when they are asked for. */
  readonly of: Part | undefined;
  passing: readonly Passing[] | undefined;
}

export interface Passing {
  readonly way: number;
  readonly chords: readonly Chord[];
}

/** Joints laid so far, and what they come to. */
export interface Laid {
  readonly ways: readonly number[];
  readonly parts: readonly Part[];
  /** How many joints come to each need. */
  readonly met: readonly number[];
  readonly length: number;
  /** How bad the angles are. */
  readonly angles: number;
}

/** All that a search looks up again and again. */
export interface Ground {
  readonly problem: JointProblem;
  readonly ways: readonly Way[];
  readonly needs: readonly Need[];
  /** How bad the angle is at which two ways meet; 0 when it is wide enough. */
  readonly clash: (one: number, other: number) => number;
  readonly start: Laid;
}

export function groundOf(problem: JointProblem): Ground {
  const { insideCorners, blockOuts, oldJoints, fixed, rules, closeness, polygon } = problem;
  const wanted = [
    ...insideCorners.map((at) => ({ rule: 'inside-corner', at, joints: 1 }) as const),
    ...blockOuts.map(
      (spot) => ({ rule: 'block-out', at: spot.middle, spot, joints: MEETINGS }) as const,
    ),
    ...oldJoints.map((at) => ({ rule: 'old-joint', at, joints: 1 }) as const),
  ];
  const serves = (joint: JointLine): readonly number[] =>
    wanted.flatMap((need, i) => {
      const served =
        need.rule === 'block-out'
          ? meets(need.spot, joint, closeness)
          : endsAt(joint, need.at, closeness);
      return served ? [i] : [];
    });
  const ways = candidates(problem).flatMap((joint): Way[] => {
    const angles = fixed.flatMap((one) => meetingOf(joint, one, closeness)?.angle ?? []);
    // Along a joint that is there already.
    if (angles.some((angle) => angle < ALONG)) return [];
    const bad =
      badnessOf(jointRules(problem, [joint], joint, 0), [], rules) +
      angles.reduce(
        (sum, angle) => sum + (isSharp(angle, rules.angle) ? sharpWeight(angle) : 0),
        0,
      );
    return [{ joint, length: toGrid(lengthOf(joint)), bad, serves: serves(joint) }];
  });
  const needs = wanted.map(({ rule, at, joints }, i): Need => {
    const serving = ways.flatMap((way, k) => (way.serves.includes(i) ? [k] : []));
    return { weight: weightOf({ rule, at }, rules, undefined), joints, ways: serving };
  });
  const count = ways.length;
  const known = new Int8Array(count * count).fill(-1);
  const clash = (one: number, other: number): number => {
    const at = one * count + other;
    if (known[at]! >= 0) return known[at]!;
    const meeting = meetingOf(ways[one]!.joint, ways[other]!.joint, closeness);
    const bad = meeting && isSharp(meeting.angle, rules.angle) ? sharpWeight(meeting.angle) : 0;
    known[at] = bad;
    known[other * count + one] = bad;
    return bad;
  };
  const met = wanted.map((_, i) => fixed.filter((joint) => serves(joint).includes(i)).length);
  const start: Laid = {
    ways: [],
    parts: faces([polygon], fixed).map((part) => partOf(problem, part, undefined)),
    met,
    length: 0,
    angles: 0,
  };
  return { problem, ways, needs, clash, start };
}

/** Two joints that part by less than this lie on one another, degrees. */
const ALONG = 1;

function partOf(problem: JointProblem, polygon: Polygon, of: Part | undefined): Part {
  const panel = panelOf(polygon);
  const broken = panelRules(problem, panel, 0);
  const thin = broken.filter(({ rule }) => rule === 'sliver');
  return {
    panel,
    bad: badnessOf(broken, [panel], problem.rules),
    stays: badnessOf(thin, [panel], problem.rules),
    of,
    passing: undefined,
  };
}

/** The ways that pass through a part, with their stretches in it. */
export function passingThrough({ ways }: Ground, part: Part): readonly Passing[] {
  if (part.passing) return part.passing;
  const among = part.of?.passing?.map(({ way }) => way) ?? ways.map((_, i) => i);
  part.passing = among.flatMap((way): Passing[] => {
    const chords = chordsOf(part, ways[way]!.joint);
    return chords.length > 0 ? [{ way, chords }] : [];
  });
  return part.passing;
}

function chordsOf({ panel: { polygon, box } }: Part, { from, to }: JointLine): readonly Chord[] {
  if (Math.max(from.x, to.x) <= box.minX || Math.min(from.x, to.x) >= box.maxX) return [];
  if (Math.max(from.y, to.y) <= box.minY || Math.min(from.y, to.y) >= box.maxY) return [];
  return chordsIn(polygon, from, to);
}

/** One joint more. */
export function laidWith(ground: Ground, laid: Laid, way: number): Laid {
  const { joint, length, bad, serves } = ground.ways[way]!;
  const parts = laid.parts.flatMap((part): readonly Part[] => {
    const chords = part.passing
      ? (part.passing.find((one) => one.way === way)?.chords ?? [])
      : chordsOf(part, joint);
    if (chords.length === 0) return [part];
    return splitAlong(part.panel.polygon, chords).map((one) => partOf(ground.problem, one, part));
  });
  const met = serves.length === 0 ? laid.met : (laid.met.slice() as number[]);
  for (const need of serves) (met as number[])[need]!++;
  return {
    ways: [...laid.ways, way],
    parts,
    met,
    length: laid.length + length,
    angles: laid.angles + bad + laid.ways.reduce((sum, one) => sum + ground.clash(one, way), 0),
  };
}
