import { deserialize, serialize } from 'node:v8';
import { gatherParts, inParts } from '../../src/app/worker/parts.ts';
import { drawPlan } from '../../src/drawing/plan.ts';
import { en as drawingWords } from '../../src/drawing/words/en.ts';
import { apply } from '../../src/job/commands.ts';
import type { Job } from '../../src/job/job.ts';
import { datumOf } from '../../src/sketch/datum.ts';
import { formLineOf, pickedIn, pickOf } from '../../src/sketch/formLine.ts';
import { PX_PER_MM } from '../../src/sketch/paint/fontSize.ts';
import { handlesToPaint } from '../../src/sketch/paint/handles.ts';
import { edgesOf, siteOf } from '../../src/sketch/site.ts';
import { aim } from '../../src/sketch/tools/aim.ts';
import { holdStake, slideStake } from '../../src/sketch/tools/slideStake.ts';
import type { Scene } from '../../src/sketch/tools/tool.ts';
import { fitView } from '../../src/sketch/view.ts';
import type { Station } from '../../src/takeoff/figure.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../src/takeoff/tickets.ts';
import { hugeJob } from './jobs.ts';

/** One frame at 60 a second. */
const FRAME_MS = 1000 / 60;
const FRAMES = 60;
const STATIONS: readonly Station[] = ['ground', 'forms', 'steel', 'joints', 'mix', 'order'];

function middle(call: (frame: number) => unknown): number {
  const times = Array.from({ length: FRAMES }, (_, frame) => {
    const start = performance.now();
    call(frame);
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[FRAMES / 2]!;
}

function say(what: string, ms: number): void {
  console.log(
    `  ${what.padEnd(58)} ${ms.toFixed(2)} ms = ${(ms / FRAME_MS).toFixed(2)} of a frame`,
  );
}

function corner(job: Job) {
  const pad = job.features[0]!;
  if (pad.shape.form !== 'outline') throw new Error('the first feature is the pad');
  return { pad, shape: pad.shape, at: pad.shape.corners[1]! };
}

/**
 * What the page itself does while a corner of the huge job is dragged. The takeoff runs in the worker, and the drawing
 * waits until the corner is let go: neither is part of a frame. Painting is the browser's, see the journey of the pace.
 */
export function measureFrame(): void {
  const job = hugeJob();
  const size = { width: 800, height: 650 };
  const view = fitView(job, size);
  const scene: Scene = {
    job,
    site: siteOf(job),
    dimensions: [],
    formLine: null,
    selection: null,
    view,
    size,
    datum: datumOf(job),
  };
  const { pad, shape, at } = corner(job);
  const moving = { feature: pad.id, corner: at.id };
  const to = (frame: number) => ({ x: at.x + 4000 * (frame + 1), y: at.y + 2500 * (frame + 1) });
  const preview = (frame: number) => {
    const snap = aim(scene, { at: to(frame), touch: false, neighbours: [], moving });
    const outcome = apply(job, { do: 'move-corner', ...moving, to: snap.point });
    if (!outcome.ok) throw new Error(outcome.problems.code);
    return outcome.value;
  };
  const hand = (moved: Job) => {
    const now = corner(moved);
    return [edgesOf(now.pad), handlesToPaint(now.shape.corners, at.id, view, size)];
  };
  const figured = takeoff(job);
  const parts = inParts({ id: 1, took: 0, takeoff: figured });
  const packed = parts.map((part) => serialize(part));
  const longest = packed.reduce((a, b) => (a.length > b.length ? a : b));
  const gather = gatherParts(() => undefined);

  console.log(`The page's own work on the huge job (${shape.corners.length} corners in the pad):`);
  say(
    'a move: snap, preview, hand the job over, outline in hand',
    middle((frame) => {
      const moved = preview(frame);
      serialize(moved);
      hand(moved);
    }),
  );
  const line = formLineOf(job, figured);
  const stake = line?.stakes[Math.floor(line.stakes.length / 2)];
  if (!line || !stake) throw new Error('the huge job has stakes');
  const atForms: Scene = { ...scene, formLine: line };
  say(
    'a move of a stake: along the forms, preview, hand the job over, found again',
    middle((frame) => {
      const { face } = stake;
      const spot = { x: 0, y: 0 };
      const at = { x: face.x + 4000 * (frame + 1), y: face.y + 2500 * (frame + 1) };
      const held = holdStake(stake, face, atForms);
      const { state } = slideStake(held, { spot, at, touch: false }, atForms);
      const outcome = state.command && apply(job, state.command);
      if (!outcome?.ok) throw new Error('the stake could not be moved');
      serialize(outcome.value);
      pickedIn(job, figured, pickOf(stake));
    }),
  );
  say(
    'stakes taken hold of, once: the list that they are picked from',
    middle(() => formLineOf(job, figured)),
  );
  say(
    'the takeoff comes in: its longest part unpacked',
    middle(() => gather(deserialize(longest))),
  );
  const tickets = STATIONS.map((station) => middle(() => ticketOf(job, figured, station)));
  say('the takeoff is whole: the slowest ticket of a station', Math.max(...tickets));
  const options = {
    station: 'ground',
    scale: { gridPerMm: view.gridPerPx * PX_PER_MM },
    words: drawingWords,
    dimensions: true,
  } as const;
  say(
    'let go: the whole drawing of the ground, once',
    middle(() => drawPlan(job, figured, options)),
  );
}
