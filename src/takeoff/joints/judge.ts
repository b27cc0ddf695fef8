import { type Ground, type Laid, passingThrough } from './ground.ts';

/** What a layout comes to, and what any that goes on from it comes to at least. */
export interface Judged {
  readonly bad: number;
  readonly length: number;
  /** No layout that goes on from this one breaks less. */
  readonly leastBad: number;
  /** None that breaks no more than that is shorter, grid units. */
  readonly leastLength: number;
  /** How much longer that becomes with a way laid, by its number. */
  readonly extra: Float64Array;
  /** The ways to go on with, one of which any layout has that breaks no more; none when nothing can be mended. */
  readonly next: readonly number[];
}

/** Something broken, and the ways that would mend it, of which at least so many are needed. */
interface Wish {
  readonly ways: readonly number[];
  readonly joints: number;
}

/**
 * @param out 1 for ways that are not to be laid.
 * @param mustObey Looks for layouts that obey and for no others: ways that break a rule of their own are none.
 */
export function judged(ground: Ground, laid: Laid, out: Uint8Array, mustObey: boolean): Judged {
  const { needs, ways, problem } = ground;
  const open = openWays(ground, laid, out, mustObey);
  let bad = laid.angles;
  let leastBad = laid.angles;
  const wishes: Wish[] = [];
  needs.forEach((need, i) => {
    const joints = need.joints - laid.met[i]!;
    if (joints <= 0) return;
    bad += need.weight;
    const mending = need.ways.filter((way) => open[way] === 1);
    if (mending.length < joints) leastBad += need.weight;
    else wishes.push({ ways: mending, joints });
  });
  for (const part of laid.parts) {
    if (part.bad === 0) continue;
    bad += part.bad;
    const mending: number[] = [];
    let stretches = 1;
    if (part.bad > part.stays) {
      for (const { way, chords } of passingThrough(ground, part)) {
        if (open[way] === 0) continue;
        mending.push(way);
        if (chords.length > stretches) stretches = chords.length;
      }
    }
    // Parting a sliver makes slivers: more than one is no better.
    const mendable = mending.length > 0;
    leastBad += mendable ? part.stays : part.bad;
    if (!mendable) continue;
    const most = (problem.rules.most + problem.closeness) ** 2;
    const joints = linesFor(Math.ceil(part.panel.area / most - SLACK), stretches);
    wishes.push({ ways: mending, joints: Math.min(mending.length, joints) });
  }
  wishes.sort((a, b) => a.ways.length - b.ways.length || b.joints - a.joints);
  const extra = Float64Array.from(ways, ({ length }) => length);
  let leastLength = laid.length;
  // Dual ascent: every wish is paid for from the lengths of the ways that would mend it, none of which is spent twice.
  for (const { ways: mending, joints } of wishes) {
    const left = mending.map((way) => extra[way]!).sort((a, b) => a - b);
    for (let i = 0; i < joints; i++) leastLength += left[i]!;
    const spent = left[joints - 1]!;
    for (const way of mending) extra[way] = Math.max(0, extra[way]! - spent);
  }
  return { bad, length: laid.length, leastBad, leastLength, extra, next: wishes[0]?.ways ?? [] };
}

/** 1 for ways that may still be laid. */
function openWays(
  { ways, clash }: Ground,
  laid: Laid,
  out: Uint8Array,
  mustObey: boolean,
): Uint8Array {
  const open = out.map((one) => 1 - one);
  for (const way of laid.ways) open[way] = 0;
  if (!mustObey) return open;
  for (let way = 0; way < open.length; way++) {
    if (open[way] === 0) continue;
    if (ways[way]!.bad > 0 || laid.ways.some((one) => clash(one, way) > 0)) open[way] = 0;
  }
  return open;
}

/** Floats: a panel of just the largest area is one. */
const SLACK = 1e-3;

/** How many lines, each passing in so many stretches, part a shape into so many parts at least: two cross once at most. */
function linesFor(parts: number, stretches: number): number {
  let lines = 1;
  while (1 + lines * stretches + (lines * (lines - 1)) / 2 < parts) lines++;
  return lines;
}

/**
 * About how much joint a layout still needs, to follow the likeliest first: parts taken as rectangles and cut into equal
 * parts.
 */
export function stillNeeded({ problem }: Ground, { parts }: Laid): number {
  const { most, ratio } = problem.rules;
  return parts.reduce((sum, { bad, panel: { length, width } }) => {
    if (bad === 0) return sum;
    const across = Math.max(0, Math.ceil(width / most - SLACK) - 1);
    const long = Math.max(
      1,
      Math.ceil(length / Math.min(most, (ratio * width) / (across + 1)) - SLACK),
    );
    return sum + across * length + (long - 1) * width;
  }, 0);
}
