import { expect, test } from 'vitest';
import { locate } from '../../src/geometry/locate.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { slabJob } from './slabJobs.ts';

/** Whether a place is on one side of a ring, farther than rounding to the grid puts it. */
function isClearly(
  side: 'inside' | 'outside',
  place: { x: number; y: number },
  ring: Parameters<typeof locate>[1],
): boolean {
  const near = [-2, 2].flatMap((dx) => [-2, 2].map((dy) => ({ x: place.x + dx, y: place.y + dy })));
  return [place, ...near].every((one) => locate(one, ring) === side);
}

test('on 400 random slabs every bar lies inside the cover from end to end', () => {
  const faults: string[] = [];
  let laid = 0;
  for (let seed = 1; seed <= 400; seed++) {
    const { job } = slabJob(seed);
    const steel = { ...job.practices.steel, kind: 'bars' as const };
    const { bars } = takeoff({ ...job, practices: { ...job.practices, steel } }).steel ?? {};
    if (!bars) continue;
    const { inset, lines } = bars;
    for (const { from, to, way } of lines) {
      laid++;
      for (const share of [0, 0.1, 0.37, 0.5, 0.81, 1]) {
        const place = {
          x: Math.round(from.x + share * (to.x - from.x)),
          y: Math.round(from.y + share * (to.y - from.y)),
        };
        const inOne = inset.some(
          ({ outer, holes }) =>
            !isClearly('outside', place, outer) &&
            !holes.some((hole) => isClearly('inside', place, hole)),
        );
        if (!inOne) faults.push(`seed ${seed}: a bar ${way} leaves the cover`);
      }
    }
  }
  expect(faults).toEqual([]);
  expect(laid).toBeGreaterThan(5000);
});
