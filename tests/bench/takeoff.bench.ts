import polygonClipping, { type MultiPolygon, type Polygon } from 'polygon-clipping';
import type { Job } from '../../src/job/job.ts';
import { netPour } from '../../src/takeoff/outline/netPour.ts';
import { traceOf } from '../../src/takeoff/outline/shapes.ts';
import { dragged, hugeJob, largeJob, typicalJob } from './jobs.ts';

interface Case {
  readonly name: string;
  readonly job: Job;
  readonly frames: number;
}

/** The bare call: pads and patches minus everything else, made straight beforehand, as pairs about the origin. */
export function rawArguments(job: Job): { subject: MultiPolygon; clips: Polygon[] } {
  const subject: MultiPolygon = [];
  const clips: Polygon[] = [];
  for (const feature of job.features) {
    const { chain } = traceOf(feature);
    if (!chain.closed || feature.kind === 'no-stake-zone') continue;
    const polygon: Polygon = [chain.points.map(({ x, y }): [number, number] => [x, y])];
    if (feature.kind === 'pad' || feature.kind === 'patch') subject.push(polygon);
    else clips.push(polygon);
  }
  return { subject, clips };
}

/** Middle of the times that one call takes, ms. */
export function middleTime(frames: number, call: (frame: number) => unknown): number {
  const times: number[] = [];
  for (let frame = 0; frame < frames; frame++) {
    const start = performance.now();
    call(frame);
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[Math.floor(frames / 2)]!;
}

/** Every frame of the drag is made beforehand: making jobs is not what is measured. */
function compare({ name, job, frames }: Case, whole: ((job: Job) => unknown) | undefined): void {
  const fresh = () => Array.from({ length: frames }, (_, frame) => dragged(job, frame));
  const raws = fresh().map(rawArguments);
  const raw = () =>
    middleTime(frames, (frame) => {
      const { subject, clips } = raws[frame]!;
      return polygonClipping.difference(subject, ...clips);
    });
  const pour = () => {
    const jobs = fresh();
    return middleTime(frames, (frame) => netPour(jobs[frame]!));
  };
  const live = () => {
    const jobs = fresh();
    return middleTime(frames, (frame) => whole?.(jobs[frame]!));
  };
  // Warm, then measured in turns so that a busy machine slows all alike.
  raw();
  pour();
  if (whole) live();
  const times = { raw: [] as number[], pour: [] as number[], live: [] as number[] };
  for (let turn = 0; turn < 5; turn++) {
    times.raw.push(raw());
    times.pour.push(pour());
    if (whole) times.live.push(live());
  }
  const best = (list: readonly number[]) => list.toSorted((a, b) => a - b)[2]!;
  const base = best(times.raw);
  const line = [
    name.padEnd(8),
    `raw clip ${base.toFixed(3)} ms`,
    `net pour ${best(times.pour).toFixed(3)} ms = ${(best(times.pour) / base).toFixed(2)} x`,
  ];
  if (whole) {
    line.push(
      `whole takeoff ${best(times.live).toFixed(3)} ms = ${(best(times.live) / base).toFixed(2)} x`,
    );
  }
  console.log(line.join('   '));
}

/** @param takeoffFile Where the whole takeoff lives, when it is there. */
export async function measure(takeoffFile: string | undefined): Promise<void> {
  const whole = takeoffFile
    ? ((await import(takeoffFile)) as { takeoff: (job: Job) => unknown }).takeoff
    : undefined;
  console.log(
    'Live takeoff of a corner being dragged, against one bare clipping call (middle of the frames):',
  );
  compare({ name: 'typical', job: typicalJob(), frames: 400 }, whole);
  compare({ name: 'large', job: largeJob(), frames: 100 }, whole);
  compare({ name: 'huge', job: hugeJob(), frames: 15 }, whole);
}
