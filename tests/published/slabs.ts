import { defaultPractices } from '../../src/job/defaults.ts';
import type { Job, Practices } from '../../src/job/job.ts';
import { blankJob, rectangleJob } from '../../src/job/start.ts';
import type { Takeoff, VolumeResult } from '../../src/takeoff/result.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { tickets } from '../../src/takeoff/tickets.ts';
import { CUBIC_FOOT, FOOT, INCH } from '../../src/units/grid.ts';

/** Practices as a published example has them. */
export function practicesWith(change: Partial<Practices>): Practices {
  return { ...defaultPractices(), ...change };
}

/** An allowance as one share of the net, or a count of bags where that is more. */
export function wasteByShare(share: number, minimumBags = 0): Practices['waste'] {
  return { ...defaultPractices().waste, by: 'share', share, minimumBags };
}

/** What a takeoff would have of a slab whose net alone is known, the spread of its depth none. */
export function volumeOf(net: number): VolumeResult {
  return {
    thickness: 1,
    depthBy: 'thickness',
    area: net,
    spread: 0,
    formDepth: 1,
    slab: net,
    net,
    atFormDepth: net,
  };
}

/** A rectangular slab. Feet and inches may be fractions. */
export function slab(feetLong: number, feetWide: number, inchesThick: number): Job {
  const made = rectangleJob(Math.round(feetLong * FOOT), Math.round(feetWide * FOOT));
  if (!made.ok) throw new Error(made.problems.map(({ code }) => code).join());
  return withThickness(made.value, inchesThick);
}

export function withThickness(job: Job, inches: number): Job {
  return { ...job, practices: { ...job.practices, thickness: Math.round(inches * INCH) } };
}

/** One pad through places in feet. */
export function padThrough(places: readonly (readonly [number, number])[]): Job {
  const corners = places.map(([x, y], i) => ({
    id: `c${i + 1}`,
    x: Math.round(x * FOOT),
    y: Math.round(y * FOOT),
    rise: 0,
  }));
  return {
    ...blankJob(),
    features: [
      { id: 'p', name: '', kind: 'pad', shape: { form: 'outline', closed: true, corners } },
    ],
    nextId: 100,
  };
}

/** Net volume in cubic feet, as the takeoff has it. */
export function netCubicFeet(job: Job): number {
  return whole(takeoff(job)).net / CUBIC_FOOT;
}

function whole({ volume }: Takeoff): NonNullable<Takeoff['volume']> {
  if (!volume) throw new Error('no volume');
  return volume;
}

/** The value of one figure on the tickets. */
export function figure(job: Job, key: string) {
  const all = tickets(job, takeoff(job)).flatMap(({ figures }) => figures);
  const found = all.find((one) => one.key === key);
  if (!found) throw new Error(`no figure ${key}`);
  return found.value;
}
