import { arcOf, segmentArea } from '../../src/geometry/arc.ts';
import { doubledArea } from '../../src/geometry/area.ts';
import { boxOf } from '../../src/geometry/box.ts';
import { apply, type Command } from '../../src/job/commands.ts';
import { edgeEnd } from '../../src/job/find.ts';
import type { Corner, Feature, Job, Outline } from '../../src/job/job.ts';
import { blankJob } from '../../src/job/start.ts';
import { INCH } from '../../src/units/grid.ts';

/** Corners as text: `24,0 120,0 ^13 …`, inches; `^` gives the corner before it a rise. */
export function outline(text: string, firstId: number, closed = true): Outline {
  const corners: Corner[] = [];
  for (const word of text.split(' ')) {
    const last = corners.at(-1);
    if (word.startsWith('^') && last) {
      corners[corners.length - 1] = { ...last, rise: Number(word.slice(1)) * INCH };
    } else {
      const [x = 0, y = 0] = word.split(',').map(Number);
      corners.push({ id: `c${firstId + corners.length}`, x: x * INCH, y: y * INCH, rise: 0 });
    }
  }
  return { form: 'outline', closed, corners };
}

export function padOf(text: string, firstId = 2): Feature {
  return { id: `f${firstId - 1}`, name: '', kind: 'pad', shape: outline(text, firstId) };
}

/** A job of these features; fails the test where one is refused. */
export function jobOf(...features: readonly Feature[]): Job {
  return features.reduce((job, feature) => done(job, { do: 'add-feature', feature }), blankJob());
}

/** The job after a command that must go through. */
export function done(job: Job, command: Command): Job {
  const outcome = apply(job, command);
  if (!outcome.ok) throw new Error(`${command.do}: ${JSON.stringify(outcome.problems)}`);
  return outcome.value;
}

/** The code of a refusal that must come. */
export function refused(job: Job, command: Command): string {
  const outcome = apply(job, command);
  if (outcome.ok) throw new Error(`${command.do} went through`);
  return outcome.problems.code;
}

export function cornersOf(job: Job, feature: string): readonly Corner[] {
  const shape = job.features.find(({ id }) => id === feature)?.shape;
  if (shape?.form !== 'outline') throw new Error(`no outline ${feature}`);
  return shape.corners;
}

/** Corners as text again, in inches. */
export function written(job: Job, feature: string): string {
  return cornersOf(job, feature)
    .map(({ x, y, rise }) => `${x / INCH},${y / INCH}${rise === 0 ? '' : ` ^${rise / INCH}`}`)
    .join(' ');
}

/** Area inside, arcs as arcs, square inches; negative when the outline runs clockwise. */
export function areaOf(shape: Outline): number {
  const chords = doubledArea(shape.corners) / 2;
  const arcs = shape.corners.map((corner, index) => {
    const end = edgeEnd(shape, index);
    return end && corner.rise !== 0 ? segmentArea(arcOf(corner, end, corner.rise)) : 0;
  });
  return arcs.reduce((sum, area) => sum + area, chords) / INCH ** 2;
}

export function sizeOf(job: Job, feature: string): readonly [number, number] {
  const { minX, minY, maxX, maxY } = boxOf(cornersOf(job, feature));
  return [(maxX - minX) / INCH, (maxY - minY) / INCH];
}

export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
