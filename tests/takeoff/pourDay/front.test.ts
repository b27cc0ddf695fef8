import { describe, expect, test } from 'vitest';
import { alongOf, headingOf } from '../../../src/geometry/halfPlane.ts';
import type { Job } from '../../../src/job/job.ts';
import {
  type Bed,
  bedOf,
  checkpoints,
  frontAt,
  frontThrough,
  placedShare,
  shareError,
  usualWay,
} from '../../../src/takeoff/pourDay/front.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { ell, pad } from './pours.ts';

function bed(job: Job): Bed {
  const { pour, volume } = takeoff(job);
  if (!pour || !volume) throw new Error('the pad is figured');
  return bedOf(pour, volume);
}

describe('how far it has got', () => {
  test('on a rectangle is the length behind the front', () => {
    const slab = bed(pad());
    expect(placedShare(slab, 0, 3 * FOOT)).toBeCloseTo(0.25, 12);
    expect(placedShare(slab, 180, -3 * FOOT)).toBeCloseTo(0.75, 12);
    expect(placedShare(slab, 90, 5 * FOOT)).toBeCloseTo(0.5, 12);
    expect([placedShare(slab, 0, -1), placedShare(slab, 0, 12 * FOOT)]).toEqual([0, 1]);
    expect(placedShare(slab, 0, Number.NaN)).toBe(0);
  });

  test('on an L is the area behind it, not the length', () => {
    // 14 x 10 ft less 4 x 3: 128 ft². Behind 10 ft: 100 ft².
    expect(placedShare(bed(ell()), 0, 10 * FOOT)).toBeCloseTo(100 / 128, 12);
  });

  test('counts what a thickened edge takes by the length of it behind the front', () => {
    const job = pad();
    const { practices } = job;
    const thickenedEdge = { use: true, depth: 10 * INCH, width: 10 * INCH, taper: 0 };
    const slab = bed({ ...job, practices: { ...practices, thickenedEdge } });
    // Behind 1 ft: 10 of 120 ft², and 10 + 2 of 44 ft of edge.
    const seen = (slab.slab / 12 + slab.edge * (12 / 44)) / (slab.slab + slab.edge);
    expect(placedShare(slab, 0, FOOT)).toBeCloseTo(seen, 12);
    expect(seen).toBeGreaterThan(0.11);
    expect(placedShare(slab, 0, 6 * FOOT)).toBeCloseTo(0.5, 12);
  });

  test('and where the front stands for a share go back and forth, any way it goes', () => {
    const slab = bed(ell());
    for (const way of [0, 45, 90, 135, 225, 270, 315]) {
      for (const share of [0.01, 0.33, 0.5, 0.9]) {
        expect(placedShare(slab, way, frontAt(slab, way, share))).toBeCloseTo(share, 5);
      }
      expect(placedShare(slab, way, frontAt(slab, way, 0))).toBe(0);
      expect(placedShare(slab, way, frontAt(slab, way, 1))).toBe(1);
    }
  });

  test('a tap puts the front through the place that was tapped', () => {
    const place = { x: 4 * FOOT, y: 3 * FOOT };
    expect(frontThrough(place, 0)).toBe(4 * FOOT);
    expect(frontThrough(place, 270)).toBe(-3 * FOOT);
    expect(frontThrough(place, 45)).toBe(Math.round(alongOf(place, headingOf(45))));
  });

  test('a front half a foot off is a share off by what lies in that half foot', () => {
    expect(shareError(bed(pad()), 0, 6 * FOOT, 6 * INCH)).toBeCloseTo(0.5 / 12, 12);
  });
});

describe('the way that it goes', () => {
  test('is along the longer side where nothing is set', () => {
    expect(usualWay(bed(pad()))).toBe(0);
    const { ok, value } = turned();
    expect(ok && usualWay(bed(value))).toBe(90);
  });
  function turned() {
    const job = pad();
    const corners = (job.features[0]!.shape as { corners: readonly { x: number; y: number }[] })
      .corners;
    const shape = {
      ...job.features[0]!.shape,
      corners: corners.map((corner) => ({ ...corner, x: -corner.y, y: corner.x })),
    };
    return { ok: true, value: { ...job, features: [{ ...job.features[0]!, shape }] } as Job };
  }
});

describe('checkpoints', () => {
  test('are the joints across the way, in the order of the front', () => {
    const job = pad();
    const { joints } = takeoff(job);
    const slab = bed(job);
    // 12 ft at 3 1/2 in: panels of 8 ft 9 in at most, so one joint in the middle or two.
    const met = checkpoints(slab, joints?.layout, 0);
    expect(met.length).toBeGreaterThan(0);
    expect(met.every(({ mark }) => /^[CB]\d+$/.test(mark))).toBe(true);
    const back = checkpoints(slab, joints?.layout, 180);
    expect(back.map(({ mark }) => mark)).toEqual(met.map(({ mark }) => mark).toReversed());
    met.forEach(({ share }, i) => {
      expect(share + back[met.length - 1 - i]!.share).toBeCloseTo(1, 6);
    });
  });
  test('are none without joints', () => {
    expect(checkpoints(bed(pad()), undefined, 0)).toEqual([]);
  });
});
