import { describe, expect, test } from 'vitest';
import { apply } from '../../src/job/commands.ts';
import { demoJob } from '../../src/job/demo.ts';
import type { Feature, Job } from '../../src/job/job.ts';
import { settle } from '../../src/job/settle.ts';
import { INCH } from '../../src/units/grid.ts';
import { cornersOf, done, jobOf, outline, padOf, refused } from './site.ts';

//        patio                      The pad's lower right corner c3 stays on the patio's
//   +--------------+ 60,40          left edge, halfway up; the patch's corner c22 on the
//   | pad  c3 o----+---------+      pad's edge that starts there.
//   +---------+    |  patio  |
const patio: Feature = {
  id: 'f11',
  name: '',
  kind: 'existing-slab',
  shape: outline('60,0 160,0 160,80 60,80', 12),
};

function site(): Job {
  const held = { do: 'move-corner', feature: 'f1', corner: 'c3' } as const;
  const on = { feature: 'f11', corner: 'c15', t: 0.5 };
  const job = done(jobOf(patio, padOf('0,0 30,0 0,40')), { ...held, to: { x: 0, y: 0 }, on });
  const shape = outline('10,10 20,10 20,20', 22);
  const patch: Feature = { id: 'f21', name: '', kind: 'patch', shape };
  return done(done(job, { do: 'add-feature', feature: patch }), {
    do: 'move-corner',
    feature: 'f21',
    corner: 'c22',
    to: { x: 0, y: 0 },
    on: { feature: 'f1', corner: 'c3', t: 0.25 },
  });
}

function at(job: Job, feature: string, corner: string) {
  const found = cornersOf(job, feature).find(({ id }) => id === corner);
  return found && [found.x / INCH, found.y / INCH];
}

describe('a corner on another feature’s edge', () => {
  test('is put on it', () => {
    expect(at(site(), 'f1', 'c3')).toEqual([60, 40]);
    expect(at(site(), 'f21', 'c22')).toEqual([45, 40]);
  });

  test('follows it, and what rests on it follows in turn', () => {
    const moved = done(site(), {
      do: 'move-feature',
      feature: 'f11',
      by: { x: 20 * INCH, y: -10 * INCH },
    });
    expect(at(moved, 'f1', 'c3')).toEqual([80, 30]);
    expect(at(moved, 'f21', 'c22')).toEqual([60, 32.5]);
  });

  test('follows one end of the edge in its share', () => {
    const to = { x: 60 * INCH, y: 120 * INCH };
    const moved = done(site(), { do: 'move-corner', feature: 'f11', corner: 'c15', to });
    expect(at(moved, 'f1', 'c3')).toEqual([60, 60]);
  });

  test('follows an arc', () => {
    const arc = done(site(), { do: 'set-rise', feature: 'f11', corner: 'c15', rise: 12 * INCH });
    expect(at(arc, 'f1', 'c3')).toEqual([48, 40]);
  });

  test('lets go when it is moved off by itself', () => {
    const to = { x: 50 * INCH, y: 40 * INCH };
    const free = done(site(), { do: 'move-corner', feature: 'f1', corner: 'c3', to });
    expect(cornersOf(free, 'f1')[1]).toEqual({ id: 'c3', ...to, rise: 0 });
    const moved = done(free, { do: 'move-feature', feature: 'f11', by: { x: INCH, y: 0 } });
    expect(at(moved, 'f1', 'c3')).toEqual([50, 40]);
  });

  test('stays on when its own feature slides along the edge, and lets go when that leaves it', () => {
    const slid = done(site(), { do: 'move-feature', feature: 'f1', by: { x: 0, y: 10 * INCH } });
    expect(cornersOf(slid, 'f1')[1]?.on).toEqual({ feature: 'f11', corner: 'c15', t: 0.375 });
    const off = done(site(), { do: 'move-feature', feature: 'f1', by: { x: -INCH, y: 0 } });
    expect(cornersOf(off, 'f1')[1]?.on).toBeUndefined();
    expect(at(off, 'f1', 'c3')).toEqual([59, 40]);
  });

  test('stays where it is when the feature is taken away', () => {
    const job = done(site(), { do: 'remove-feature', feature: 'f11' });
    expect(cornersOf(job, 'f1')[1]).toEqual({ id: 'c3', x: 60 * INCH, y: 40 * INCH, rise: 0 });
  });

  test('stays where it is when a corner comes into the edge, or goes', () => {
    const inTheMiddle = { x: 60 * INCH, y: 60 * INCH };
    const more = done(site(), {
      do: 'insert-corner',
      feature: 'f11',
      after: 'c15',
      at: inTheMiddle,
    });
    expect(at(more, 'f1', 'c3')).toEqual([60, 40]);
    const put = cornersOf(more, 'f11').at(-1)?.id ?? '';
    expect(cornersOf(more, 'f1')[1]?.on).toEqual({ feature: 'f11', corner: put, t: 1 / 3 });
    const less = done(more, { do: 'remove-corner', feature: 'f11', corner: put });
    expect(at(less, 'f1', 'c3')).toEqual([60, 40]);
    expect(cornersOf(less, 'f1')[1]?.on).toEqual({ feature: 'f11', corner: 'c15', t: 0.5 });
    const gone = done(site(), { do: 'remove-corner', feature: 'f11', corner: 'c15' });
    expect(at(gone, 'f1', 'c3')).toEqual([60, 40]);
    expect(cornersOf(gone, 'f1')[1]?.on).toBeUndefined();
  });

  test('stays where it is when the corner at the end of its edge goes', () => {
    const gone = done(site(), { do: 'remove-corner', feature: 'f11', corner: 'c12' });
    expect(at(gone, 'f1', 'c3')).toEqual([60, 40]);
    expect(cornersOf(gone, 'f1')[1]?.on).toBeUndefined();
  });

  test('keeps its share when the edge is mirrored', () => {
    const to = { x: 60 * INCH, y: 120 * INCH };
    const lopsided = done(site(), { do: 'move-corner', feature: 'f11', corner: 'c15', to });
    const mirrored = done(lopsided, {
      do: 'mirror-feature',
      feature: 'f11',
      across: 'horizontal',
      about: { x: 0, y: 0 },
    });
    expect(at(mirrored, 'f1', 'c3')).toEqual([60, -60]);
  });
});

describe('refused', () => {
  test('corners that hold on to each other in a circle', () => {
    const outcome = apply(site(), {
      do: 'move-corner',
      feature: 'f11',
      corner: 'c15',
      to: { x: 0, y: 0 },
      on: { feature: 'f21', corner: 'c22', t: 0.5 },
    });
    expect(outcome).toMatchObject({ ok: false, problems: { code: 'attachment-circle' } });
    expect(outcome.ok || outcome.problems.at?.length).toBe(2);
  });

  test('an edge of the corner’s own feature, and one that isn’t there', () => {
    const hold = { do: 'move-corner', feature: 'f1', corner: 'c3', to: { x: 0, y: 0 } } as const;
    const on = (feature: string, corner: string) => ({ ...hold, on: { feature, corner, t: 0.5 } });
    expect(refused(site(), on('f1', 'c4'))).toBe('attached-to-itself');
    expect(refused(site(), on('f11', 'c99'))).toBe('attachment-lost');
    expect(refused(site(), on('f99', 'c12'))).toBe('attachment-lost');
  });
});

test('a chain as long as a job is settled, however it is ordered', () => {
  const count = 1500;
  const features = Array.from({ length: count }, (_, n): Feature => {
    const id = 4 * n + 2;
    const pad = padOf('0,0 10,0 10,10', id);
    if (pad.shape.form !== 'outline' || n === count - 1) return pad;
    const on = { feature: `f${id + 3}`, corner: `c${id + 4}`, t: 0 };
    const [first, ...rest] = pad.shape.corners;
    return { ...pad, shape: { ...pad.shape, corners: [{ ...first, on }, ...rest] } } as Feature;
  });
  const job = { ...demoJob(), features, nextId: 4 * count + 9 };
  const to = { x: -5 * INCH, y: -5 * INCH };
  const last = features.at(-1);
  if (!last) throw new Error('no features');
  const moved = done(job, { do: 'move-corner', feature: last.id, corner: `c${4 * count - 2}`, to });
  expect(at(moved, 'f1', 'c2')).toEqual([-5, -5]);
});

test('settling settles at once: a second time changes nothing', () => {
  const job = demoJob();
  expect(settle(job)).toBe(job);
  const moved = done(job, { do: 'turn-feature', feature: 'f1', degrees: 3.3 });
  expect(settle(moved)).toBe(moved);
  expect(moved.features).not.toBe(job.features);
});
