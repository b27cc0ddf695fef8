import type { Point } from '../geometry/point.ts';
import { alongEdge, nearestAlong } from './edge.ts';
import { edgeEnd } from './find.ts';
import type { Attachment, Corner, Feature, Job, Outline } from './job.ts';
import { type Refusal, refuse } from './refusal.ts';

interface Place {
  readonly feature: Feature;
  readonly outline: Outline;
  readonly index: number;
}

function places(job: Job): ReadonlyMap<string, Place> {
  const found = new Map<string, Place>();
  for (const feature of job.features) {
    if (feature.shape.form !== 'outline') continue;
    const outline = feature.shape;
    outline.corners.forEach(({ id }, index) => {
      found.set(id, { feature, outline, index });
    });
  }
  return found;
}

function hasAttachments(job: Job): boolean {
  return job.features.some(
    ({ shape }) => shape.form === 'outline' && shape.corners.some(({ on }) => on !== undefined),
  );
}

/** Start and end of the edge that an attachment names, if it is there. */
function edgeOf(found: ReadonlyMap<string, Place>, on: Attachment): [Corner, Corner] | null {
  const place = found.get(on.corner);
  if (!place || place.feature.id !== on.feature) return null;
  const start = place.outline.corners[place.index];
  const end = edgeEnd(place.outline, place.index);
  return start && end ? [start, end] : null;
}

/**
 * Why the corners that stay on edges can't all have a place: an edge is gone, it is the corner's own feature's, or
 * corners hold on to each other in a circle. Null when all is well.
 */
export function attachmentRefusal(job: Job): Refusal | null {
  if (!hasAttachments(job)) return null;
  const found = places(job);
  const state = new Map<string, 'open' | 'done'>();
  for (const [id, { feature, outline, index }] of found) {
    const on = outline.corners[index]?.on;
    if (!on) continue;
    if (on.feature === feature.id) return refuse('attached-to-itself', feature.id).problems;
    if (!edgeOf(found, on)) {
      const facts = { feature: on.feature, corner: on.corner };
      return refuse('attachment-lost', feature.id, { facts }).problems;
    }
    const circle = circleFrom(id);
    if (circle) return refuse('attachment-circle', feature.id, { at: circle }).problems;
  }
  return null;

  /** Walks what a corner rests on, deepest last; a list, since a chain may be as long as the job. */
  function circleFrom(start: string): readonly Point[] | null {
    const stack = [start];
    while (stack.length > 0) {
      const id = stack.at(-1) ?? '';
      const place = found.get(id);
      const corner = place?.outline.corners[place.index];
      if (!corner || state.get(id) === 'done') {
        stack.pop();
        continue;
      }
      if (state.get(id) === 'open') {
        state.set(id, 'done');
        stack.pop();
        continue;
      }
      state.set(id, 'open');
      const edge = corner.on ? edgeOf(found, corner.on) : null;
      for (const support of edge ?? []) {
        if (state.get(support.id) === 'open') {
          return [corner, support].map(({ x, y }) => ({ x, y }));
        }
        if (state.get(support.id) !== 'done') stack.push(support.id);
      }
    }
    return null;
  }
}

/**
 * Puts every corner that stays on an edge back on it, those that others rest on first. The same job when none moves.
 * Throws where attachmentRefusal has something to say: ask it first.
 */
export function settle(job: Job): Job {
  if (!hasAttachments(job)) return job;
  const found = places(job);
  const settled = new Map<string, Corner>();

  function settledCorner(id: string): Corner {
    const stack = [id];
    while (stack.length > 0) {
      const top = stack.at(-1) ?? '';
      const place = found.get(top);
      const corner = place?.outline.corners[place.index];
      if (!corner) throw new Error(`settle: no corner ${top}`);
      const edge = corner.on ? edgeOf(found, corner.on) : null;
      if (corner.on && !edge)
        throw new Error(`settle: corner ${top} rests on an edge that is gone`);
      const waiting = (edge ?? []).filter((one) => !settled.has(one.id));
      if (waiting.length > 0) {
        if (stack.length > 2 * found.size + 2) throw new Error(`settle: a circle through ${top}`);
        stack.push(...waiting.map((one) => one.id));
        continue;
      }
      stack.pop();
      if (settled.has(top)) continue;
      const [start, end] = (edge ?? []).map((one) => settled.get(one.id) ?? one);
      const at = corner.on && start && end ? alongEdge(start, end, corner.on.t) : corner;
      settled.set(top, at.x === corner.x && at.y === corner.y ? corner : { ...corner, ...at });
    }
    return settled.get(id) as Corner;
  }

  let moved = false;
  const features = job.features.map((feature): Feature => {
    const { shape } = feature;
    if (shape.form !== 'outline') return feature;
    const corners = shape.corners.map((corner) => (corner.on ? settledCorner(corner.id) : corner));
    if (corners.every((corner, index) => corner === shape.corners[index])) return feature;
    moved = true;
    return { ...feature, shape: { ...shape, corners } } as Feature;
  });
  return moved ? { ...job, features } : job;
}

/**
 * A corner at its new place. It stays attached if the place is still on the edge it was on, to the grid; else it lets
 * go, since nobody asked for it to be pulled back.
 */
export function placedAt(job: Job, corner: Corner, to: Point): Corner {
  if (corner.x === to.x && corner.y === to.y) return corner;
  const { on, ...free } = { ...corner, x: to.x, y: to.y };
  const kept = on && heldBy(job, on, to);
  return kept ? { ...free, on: kept } : free;
}

/** The attachment with `t` at the point's own place, if the point is on that edge to the grid. */
export function heldBy(job: Job, on: Attachment, point: Point): Attachment | null {
  const feature = job.features.find(({ id }) => id === on.feature);
  if (feature?.shape.form !== 'outline') return null;
  const index = feature.shape.corners.findIndex(({ id }) => id === on.corner);
  const start = feature.shape.corners[index];
  const end = edgeEnd(feature.shape, index);
  if (!start || !end) return null;
  const t = nearestAlong(start, end, point);
  const at = alongEdge(start, end, t);
  const near = Math.abs(at.x - point.x) <= 1 && Math.abs(at.y - point.y) <= 1;
  return near ? { ...on, t } : null;
}

/** The job with every attachment to a feature changed, or let go where `change` gives null. */
export function withAttachmentsTo(
  job: Job,
  feature: string,
  change: (on: Attachment, corner: Corner) => Attachment | null,
): Job {
  let changed = false;
  const features = job.features.map((one): Feature => {
    const { shape } = one;
    if (shape.form !== 'outline') return one;
    if (!shape.corners.some(({ on }) => on?.feature === feature)) return one;
    changed = true;
    const corners = shape.corners.map((corner): Corner => {
      if (corner.on?.feature !== feature) return corner;
      const { on, ...free } = corner;
      const next = change(on, corner);
      return next ? { ...free, on: next } : free;
    });
    return { ...one, shape: { ...shape, corners } } as Feature;
  });
  return changed ? { ...job, features } : job;
}
