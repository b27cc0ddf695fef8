import { boxOf } from '../geometry/box.ts';
import type { Point } from '../geometry/point.ts';
import type { Job, UnitStyle } from '../job/job.ts';
import { EXTENT_LIMIT, FOOT, INCH, METRE, MILLIMETRE } from '../units/grid.ts';
import { extentOf } from './site.ts';

/** What part of the site is on screen. */
export interface View {
  /** The place in the middle of the screen, in grid units. */
  readonly center: Point;
  /** Grid units across one CSS pixel. */
  readonly gridPerPx: number;
}

/** CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A place on the stage in CSS pixels: x to the right, y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Closest look: one pixel is a tenth of a millimetre. */
export const CLOSEST = MILLIMETRE / 10;
/** Farthest look: the largest job a few times over on a small phone. */
export const FARTHEST = (4 * EXTENT_LIMIT) / 320;

/** Room left round the site for dimensions, CSS pixels on each side. */
export const MARGIN = 72;
/** What an empty site shows across the shorter side. */
const EMPTY_SITE = 6 * METRE;
/** The least that a fit shows, so that a lone post doesn't fill the screen. */
const LEAST_SHOWN = METRE;

export function toScreen(view: View, size: Size, at: Point): Spot {
  return {
    x: (at.x - view.center.x) / view.gridPerPx + size.width / 2,
    y: (view.center.y - at.y) / view.gridPerPx + size.height / 2,
  };
}

/** The grid place under a spot, rounded to the grid. */
export function toJob(view: View, size: Size, spot: Spot): Point {
  return {
    x: Math.round(view.center.x + (spot.x - size.width / 2) * view.gridPerPx),
    y: Math.round(view.center.y - (spot.y - size.height / 2) * view.gridPerPx),
  };
}

/** The whole site in the middle of the screen, with room for its dimensions. */
export function fitView(job: Job, size: Size): View {
  const extent = extentOf(job);
  const across = Math.max(1, size.width - 2 * roomFor(size.width));
  const up = Math.max(1, size.height - 2 * roomFor(size.height));
  if (!extent) {
    return { center: { x: 0, y: 0 }, gridPerPx: within(EMPTY_SITE / Math.min(across, up)) };
  }
  const { minX, minY, maxX, maxY } = extent;
  const width = Math.max(maxX - minX, LEAST_SHOWN);
  const height = Math.max(maxY - minY, LEAST_SHOWN);
  return {
    center: { x: (minX + maxX) / 2, y: (minY + maxY) / 2 },
    gridPerPx: within(Math.max(width / across, height / up)),
  };
}

/** Looks closer (`factor` > 1) or from farther off, keeping what is under `spot` where it is. */
export function zoomAt(view: View, size: Size, spot: Spot, factor: number): View {
  const gridPerPx = within(view.gridPerPx / factor);
  const away = view.gridPerPx - gridPerPx;
  return bounded({
    center: {
      x: view.center.x + (spot.x - size.width / 2) * away,
      y: view.center.y - (spot.y - size.height / 2) * away,
    },
    gridPerPx,
  });
}

/** Moves the site under the screen by so many pixels (to the right and down, as a finger drags it). */
export function panBy(view: View, dx: number, dy: number): View {
  return bounded({
    center: {
      x: view.center.x - dx * view.gridPerPx,
      y: view.center.y + dy * view.gridPerPx,
    },
    gridPerPx: view.gridPerPx,
  });
}

/**
 * The same view when the last of these places is well on screen, above a bar of `bar` pixels at its foot; else one that
 * shows them all there, from no closer than before.
 */
export function withInSight(view: View, size: Size, path: readonly Point[], bar: number): View {
  const last = path[path.length - 1];
  if (!last) return view;
  const height = size.height - bar;
  const aboveBar = toScreen(view, size, last).y <= height - IN_SIGHT_PX;
  if (aboveBar && areInSight(view, size, [last])) return view;
  const { minX, minY, maxX, maxY } = boxOf(path);
  const across = Math.max(1, size.width - 2 * roomFor(size.width));
  const up = Math.max(1, height - 2 * roomFor(height));
  const gridPerPx = within(Math.max(view.gridPerPx, (maxX - minX) / across, (maxY - minY) / up));
  const center = { x: (minX + maxX) / 2, y: (minY + maxY - bar * gridPerPx) / 2 };
  return bounded({ center, gridPerPx });
}

const IN_SIGHT_PX = 24;

/** Whether all of these places are on screen, `room` pixels from its edges at least. */
export function areInSight(
  view: View,
  size: Size,
  places: readonly Point[],
  room = IN_SIGHT_PX,
): boolean {
  return places.every((at) => {
    const { x, y } = toScreen(view, size, at);
    return x >= room && y >= room && x <= size.width - room && y <= size.height - room;
  });
}

/** Two fingers moved from `before` to `after`: the site stays under both, without turning. */
export function pinch(
  view: View,
  size: Size,
  before: readonly [Spot, Spot],
  after: readonly [Spot, Spot],
): View {
  const [from, to] = [middle(before), middle(after)];
  const spread = Math.max(1, gap(before));
  const moved = panBy(view, to.x - from.x, to.y - from.y);
  return zoomAt(moved, size, to, Math.max(1, gap(after)) / spread);
}

/** The largest step that a pointer could mean at this zoom, as a reading on a tape. */
export function stepAt(view: View, style: UnitStyle): number {
  const least = view.gridPerPx * STEP_PX;
  const steps = STEPS[style];
  return steps.find((step) => step >= least) ?? steps[steps.length - 1] ?? least;
}

/** A pointer is steady to about this many pixels. */
const STEP_PX = 4;
const STEPS: Readonly<Record<UnitStyle, readonly number[]>> = {
  'feet-inches': [
    INCH / 16,
    INCH / 8,
    INCH / 4,
    INCH / 2,
    INCH,
    3 * INCH,
    6 * INCH,
    FOOT,
    2 * FOOT,
    5 * FOOT,
    10 * FOOT,
    50 * FOOT,
  ],
  'decimal-feet': [0.01, 0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 50].map((feet) => feet * FOOT),
  metric: [1, 5, 10, 50, 100, 250, 500, 1000, 5000, 10_000].map((mm) => mm * MILLIMETRE),
};

function roomFor(side: number): number {
  return Math.min(MARGIN, side / 6);
}

function within(gridPerPx: number): number {
  return Math.min(FARTHEST, Math.max(CLOSEST, gridPerPx));
}

/** Keeps the middle of the screen near ground where a job may be, so that nobody gets lost. */
function bounded(view: View): View {
  const keep = (value: number) => Math.min(2 * EXTENT_LIMIT, Math.max(-2 * EXTENT_LIMIT, value));
  return { ...view, center: { x: keep(view.center.x), y: keep(view.center.y) } };
}

function middle([a, b]: readonly [Spot, Spot]): Spot {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function gap([a, b]: readonly [Spot, Spot]): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
