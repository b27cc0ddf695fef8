import { boundsOf } from '../../drawing/bounds.ts';
import { type Plan, planOf, type SheetPlan } from '../../drawing/plan.ts';
import { pourArea } from '../../drawing/pour.ts';
import type { Box } from '../../geometry/box.ts';
import type { Job } from '../../job/job.ts';
import type { Layout } from '../../takeoff/layout/layout.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { gridPerMmAt, type Scale, scalesFor } from '../scales.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { type PlanFrame, roomFor, withKeyPlan } from './planFrame.ts';
import { type Tile, tilingOf } from './tiles.ts';

/** A plan at a scale, and where on the ground the middle of its frame lies. */
export interface ScaledPlan {
  readonly station: SheetPlan;
  readonly frame: PlanFrame;
  readonly scale: Scale;
  readonly plan: Plan;
  readonly centre: { readonly x: number; readonly y: number };
  /** The parts it is shown in, page by page; none when one page shows it all. */
  readonly tiles: readonly Tile[];
  /** False when not even the smallest scale shows it all. */
  readonly fits: boolean;
}

/** What a plan is drawn with: the sheet's options, which plan it is, and the lines and marks to set out by. */
export type PlanWishes = SheetOptions & {
  readonly station: SheetPlan;
  readonly layouts?: readonly Layout[];
};

/** Clear paper between the frame and what is drawn. */
const CLEAR_MM = 4;

/**
 * The plan at the largest scale at which all of it that must be read fits into one of the frames, the earlier frame where
 * several do. At a scale that was asked for it goes over as many pages as it takes, unless those are too many.
 */
export function fitPlan(
  job: Job,
  takeoff: Takeoff,
  frames: readonly PlanFrame[],
  options: PlanWishes,
): ScaledPlan {
  const scales = scalesFor(job.units);
  const wanted = scales.findIndex(({ name }) => name === options.scale);
  for (const [i, scale] of (wanted < 0 ? scales : scales.slice(wanted)).entries()) {
    const fitted = planAt(job, takeoff, frames, scale, options);
    if (fitted) return fitted;
    const tiled =
      wanted >= 0 && i === 0 ? tiledPlan(job, takeoff, frames, scale, options) : undefined;
    if (tiled) return tiled;
  }
  const scale = scales.at(-1)!;
  const plan = planOf(job, takeoff, planOptions(scale, options));
  const centre = middleOf(neededBox(plan, scale, options));
  return {
    station: options.station,
    frame: frames[0]!,
    scale,
    plan,
    centre,
    tiles: [],
    fits: false,
  };
}

function planOptions(scale: Scale, { words, station, layouts = [] }: PlanWishes) {
  return {
    station,
    scale: { gridPerMm: gridPerMmAt(scale) },
    words: words.drawing,
    dimensions: true,
    layouts,
  } as const;
}

function planAt(
  job: Job,
  takeoff: Takeoff,
  frames: readonly PlanFrame[],
  scale: Scale,
  options: PlanWishes,
): ScaledPlan | undefined {
  const perMm = gridPerMmAt(scale);
  const thatHold = ({ minX, minY, maxX, maxY }: Box, those: readonly PlanFrame[]) =>
    those.filter((frame) => {
      const room = roomFor(frame, takeoff);
      return (
        (maxX - minX) / perMm <= room.width - 2 * CLEAR_MM &&
        (maxY - minY) / perMm <= room.height - 2 * CLEAR_MM
      );
    });
  // The bare pour first: drawing a plan costs far more than finding that its pour alone is too large.
  const bare = takeoff.pour && boundsOf(pourArea(takeoff.pour), { gridPerMm: perMm });
  const possible = bare ? thatHold(bare, frames) : frames;
  if (possible.length === 0) return undefined;
  const needed = neededBox(planOf(job, takeoff, planOptions(scale, options)), scale, options);
  const centre = middleOf(needed);
  for (const frame of thatHold(needed, possible)) {
    const room = roomFor(frame, takeoff);
    const [halfWidth, halfHeight] = [(room.width / 2) * perMm, (room.height / 2) * perMm];
    const window = {
      minX: centre.x - halfWidth,
      maxX: centre.x + halfWidth,
      minY: centre.y - halfHeight,
      maxY: centre.y + halfHeight,
    };
    // Again, with the names of what is cut off by the frame put where they are seen.
    const inner = CLEAR_MM * perMm * 0.6;
    const plan = planOf(job, takeoff, {
      ...planOptions(scale, options),
      window: {
        minX: window.minX + inner,
        maxX: window.maxX - inner,
        minY: window.minY + inner,
        maxY: window.maxY - inner,
      },
    });
    if (isWithin(neededBox(plan, scale, options), window))
      return { station: options.station, frame, scale, plan, centre, tiles: [], fits: true };
  }
  return undefined;
}

/** Once written with match lines, a plan may reach a little farther than before: tried again with so much more room, mm. */
const SLACKS = [0, 8, 20];

/** The plan over several pages, in the frame that takes the fewest. */
function tiledPlan(
  job: Job,
  takeoff: Takeoff,
  frames: readonly PlanFrame[],
  scale: Scale,
  options: PlanWishes,
): ScaledPlan | undefined {
  const perMm = gridPerMmAt(scale);
  const first = neededBox(planOf(job, takeoff, planOptions(scale, options)), scale, options);
  const { matchLine, matchShort } = options.words.sheet.layout;
  const say = (letters: string, part: number) => [
    matchLine(letters, part),
    matchShort(letters, part),
  ];
  for (const slack of SLACKS) {
    const needed = wider(first, slack * perMm);
    const tilings = frames.flatMap((one) => {
      const frame = withKeyPlan(one);
      const { width, height } = roomFor(frame, takeoff);
      const room = { width: width - 2 * CLEAR_MM, height: height - 2 * CLEAR_MM };
      const tiling = tilingOf(needed, room, perMm, say);
      return tiling ? [{ frame, tiling }] : [];
    });
    const best = tilings.reduce<(typeof tilings)[number] | undefined>(
      (least, one) => (least && least.tiling.tiles.length <= one.tiling.tiles.length ? least : one),
      undefined,
    );
    if (!best) return undefined;
    const { tiles, lines } = best.tiling;
    // The clear paper inside the frame is there for what the match lines pushed outward.
    const window = wider(needed, (CLEAR_MM - 1) * perMm);
    const plan = planOf(job, takeoff, {
      ...planOptions(scale, options),
      matchLines: lines,
      window,
    });
    if (!isWithin(neededBox(plan, scale, options), window)) continue;
    return {
      station: options.station,
      frame: best.frame,
      scale,
      plan,
      centre: middleOf(needed),
      tiles,
      fits: true,
    };
  }
  return undefined;
}

function wider({ minX, minY, maxX, maxY }: Box, by: number): Box {
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
}

function isWithin(box: Box, window: Box): boolean {
  return (
    box.minX >= window.minX &&
    box.maxX <= window.maxX &&
    box.minY >= window.minY &&
    box.maxY <= window.maxY
  );
}

/**
 * Round all that must be read: the pour, its sizes, faults, and on their own plans the forms and the steel. What stands round about may be
 * cut off by the frame.
 */
function neededBox({ marks }: Plan, scale: Scale, { station }: PlanWishes): Box {
  const grid = { gridPerMm: gridPerMmAt(scale) };
  const needed = marks.filter(
    ({ layer, kind }) =>
      layer === 'pour' ||
      layer === 'dimensions' ||
      (layer === 'notes' && kind !== 'area') ||
      (layer === 'forms' && station === 'forms-sheet') ||
      (layer === 'steel' && station === 'steel-sheet'),
  );
  const poured = marks.some(({ layer }) => layer === 'pour');
  const nothing = { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return boundsOf(poured ? needed : marks, grid) ?? nothing;
}

function middleOf({ minX, minY, maxX, maxY }: Box) {
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
}
