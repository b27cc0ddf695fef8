import type { PlacingPractices } from '../../job/placing.ts';
import { batchWork, minutesABatch } from './pace.ts';
import { MOST_FINISHERS } from './rules.ts';

/** What is to be placed: strips in their order, and batches. */
export interface Pour {
  /** Square and whole grid units. */
  readonly strips: readonly { readonly area: number; readonly edges: number }[];
  /** Cubic grid units. */
  readonly batches: readonly number[];
}

/** When concrete does what at the day's temperature, minutes. */
export interface SetClock {
  /** From water to initial and final set. */
  readonly initial: number;
  readonly final: number;
  /** After placing: bleed water gone, ready to float, ready to trowel. */
  readonly bleed: number;
  readonly float: number;
  readonly trowel: number;
  /** Until forms are stripped, after finishing. */
  readonly strip: number;
}

/** A batch: when the mixer begins it, when it lies, and the area that lies by then. */
export interface TimedBatch {
  readonly from: number;
  readonly to: number;
  readonly placed: number;
}

export type Pass = 'float' | 'edge' | 'trowel' | 'broom';

/** Minutes from the first water on. */
export interface TimedStrip {
  /** First and last concrete lies. */
  readonly from: number;
  readonly to: number;
  /** When the water met the first of it. */
  readonly water: number;
  readonly bleedGone: number;
  readonly passes: readonly { readonly pass: Pass; readonly from: number; readonly to: number }[];
  readonly done: number;
}

export interface Timeline {
  readonly batches: readonly TimedBatch[];
  readonly strips: readonly TimedStrip[];
  /** The last concrete lies. */
  readonly placed: number;
  /** The last pass is over. */
  readonly done: number;
  readonly formsOff: number;
}

/** Times nearer than this are the same, minutes: sums of floats. */
const MOMENT = 1e-9;
/** Areas nearer than this share of the whole are the same. */
const SAME_AREA = 1e-9;

interface Job {
  readonly strip: number;
  readonly pass: Pass;
  /** Minutes of one pair of hands. */
  readonly work: number;
}

/**
 * The day minute by minute. One finishes as soon as a strip is ready for it, and is missed at the mixer meanwhile: two hands
 * are then one, and whoever works alone lets the mixer wait. Earlier strips come first. When all concrete lies, two finish
 * side by side.
 */
export function timelineOf(pour: Pour, rules: PlacingPractices, clock: SetClock): Timeline {
  const ends = cumulative(pour.strips.map(({ area }) => area));
  const whole = ends.at(-1) ?? 0;
  const volume = pour.batches.reduce((sum, one) => sum + one, 0);
  const batches: TimedBatch[] = [];
  const strips = pour.strips.map(() => ({ from: Infinity, to: Infinity, water: 0 }));
  const passes: { pass: Pass; from: number; to: number }[][] = pour.strips.map(() => []);
  // What is still to be finished, in order, by strip.
  const waiting: Job[][] = pour.strips.map(({ area, edges }, strip) =>
    jobsOf(strip, area, edges, rules),
  );
  let now = 0;
  let placedVolume = 0;
  let begun = 0;
  let left = 1;
  let finishing: { readonly job: Job; readonly from: number; left: number } | undefined;
  for (;;) {
    finishing ??= nextJob(waiting, strips, clock, now);
    const mixing = batches.length < pour.batches.length;
    const busy = finishing ? 1 : 0;
    const size = pour.batches[batches.length] ?? 0;
    const work = batchWork(rules, size, volume > 0 ? (whole * size) / volume : 0);
    const each = mixing ? minutesABatch(rules, work, rules.crew - busy) : Infinity;
    const speed = mixing ? 1 : Math.min(rules.crew, MOST_FINISHERS);
    const toBatch = each === Infinity ? Infinity : left * each;
    const toPass = finishing ? finishing.left / speed : nextReady(waiting, strips, clock) - now;
    const step = Math.min(toBatch, toPass);
    if (step === Infinity) break;
    now += step;
    if (finishing) finishing.left -= step * speed;
    if (toBatch <= step) {
      placedVolume += size;
      const last = batches.length === pour.batches.length - 1;
      const placed = last ? whole : (whole * placedVolume) / volume;
      batches.push({ from: begun, to: now, placed });
      markStrips(strips, ends, placed, now, begun);
      begun = now;
      left = 1;
    } else if (mixing && each !== Infinity) {
      left -= step / each;
    }
    if (finishing && toPass <= step) {
      passes[finishing.job.strip]!.push({
        pass: finishing.job.pass,
        from: finishing.from,
        to: now,
      });
      waiting[finishing.job.strip]!.shift();
      finishing = undefined;
    }
  }
  const timed = strips.map(
    (strip, i): TimedStrip => ({
      ...strip,
      bleedGone: strip.to + clock.bleed,
      passes: passes[i]!,
      done: passes[i]!.at(-1)?.to ?? strip.to,
    }),
  );
  const done = Math.max(0, ...timed.map((strip) => strip.done));
  return { batches, strips: timed, placed: begun, done, formsOff: done + clock.strip };
}

function cumulative(areas: readonly number[]): readonly number[] {
  let sum = 0;
  return areas.map((area) => {
    sum += area;
    return sum;
  });
}

function jobsOf(strip: number, area: number, edges: number, rules: PlacingPractices): Job[] {
  const job = (pass: Pass, work: number): Job => ({ strip, pass, work });
  return [
    job('float', (60 * area) / rules.floatRate),
    ...(edges > 0 ? [job('edge', (60 * edges) / rules.edgeRate)] : []),
    ...(rules.trowel ? [job('trowel', (60 * area) / rules.trowelRate)] : []),
    job('broom', (60 * area) / rules.broomRate),
  ];
}

interface Marked {
  from: number;
  to: number;
  water: number;
}

/** Which strips the concrete has come to, and which are full. */
function markStrips(
  strips: readonly Marked[],
  ends: readonly number[],
  placed: number,
  now: number,
  begun: number,
): void {
  // Areas are sums of floats.
  const near = SAME_AREA * ends.at(-1)!;
  strips.forEach((strip, i) => {
    const start = i === 0 ? 0 : ends[i - 1]!;
    if (strip.from === Infinity && placed > start + near) {
      strip.from = now;
      strip.water = begun;
    }
    if (strip.to === Infinity && placed >= ends[i]! - near) {
      strip.from = Math.min(strip.from, now);
      strip.to = now;
    }
  });
}

/** When a strip's next pass may begin, by the clock alone. */
function readyAt(job: Job, strip: Marked, clock: SetClock): number {
  return strip.to + (job.pass === 'trowel' ? clock.trowel : clock.float);
}

function nextJob(
  waiting: readonly (readonly Job[])[],
  strips: readonly Marked[],
  clock: SetClock,
  now: number,
) {
  for (const [job] of waiting) {
    if (job && readyAt(job, strips[job.strip]!, clock) <= now + MOMENT) {
      return { job, from: now, left: job.work };
    }
  }
  return undefined;
}

function nextReady(
  waiting: readonly (readonly Job[])[],
  strips: readonly Marked[],
  clock: SetClock,
): number {
  return waiting.reduce(
    (least, [job]) => (job ? Math.min(least, readyAt(job, strips[job.strip]!, clock)) : least),
    Number.POSITIVE_INFINITY,
  );
}
